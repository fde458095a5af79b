package swashlight.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/**
 * Our half of {@code bench/peers/run}.
 *
 * <pre>
 *   tell PISTONS FILE                 writes what the peers read
 *   run FILE ROUNDS TOLERANCE…        runs 7 + 7 pistons and writes means, swings, wall time, steps
 *   grow ROUNDS                       prints wall time against the number of pistons
 *   table TIGHT FILE…                 prints the comparison against the last run in the file TIGHT
 *   kept TIGHT                        prints that run as the test BesideCvodeTest keeps it
 * </pre>
 */
public final class BesidePeers {
    private static final int PISTONS = 7;
    private static final int WARM_ROUNDS = 12; // runs before anything is timed
    private static final double USUAL = 1e-3; // tolerance of the growth measurement

    private BesidePeers() {}

    /** Does one of the five. */
    public static void main(String[] words) throws IOException {
        switch (words[0]) {
            case "tell" -> Files.writeString(Path.of(words[2]), Launch.told(Integer.parseInt(words[1])));
            case "run" ->
                run(Path.of(words[1]), Integer.parseInt(words[2]), Arrays.copyOfRange(words, 3, words.length));
            case "grow" -> grow(Integer.parseInt(words[1]));
            case "table" -> PeerTable.print(Path.of(words[1]), Arrays.copyOfRange(words, 2, words.length));
            case "kept" -> PeerTable.printKept(Path.of(words[1]));
            default -> throw new IllegalArgumentException(words[0]);
        }
    }

    private static void run(Path file, int rounds, String[] tolerances) throws IOException {
        StringBuilder all = new StringBuilder();
        times(PISTONS, USUAL, WARM_ROUNDS);
        for (String word : tolerances) {
            double tolerance = Double.parseDouble(word);
            var run = Launch.start(PISTONS, tolerance);
            Windows windows = new Windows(run);
            run.advance(Launch.UNTIL, windows);
            if (run.failed()) {
                throw new IllegalStateException("stopped at " + run.time() + " s");
            }
            Times times = times(PISTONS, tolerance, rounds);
            all.append(String.format(
                    Locale.ROOT,
                    "Swashlight %s %.6g %.6g %d %d%n",
                    word,
                    times.wall,
                    times.busy,
                    run.steps(),
                    run.newtonSteps()));
            all.append(windows.written());
            System.err.printf(
                    "Swashlight %s: %d steps, %.3f s, busy %.3f s%n", word, run.steps(), times.wall, times.busy);
        }
        Files.writeString(file, all);
    }

    /** Wall and processor time of one run, s; medians. */
    private record Times(double wall, double busy) {}

    private static Times times(int pistons, double tolerance, int rounds) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        double[] wall = new double[rounds];
        double[] busy = new double[rounds];
        for (int round = 0; round < rounds; round++) {
            var run = Launch.start(pistons, tolerance);
            long begun = System.nanoTime();
            long begunBusy = threads.getCurrentThreadCpuTime();
            run.advance(Launch.UNTIL);
            wall[round] = (System.nanoTime() - begun) / 1e9;
            busy[round] = (threads.getCurrentThreadCpuTime() - begunBusy) / 1e9;
        }
        Arrays.sort(wall);
        Arrays.sort(busy);
        return new Times(wall[rounds / 2], busy[rounds / 2]);
    }

    private static void grow(int rounds) {
        times(PISTONS, USUAL, WARM_ROUNDS);
        for (int pistons = 5; pistons <= 15; pistons += 2) {
            var run = Launch.start(pistons, USUAL);
            run.advance(Launch.UNTIL);
            Times times = times(pistons, USUAL, rounds);
            System.out.printf(
                    Locale.ROOT,
                    "%2d + %2d pistons: wall %6.1f ms, busy %6.1f ms, %d steps, %.2f µs a step, %.3f µs a Newton step%n",
                    pistons,
                    pistons,
                    1e3 * times.wall,
                    1e3 * times.busy,
                    run.steps(),
                    1e6 * times.busy / run.steps(),
                    1e6 * times.busy / run.newtonSteps());
        }
    }
}
