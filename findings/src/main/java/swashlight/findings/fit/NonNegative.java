package swashlight.findings.fit;

import java.util.Arrays;

/**
 * Linear least squares in which chosen coefficients may not be negative: the active-set method.
 * Source: Lawson and Hanson, Solving Least Squares Problems, 1974, chapter 23.
 */
public final class NonNegative {
    private NonNegative() {}

    /**
     * The coefficients that make |A x − b| smallest with x_j ≥ 0 for j at or above {@code firstBound}.
     *
     * @param a rows of the design, each column in the unit of b over that of its coefficient
     * @param b what is to be met
     * @param firstBound columns below this index are free in sign
     * @return converged with the sum of squares as objective
     */
    public static FitOutcome solve(double[][] a, double[] b, int firstBound) {
        int columns = a[0].length;
        double[] lengths = lengths(a);
        boolean[] in = new boolean[columns];
        Arrays.fill(in, 0, firstBound, true);
        double[] x = passive(a, b, in, lengths);
        for (int iteration = 1; iteration <= 10 * columns; iteration++) {
            int best = steepest(a, b, x, in, lengths);
            if (best < 0) {
                return new FitOutcome.Converged(x, squares(a, b, x), iteration);
            }
            in[best] = true;
            double[] trial = passive(a, b, in, lengths);
            while (negative(trial, in, firstBound)) {
                double share = 1;
                for (int j = firstBound; j < columns; j++) {
                    if (in[j] && trial[j] <= 0) {
                        share = Math.min(share, x[j] / Math.max(x[j] - trial[j], 1e-300));
                    }
                }
                for (int j = firstBound; j < columns; j++) {
                    x[j] += share * (trial[j] - x[j]);
                    if ((in[j] && x[j] * lengths[j] <= 1e-14 * Math.abs(trial[j] * lengths[j])) || x[j] < 0) {
                        x[j] = 0;
                        in[j] = false;
                    }
                }
                trial = passive(a, b, in, lengths);
            }
            x = trial;
        }
        return new FitOutcome.NotConverged(
                x, squares(a, b, x), 10 * columns, "terms keep changing places; leave out one of two alike");
    }

    private static boolean negative(double[] x, boolean[] in, int firstBound) {
        for (int j = firstBound; j < x.length; j++) {
            if (in[j] && x[j] <= 0) {
                return true;
            }
        }
        return false;
    }

    private static double[] passive(double[][] a, double[] b, boolean[] in, double[] lengths) {
        int count = 0;
        for (boolean one : in) {
            count += one ? 1 : 0;
        }
        double[] x = new double[in.length];
        if (count == 0) {
            return x;
        }
        double[][] reduced = new double[Math.max(a.length, count)][count];
        for (int i = 0; i < a.length; i++) {
            for (int j = 0, k = 0; j < in.length; j++) {
                if (in[j]) {
                    reduced[i][k++] = a[i][j] / lengths[j];
                }
            }
        }
        double[] solved = Householder.solve(reduced, Arrays.copyOf(b, reduced.length));
        for (int j = 0, k = 0; j < in.length; j++) {
            if (in[j]) {
                x[j] = solved[k++] / lengths[j];
            }
        }
        return x;
    }

    private static int steepest(double[][] a, double[] b, double[] x, boolean[] in, double[] lengths) {
        double[] left = residuals(a, b, x);
        double size = 0;
        for (double value : b) {
            size += value * value;
        }
        double most = 1e-11 * Math.sqrt(size);
        int best = -1;
        for (int j = 0; j < x.length; j++) {
            double slope = 0;
            for (int i = 0; i < a.length; i++) {
                slope += a[i][j] * left[i];
            }
            if (!in[j] && slope / lengths[j] > most) {
                most = slope / lengths[j];
                best = j;
            }
        }
        return best;
    }

    private static double[] lengths(double[][] a) {
        double[] lengths = new double[a[0].length];
        for (double[] row : a) {
            for (int j = 0; j < lengths.length; j++) {
                lengths[j] += row[j] * row[j];
            }
        }
        for (int j = 0; j < lengths.length; j++) {
            lengths[j] = lengths[j] > 0 ? Math.sqrt(lengths[j]) : 1;
        }
        return lengths;
    }

    private static double[] residuals(double[][] a, double[] b, double[] x) {
        double[] left = b.clone();
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j < x.length; j++) {
                left[i] -= a[i][j] * x[j];
            }
        }
        return left;
    }

    private static double squares(double[][] a, double[] b, double[] x) {
        double sum = 0;
        for (double value : residuals(a, b, x)) {
            sum += value * value;
        }
        return sum;
    }
}
