package swashlight.findings.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swashlight.findings.cause.Action;

/**
 * What many findings come to.
 *
 * <pre>
 *   calibration error   ECE = Σ_b n_b/N |mean chance − share right|   over ten bins of the likeliest action's chance
 *   ranks               of true severities among those drawn, in bins: even when intervals are honest (Talts et al. 2018)
 *   χ²                  Σ (count − expected)²/expected, bins − 1 degrees of freedom
 * </pre>
 *
 * @param machines how many
 * @param right share whose likeliest action is needed, 1
 * @param promised mean chance of the likeliest action, 1: what a perfect reasoner with these chances would get right
 * @param calibrationError ECE, 1
 * @param surprise mean of −ln(chance of the true cause), nat
 * @param reliability bins of the likeliest action
 * @param everyAction bins of every action of every machine
 * @param ranks counts
 * @param square χ² of the ranks, 1
 * @param spending what the machines cost, where that was worked out
 * @param wild how wild readings fared, where they were kept
 */
public record StudySummary(
        int machines,
        double right,
        double promised,
        double calibrationError,
        double surprise,
        List<Bin> reliability,
        List<Bin> everyAction,
        List<Integer> ranks,
        double square,
        Optional<Spending> spending,
        Optional<WildCount> wild) {
    private static final int BINS = 10;
    private static final int RANK_BINS = 20;
    private static final double BAND = 1.959964; // normal quantile of 0.975, standard deviations
    private static final double LEAST = 1e-9; // chance, 1: keeps a surprise finite

    public StudySummary {
        reliability = List.copyOf(reliability);
        everyAction = List.copyOf(everyAction);
        ranks = List.copyOf(ranks);
    }

    /**
     * One bin of chances.
     *
     * @param count how many
     * @param chance mean of them, 1
     * @param share of them that came true, 1
     */
    public record Bin(int count, double chance, double share) {
        /** Standard error of the share if the chances are honest, 1. */
        public double error() {
            return count > 0 ? Math.sqrt(chance * (1 - chance) / count) : 0;
        }
    }

    /** Adds rows up. */
    public static StudySummary of(List<StudyRow> rows) {
        Counter likeliest = new Counter();
        Counter every = new Counter();
        int[] ranks = new int[RANK_BINS];
        int ranked = 0;
        double right = 0;
        double promised = 0;
        double surprise = 0;
        for (StudyRow row : rows) {
            double chance = row.chances().get(row.likeliest());
            likeliest.add(chance, row.right());
            for (Action action : Action.values()) {
                every.add(row.chances().get(action), row.needed().contains(action));
            }
            right += row.right() ? 1 : 0;
            promised += chance;
            surprise -= Math.log(Math.max(LEAST, row.chanceOfTruth()));
            for (double rank : row.ranks()) {
                ranks[(int) Math.min(RANK_BINS - 1, rank * RANK_BINS)]++;
                ranked++;
            }
        }
        double count = Math.max(1, rows.size());
        double expected = ranked / (double) RANK_BINS;
        double square = 0;
        List<Integer> counts = new ArrayList<>();
        for (int rank : ranks) {
            square += expected > 0 ? (rank - expected) * (rank - expected) / expected : 0;
            counts.add(rank);
        }
        return new StudySummary(
                rows.size(),
                right / count,
                promised / count,
                likeliest.error(),
                surprise / count,
                likeliest.bins(),
                every.bins(),
                counts,
                square,
                Spending.of(rows),
                WildCount.of(rows));
    }

    /** Standard error of the share right if the chances are honest, 1. */
    public double rightError() {
        double variance = 0;
        for (Bin bin : reliability) {
            variance += bin.count() * bin.chance() * (1 - bin.chance());
        }
        return machines > 0 ? Math.sqrt(variance) / machines : 0;
    }

    /**
     * Calibration error that honest chances show by luck in so many machines, 1: Σ_b √(2/π n_b c (1 − c))/N, the mean size of normal deviations.
     */
    public double luck() {
        double sum = 0;
        for (Bin bin : reliability) {
            sum += Math.sqrt(2 / Math.PI * bin.count() * bin.chance() * (1 - bin.chance()));
        }
        return machines > 0 ? sum / machines : 0;
    }

    /** Count of ranks in a bin if they are even, 1. */
    public double evenCount() {
        return ranks.stream().mapToInt(Integer::intValue).sum() / (double) RANK_BINS;
    }

    /** Half the width of the band that holds nineteen in twenty even counts, 1 (normal law). */
    public double evenBand() {
        return BAND * Math.sqrt(evenCount() * (1 - 1.0 / RANK_BINS));
    }

    /** χ² that even ranks exceed one time in a hundred, 1. Source: Wilson and Hilferty 1931 (from memory). */
    public static double squareLimit() {
        double freedom = RANK_BINS - 1.0;
        double spread = 2 / (9 * freedom);
        double root = 1 - spread + 2.326 * Math.sqrt(spread); // 2.326: normal quantile of 0.99
        return freedom * root * root * root;
    }

    private static final class Counter {
        private final int[] count = new int[BINS];
        private final double[] chance = new double[BINS];
        private final double[] came = new double[BINS];
        private int all;

        void add(double probability, boolean happened) {
            int bin = (int) Math.min(BINS - 1, probability * BINS);
            count[bin]++;
            chance[bin] += probability;
            came[bin] += happened ? 1 : 0;
            all++;
        }

        double error() {
            double sum = 0;
            for (int b = 0; b < BINS; b++) {
                sum += Math.abs(chance[b] - came[b]);
            }
            return sum / Math.max(1, all);
        }

        List<Bin> bins() {
            List<Bin> bins = new ArrayList<>();
            for (int b = 0; b < BINS; b++) {
                double number = Math.max(1, count[b]);
                bins.add(new Bin(count[b], chance[b] / number, came[b] / number));
            }
            return bins;
        }
    }
}
