package swashlight.browser.time;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.DoubleStream;
import swashlight.browser.PageDrive;
import swashlight.browser.PageDuty;
import swashlight.browser.PageRun;
import swashlight.browser.Physics;
import swashlight.browser.chromium.Chromium;

/**
 * Times the same work here and in Chromium, in turn, and prints a table: a second of the light rider's launch up a slope, piston by piston,
 * and a settled state. Started by {@code bench/browser/run}; not a test.
 */
public final class HowFastInTheBrowser {
    private static final int TURNS = 3;
    private static final int ROUNDS = 40; // of launches, of which the second half counts
    private static final int POINT_ROUNDS = 200; // of settled states, likewise
    private static final int POINTS = 400;
    private static final double UNTIL = 1; // s

    private HowFastInTheBrowser() {}

    /** Prints one line a place where the physics runs. */
    public static void main(String[] arguments) {
        String jvm = "JVM " + Runtime.version().feature();
        Map<String, double[]> launches = new LinkedHashMap<>();
        Map<String, double[]> points = new LinkedHashMap<>();
        try (Chromium chromium = Chromium.start()) {
            double[] opening = chromium.run("time-opening", "proof-javascript").numbers();
            System.out.printf("opened after %.0f ms (WebAssembly), %.0f ms (JavaScript)%n", opening[0], opening[1]);
            for (int turn = 0; turn < TURNS; turn++) {
                note(jvm, here(), launches, points);
                for (String target : new String[] {"webassembly", "javascript"}) {
                    double[] seconds = chromium.run("time-launch", target, ROUNDS, UNTIL, POINT_ROUNDS, POINTS)
                            .numbers();
                    note(target, seconds, launches, points);
                }
            }
        }
        launches.forEach((where, seconds) -> System.out.printf(
                "| %-11s | %5.0f ms | %5.0f ms | %4.2f | %5.1f µs | %5.1f µs | %4.2f |%n",
                where,
                1e3 * least(seconds),
                1e3 * median(seconds),
                least(launches.get(jvm)) / least(seconds),
                1e6 / POINTS * least(points.get(where)),
                1e6 / POINTS * median(points.get(where)),
                least(points.get(jvm)) / least(points.get(where))));
    }

    private static double[] here() {
        double[] seconds = new double[ROUNDS + POINT_ROUNDS];
        PageDrive rider = Physics.lightRider();
        for (int round = 0; round < ROUNDS; round++) {
            PageDuty duty =
                    Physics.driving(0, 0.1, 333.15).line("stroke", new double[] {0, 0.08}, new double[] {0, 0.6});
            PageRun launch = rider.startAtRest(duty, 1e-3);
            long begun = System.nanoTime();
            launch.advance(UNTIL);
            seconds[round] = (System.nanoTime() - begun) / 1e9;
        }
        for (int round = 0; round < POINT_ROUNDS; round++) {
            long begun = System.nanoTime();
            for (int n = 0; n < POINTS; n++) {
                if (!rider.settled(Physics.driving(-1 + 2.0 * n / POINTS, 0.1, 333.15), 0)
                        .converged()) {
                    throw new IllegalStateException("not settled at " + n);
                }
            }
            seconds[ROUNDS + round] = (System.nanoTime() - begun) / 1e9;
        }
        return seconds;
    }

    private static void note(
            String where, double[] seconds, Map<String, double[]> launches, Map<String, double[]> points) {
        add(launches, where, Arrays.copyOfRange(seconds, ROUNDS / 2, ROUNDS));
        add(points, where, Arrays.copyOfRange(seconds, ROUNDS + POINT_ROUNDS / 2, ROUNDS + POINT_ROUNDS));
    }

    private static void add(Map<String, double[]> all, String where, double[] more) {
        double[] before = all.getOrDefault(where, new double[0]);
        all.put(
                where,
                DoubleStream.concat(DoubleStream.of(before), DoubleStream.of(more))
                        .toArray());
    }

    private static double least(double[] seconds) {
        return Arrays.stream(seconds).min().orElseThrow();
    }

    private static double median(double[] seconds) {
        double[] sorted = seconds.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
