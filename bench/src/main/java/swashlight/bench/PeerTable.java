package swashlight.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Reads what the peers wrote and prints how far each run lies from the tightest, and who is how much faster at equal error. */
final class PeerTable {
    private static final int FROM = 10; // windows before 0.2 s do not count: the machine hardly moves
    private static final int TURNS = 10; // windows of a mean
    private static final String[] SHORT = {"pA", "pB", "pG", "Tp", "Tm", "wm", "v", "Qmu"};
    private static final String OWN = "Swashlight";
    private static final double SOUGHT_MEAN = 1e-3;
    private static final double SOUGHT_SWING = 0.02;

    /** One run as written: a header, then means and swings of each channel. */
    private record Written(String who, String tolerance, double wall, double busy, String steps, double[][] rows) {
        private String words() {
            return String.format(
                    Locale.ROOT, "%-11s %7s %9.1f %9.1f %8s", who, tolerance, 1e3 * wall, 1e3 * busy, steps);
        }
    }

    /** A run and its worst errors, 1. */
    private record Judged(Written run, double mean, double swing) {
        private boolean asGoodAs(double otherMean, double otherSwing) {
            return mean <= otherMean && swing <= otherSwing;
        }
    }

    private PeerTable() {}

    static void print(Path tight, String[] files) throws IOException {
        List<Written> exact = read(tight);
        Written reference = exact.get(exact.size() - 1);
        System.out.println(
                "Errors in % against " + reference.who + " at " + reference.tolerance
                        + ", 0.2 … 1 s: worst mean over ten turns (0.2 s) over the channel's RMS; then, marked ~, mean error of a turn's"
                        + " swing (trough to peak) over the mean swing; turn: worst mean of a single turn (20 ms) of any channel.");
        System.out.println(heading());
        List<Judged> all = new ArrayList<>();
        for (String file : files) {
            for (Written run : read(Path.of(file))) {
                all.add(judged(run, reference));
            }
        }
        System.out.println();
        all.stream().filter(judged -> judged.run.who.equals(OWN)).forEach(own -> beside(own, all, own.mean, own.swing));
        System.out.printf(
                Locale.ROOT, "%nMeans within %.1f %%, swings within %.0f %%:%n", 100 * SOUGHT_MEAN, 100 * SOUGHT_SWING);
        cheapest(all, true, SOUGHT_MEAN, SOUGHT_SWING).ifPresent(own -> beside(own, all, SOUGHT_MEAN, SOUGHT_SWING));
    }

    /** Prints the tightest run as the test beside CVODE keeps it: four means over ten turns and the mean swing of each channel. */
    static void printKept(Path tight) throws IOException {
        List<Written> exact = read(tight);
        double[][] rows = exact.get(exact.size() - 1).rows;
        System.out.println("channel,mean0,mean1,mean2,mean3,swing");
        for (int channel = 0; channel < SHORT.length; channel++) {
            StringBuilder line = new StringBuilder(Windows.CHANNELS.get(channel).name());
            double[] means = rows[2 * channel];
            for (int w = FROM; w < means.length; w += TURNS) {
                line.append(String.format(Locale.ROOT, ",%.8g", average(means, w, w + TURNS)));
            }
            double[] swings = rows[2 * channel + 1];
            System.out.println(line.append(String.format(Locale.ROOT, ",%.6g", average(swings, FROM, swings.length))));
        }
    }

    private static double average(double[] values, int from, int to) {
        return Arrays.stream(values, from, to).average().orElseThrow();
    }

    private static String heading() {
        StringBuilder head =
                new StringBuilder(String.format("%-11s %7s %9s %9s %8s", "who", "tol", "wall ms", "busy ms", "steps"));
        for (String mark : new String[] {"", "~"}) {
            for (String name : SHORT) {
                head.append(String.format(" %6s", mark + name));
            }
        }
        return head.append("   turn").toString();
    }

    private static void beside(Judged own, List<Judged> all, double mean, double swing) {
        String mine = String.format(
                Locale.ROOT,
                "%s at %s: busy %.1f ms, %.1f times as fast as time passes (means %.3f %%, swings %.2f %%)",
                OWN,
                own.run.tolerance,
                1e3 * own.run.busy,
                Launch.UNTIL / own.run.busy,
                100 * own.mean,
                100 * own.swing);
        System.out.println(mine
                + cheapest(all, false, mean, swing)
                        .map(peer -> String.format(
                                Locale.ROOT,
                                "; cheapest as good: %s at %s, %.1f ms: %.1f times as long, by the clock on the wall %.1f",
                                peer.run.who,
                                peer.run.tolerance,
                                1e3 * peer.run.busy,
                                peer.run.busy / own.run.busy,
                                peer.run.wall / own.run.wall))
                        .orElse("; no peer as good"));
    }

    private static java.util.Optional<Judged> cheapest(List<Judged> all, boolean own, double mean, double swing) {
        return all.stream()
                .filter(judged -> judged.run.who.equals(OWN) == own && judged.asGoodAs(mean, swing))
                .min(Comparator.comparingDouble(judged -> judged.run.busy));
    }

    private static Judged judged(Written run, Written reference) {
        StringBuilder line = new StringBuilder(run.words());
        double[] worst = new double[2];
        double turn = 0;
        for (int swing = 0; swing < 2; swing++) {
            for (int channel = 0; channel < SHORT.length; channel++) {
                double[] mine = run.rows[2 * channel + swing];
                double[] exact = reference.rows[2 * channel + swing];
                double error = swing == 0 ? worst(mine, exact, TURNS) : mean(mine, exact);
                worst[swing] = Math.max(worst[swing], error);
                turn = swing == 0 ? Math.max(turn, worst(mine, exact, 1)) : turn;
                line.append(String.format(Locale.ROOT, " %6.3f", 100 * error));
            }
        }
        System.out.println(line.append(String.format(Locale.ROOT, " %6.2f", 100 * turn)));
        return new Judged(run, worst[0], worst[1]);
    }

    private static double worst(double[] mine, double[] exact, int turns) {
        double worst = 0;
        double square = 0;
        for (int w = FROM; w + turns <= exact.length; w += turns) {
            double off = 0;
            for (int i = w; i < w + turns; i++) {
                off += (mine[i] - exact[i]) / turns;
                square += exact[i] * exact[i];
            }
            worst = Math.max(worst, Math.abs(off));
        }
        return worst / Math.sqrt(square / (exact.length - FROM));
    }

    private static double mean(double[] mine, double[] exact) {
        double off = 0;
        double all = 0;
        for (int w = FROM; w < exact.length; w++) {
            off += Math.abs(mine[w] - exact[w]);
            all += exact[w];
        }
        return off / all;
    }

    private static List<Written> read(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        List<Written> runs = new ArrayList<>();
        int size = 1 + 2 * SHORT.length;
        for (int at = 0; at + size <= lines.size(); at += size) {
            String[] words = lines.get(at).split(" ");
            double[][] rows = new double[2 * SHORT.length][];
            for (int row = 0; row < rows.length; row++) {
                String[] numbers = lines.get(at + 1 + row).trim().split(" ");
                rows[row] = new double[numbers.length];
                for (int w = 0; w < numbers.length; w++) {
                    rows[row][w] = Double.parseDouble(numbers[w]);
                }
            }
            double wall = Double.parseDouble(words[2]);
            runs.add(new Written(words[0], words[1], wall, Double.parseDouble(words[3]), words[4], rows));
        }
        return runs;
    }
}
