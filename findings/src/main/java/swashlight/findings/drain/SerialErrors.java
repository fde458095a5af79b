package swashlight.findings.drain;

import java.util.Optional;
import swashlight.findings.fit.Cholesky;

/**
 * Errors that repeat from row to row, e_i = ρ e_(i−1) + new, apart in each run: ρ and the scatter by restricted likelihood.
 * <pre>
 *   −2 ln L_R(ρ) = (n − k) ln s² + ln |V| + ln |Xᵀ V⁻¹ X| ,   s² = min (y − Xb)ᵀ V⁻¹ (y − Xb) / (n − k)
 *
 *   V  correlation ρ^|i−j| within a run    X, b  design and coefficients of the law    n, k  rows, coefficients
 * </pre>
 * The restriction removes the shortfall that plain correlation of residuals has in short runs.
 * Source: Patterson and Thompson 1971; Cheang and Reinsel 2000. Check: coverage by simulation.
 */
record SerialErrors(double correlation, double deviation) {
    private static final double LARGEST = 0.97;
    private static final int GRID = 98;

    /**
     * @param design a row each of the law's derivatives
     * @param left what the law leaves of each row
     * @param run run of each row
     */
    static SerialErrors of(double[][] design, double[] left, int[] run) {
        SerialErrors best = new SerialErrors(0, 0);
        double least = Double.POSITIVE_INFINITY;
        for (int g = 0; g < GRID; g++) {
            double correlation = LARGEST * g / (GRID - 1);
            double[] answer = criterion(design, left, run, correlation);
            if (answer[0] < least) {
                least = answer[0];
                best = new SerialErrors(correlation, answer[1]);
            }
        }
        return best;
    }

    /** Readings that would tell as much about the scatter, were they independent, 1. */
    double effective(int rows) {
        double square = correlation * correlation;
        return rows * (1 - square) / (1 + square);
    }

    private static double[] criterion(double[][] design, double[] left, int[] run, double correlation) {
        int n = left.length;
        int k = design[0].length;
        double[][] normal = new double[k][k];
        double[] right = new double[k];
        double squares = 0;
        double logVariances = 0;
        for (int i = 0; i < n; i++) {
            boolean first = i == 0 || run[i] != run[i - 1];
            double share = first ? 0 : correlation;
            double variance = first ? 1 : 1 - correlation * correlation;
            double y = left[i] - (first ? 0 : share * left[i - 1]);
            double[] x = design[i].clone();
            for (int j = 0; j < k && !first; j++) {
                x[j] -= share * design[i - 1][j];
            }
            logVariances += Math.log(variance);
            squares += y * y / variance;
            for (int a = 0; a < k; a++) {
                right[a] += x[a] * y / variance;
                for (int b = 0; b < k; b++) {
                    normal[a][b] += x[a] * x[b] / variance;
                }
            }
        }
        Optional<Cholesky> factor = Cholesky.of(normal);
        if (factor.isEmpty()) {
            return new double[] {Double.POSITIVE_INFINITY, 0};
        }
        double[] b = factor.get().solve(right);
        for (int a = 0; a < k; a++) {
            squares -= b[a] * right[a];
        }
        double scatter = Math.max(squares, 1e-300) / (n - k);
        return new double[] {
            (n - k) * Math.log(scatter) + logVariances + factor.get().logDeterminant(), Math.sqrt(scatter)
        };
    }
}
