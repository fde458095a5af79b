package swashlight.bench;

import java.io.IOException;
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
 * </pre>
 */
public final class BesidePeers {
    private static final int PISTONS = 7;
    private static final int WARM_ROUNDS = 12; // runs before anything is timed
    private static final double USUAL = 1e-3; // tolerance of the growth measurement

    private BesidePeers() {}

    /** Does one of the four. */
    public static void main(String[] words) throws IOException {
        switch (words[0]) {
            case "tell" -> Files.writeString(Path.of(words[2]), Launch.told(Integer.parseInt(words[1])));
            case "run" ->
                run(Path.of(words[1]), Integer.parseInt(words[2]), Arrays.copyOfRange(words, 3, words.length));
            case "grow" -> grow(Integer.parseInt(words[1]));
            case "table" -> PeerTable.print(Path.of(words[1]), Arrays.copyOfRange(words, 2, words.length));
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
            double[] wall = times(PISTONS, tolerance, rounds);
            all.append(String.format(
                    Locale.ROOT,
                    "Swashlight %s %.6g %.6g %d %d%n",
                    word,
                    wall[wall.length / 2],
                    wall[0],
                    run.steps(),
                    run.newtonSteps()));
            all.append(windows.written());
            System.err.printf("Swashlight %s: %d steps, %.3f s%n", word, run.steps(), wall[wall.length / 2]);
        }
        Files.writeString(file, all);
    }

    private static double[] times(int pistons, double tolerance, int rounds) {
        double[] wall = new double[rounds];
        for (int round = 0; round < rounds; round++) {
            var run = Launch.start(pistons, tolerance);
            long begun = System.nanoTime();
            run.advance(Launch.UNTIL);
            wall[round] = (System.nanoTime() - begun) / 1e9;
        }
        Arrays.sort(wall);
        return wall;
    }

    private static void grow(int rounds) {
        times(PISTONS, USUAL, WARM_ROUNDS);
        for (int pistons = 5; pistons <= 15; pistons += 2) {
            var run = Launch.start(pistons, USUAL);
            run.advance(Launch.UNTIL);
            double[] wall = times(pistons, USUAL, rounds);
            System.out.printf(
                    Locale.ROOT,
                    "%2d + %2d pistons: median %6.1f ms, least %6.1f ms, %d steps, %.2f µs a step, %.3f µs a Newton step%n",
                    pistons,
                    pistons,
                    1e3 * wall[rounds / 2],
                    1e3 * wall[0],
                    run.steps(),
                    1e6 * wall[0] / run.steps(),
                    1e6 * wall[0] / run.newtonSteps());
        }
    }
}
