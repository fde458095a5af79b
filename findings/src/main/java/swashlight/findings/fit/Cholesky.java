package swashlight.findings.fit;

import java.util.Optional;

/** Factor of a small symmetric positive definite matrix, A = L Lᵀ; source: Golub and Van Loan, Matrix Computations. */
public final class Cholesky {
    /** A pivot smaller than this share of its diagonal counts as none, 1 (about 50 units in the last place). */
    private static final double SMALLEST_PIVOT = 1e-14;

    private final double[][] lower;

    private Cholesky(double[][] lower) {
        this.lower = lower;
    }

    /**
     * The factor, or nothing where the matrix is not positive definite to working accuracy.
     *
     * @param matrix symmetric; only its lower triangle is read
     */
    public static Optional<Cholesky> of(double[][] matrix) {
        int n = matrix.length;
        double[][] lower = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= lower[i][k] * lower[j][k];
                }
                if (i > j) {
                    lower[i][j] = sum / lower[j][j];
                } else if (sum > SMALLEST_PIVOT * Math.abs(matrix[i][i])) {
                    lower[i][i] = Math.sqrt(sum);
                } else {
                    return Optional.empty();
                }
            }
        }
        return Optional.of(new Cholesky(lower));
    }

    /** The solution x of A x = b. */
    public double[] solve(double[] b) {
        int n = lower.length;
        double[] x = b.clone();
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < i; k++) {
                x[i] -= lower[i][k] * x[k];
            }
            x[i] /= lower[i][i];
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int k = i + 1; k < n; k++) {
                x[i] -= lower[k][i] * x[k];
            }
            x[i] /= lower[i][i];
        }
        return x;
    }

    /** ln |A|, 1 (A in any unit squared). */
    public double logDeterminant() {
        double sum = 0;
        for (int i = 0; i < lower.length; i++) {
            sum += 2 * Math.log(lower[i][i]);
        }
        return sum;
    }

    /** A⁻¹. */
    public double[][] inverse() {
        int n = lower.length;
        double[][] inverse = new double[n][];
        for (int i = 0; i < n; i++) {
            double[] unit = new double[n];
            unit[i] = 1;
            inverse[i] = solve(unit);
        }
        return inverse;
    }
}
