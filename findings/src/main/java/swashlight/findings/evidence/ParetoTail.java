package swashlight.findings.evidence;

import java.util.Arrays;

/**
 * Smooths the largest weights of a sample: they are replaced by what a generalised Pareto law, fitted to them, expects of so many, never more
 * than the largest was. One machine that happens to weigh much then counts as what it is, a draw from a long tail.
 *
 * <pre>
 *   F(x) = 1 − (1 + κ x/s)^(−1/κ),   x = w − u
 *
 *   w   a weight of the tail, over the largest    1
 *   u   the largest weight below the tail         1
 *   M   weights in the tail, min(N/5, 3 √N)       1
 *   κ   shape: the heavier the larger             1
 * </pre>
 *
 * Source: Vehtari, Simpson, Gelman, Yao and Gabry, Pareto smoothed importance sampling (JMLR 25, 2024, 72), with the estimator of Zhang and
 * Stephens, Technometrics 51 (2009) 316, and its weak prior κ → ½ (all from memory).
 */
final class ParetoTail {
    private static final int LEAST = 5; // weights that a tail can be fitted to, 1
    private static final double SHARE = 0.2; // of all weights at most, 1
    private static final double ROOTS = 3; // of the square root of their number at most, 1
    private static final int CANDIDATES = 30; // of the fit, and √M more
    private static final double SPREAD = 3; // of the candidates, over the first quarter of the tail, 1
    private static final double PRIOR_SHAPE = 0.5; // 1
    private static final double PRIOR_SIZE = 10; // weights

    private ParetoTail() {}

    /** Smooths in place, ln of weights; returns the shape κ (1), 0 where there is no tail to be fitted. */
    static double smooth(double[] logWeight) {
        int count = logWeight.length;
        int tail = (int) Math.min(SHARE * count, ROOTS * Math.sqrt(count));
        Integer[] order = new Integer[count];
        for (int i = 0; i < count; i++) {
            order[i] = i;
        }
        Arrays.sort(order, (a, b) -> Double.compare(logWeight[a], logWeight[b]));
        double highest = logWeight[order[count - 1]];
        if (tail < LEAST || highest == Double.NEGATIVE_INFINITY) {
            return 0;
        }
        double below = Math.exp(logWeight[order[count - tail - 1]] - highest);
        double[] over = new double[tail];
        for (int z = 0; z < tail; z++) {
            over[z] = Math.exp(logWeight[order[count - tail + z]] - highest) - below;
        }
        if (!(quarter(over) > 0)) {
            return 0;
        }
        double slope = slope(over);
        double fitted = shape(slope, over);
        double scale = -fitted / slope;
        double shape = (tail * fitted + PRIOR_SIZE * PRIOR_SHAPE) / (tail + PRIOR_SIZE);
        if (!(scale > 0) || shape == 0) {
            return 0;
        }
        for (int z = 0; z < tail; z++) {
            double above = -Math.log(1 - (z + 0.5) / tail);
            double smoothed = below + scale * (Math.exp(shape * above) - 1) / shape;
            logWeight[order[count - tail + z]] = highest + Math.min(0, Math.log(smoothed));
        }
        return shape;
    }

    private static double quarter(double[] over) {
        return over[(int) (over.length / 4.0 + 0.5) - 1];
    }

    /** −κ/s as the mean of its profile posterior, 1. */
    private static double slope(double[] over) {
        int count = over.length;
        int candidates = CANDIDATES + (int) Math.sqrt(count);
        double[] slope = new double[candidates];
        double[] log = new double[candidates];
        double highest = Double.NEGATIVE_INFINITY;
        for (int j = 0; j < candidates; j++) {
            slope[j] = 1 / over[count - 1] + (1 - Math.sqrt(candidates / (j + 0.5))) / (SPREAD * quarter(over));
            double shape = shape(slope[j], over);
            double likely = -slope[j] / shape;
            log[j] = likely > 0 ? count * (Math.log(likely) - shape - 1) : Double.NEGATIVE_INFINITY;
            highest = Math.max(highest, log[j]);
        }
        double sum = 0;
        double mean = 0;
        for (int j = 0; j < candidates; j++) {
            double share = Math.exp(log[j] - highest);
            sum += share;
            mean += share * slope[j];
        }
        return mean / sum;
    }

    /** κ that goes with a slope, 1. */
    private static double shape(double slope, double[] over) {
        double sum = 0;
        for (double x : over) {
            sum += Math.log(1 - slope * x);
        }
        return sum / over.length;
    }
}
