package swashlight.browser.time;

import java.util.Arrays;
import java.util.stream.IntStream;
import swashlight.browser.PageDrive;
import swashlight.browser.PageDuty;
import swashlight.browser.PageRun;
import swashlight.browser.Physics;
import swashlight.browser.chromium.Chromium;

/**
 * Times the same duty here and in Chromium, in turn, and prints a table: how long a second of the light rider's launch takes, and a settled
 * state. Started by {@code bench/browser/run}; not a test.
 */
public final class HowFastInTheBrowser {
    private static final int ROUNDS = 25;
    private static final int POINTS = 200;
    private static final double UNTIL = 1; // s

    private HowFastInTheBrowser() {}

    /** Prints one line a place where the physics runs. */
    public static void main(String[] arguments) {
        try (Chromium chromium = Chromium.start()) {
            for (int turn = 0; turn < 2; turn++) {
                print("JVM " + Runtime.version().feature(), here());
                for (String target : new String[] {"webassembly", "javascript"}) {
                    print(
                            target,
                            chromium.run("time-launch", target, ROUNDS, UNTIL, POINTS)
                                    .numbers());
                }
            }
        }
    }

    private static double[] here() {
        double[] seconds = new double[2 * ROUNDS];
        PageDrive rider = Physics.lightRider();
        for (int round = 0; round < ROUNDS; round++) {
            PageDuty duty =
                    Physics.driving(0, 0.1, 333.15).line("stroke", new double[] {0, 0.08}, new double[] {0, 0.6});
            PageRun launch = rider.startAtRest(duty, 1e-3);
            long begun = System.nanoTime();
            launch.advance(UNTIL);
            seconds[round] = (System.nanoTime() - begun) / 1e9;
        }
        for (int round = 0; round < ROUNDS; round++) {
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

    private static void print(String where, double[] seconds) {
        System.out.printf(
                "%-12s launch of 1 s: first %4.0f ms, then best %4.0f ms, median %4.0f ms; settled state: best %5.1f µs, median %5.1f µs%n",
                where,
                1e3 * seconds[0],
                1e3 * best(seconds, 5, ROUNDS),
                1e3 * median(seconds, 5, ROUNDS),
                1e6 / POINTS * best(seconds, ROUNDS + 5, 2 * ROUNDS),
                1e6 / POINTS * median(seconds, ROUNDS + 5, 2 * ROUNDS));
    }

    private static double best(double[] seconds, int from, int to) {
        return Arrays.stream(seconds, from, to).min().orElseThrow();
    }

    private static double median(double[] seconds, int from, int to) {
        double[] sorted =
                IntStream.range(from, to).mapToDouble(i -> seconds[i]).sorted().toArray();
        return sorted[sorted.length / 2];
    }
}
