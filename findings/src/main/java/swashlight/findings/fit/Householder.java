package swashlight.findings.fit;

/**
 * Linear least squares by Householder reflections, which keeps twice the digits of the normal equations.
 * Source: Golub and Van Loan, Matrix Computations, section 5.3.
 */
final class Householder {
    /** A column whose remaining length is below this share of the longest carries no information, 1. */
    private static final double SMALLEST_COLUMN = 1e-15;

    private Householder() {}

    /**
     * The x that makes |A x − b| smallest; columns without information get 0. Both arguments are overwritten.
     *
     * @param a rows of the matrix, at least as many as columns
     * @param b right-hand side
     */
    static double[] solve(double[][] a, double[] b) {
        int rows = a.length;
        int columns = a[0].length;
        double[] diagonal = new double[columns];
        double longest = 0;
        for (int k = 0; k < columns; k++) {
            double length = 0;
            for (int i = k; i < rows; i++) {
                length += a[i][k] * a[i][k];
            }
            length = Math.sqrt(length);
            longest = Math.max(longest, length);
            if (length <= SMALLEST_COLUMN * longest) {
                continue;
            }
            diagonal[k] = a[k][k] > 0 ? -length : length;
            a[k][k] -= diagonal[k];
            reflect(a, b, k, diagonal[k]);
        }
        return backSubstitute(a, b, diagonal);
    }

    private static void reflect(double[][] a, double[] b, int k, double diagonal) {
        double scale = -diagonal * a[k][k];
        for (int j = k + 1; j <= a[0].length; j++) {
            double dot = 0;
            for (int i = k; i < a.length; i++) {
                dot += a[i][k] * (j < a[0].length ? a[i][j] : b[i]);
            }
            dot /= scale;
            for (int i = k; i < a.length; i++) {
                if (j < a[0].length) {
                    a[i][j] -= dot * a[i][k];
                } else {
                    b[i] -= dot * a[i][k];
                }
            }
        }
    }

    private static double[] backSubstitute(double[][] a, double[] b, double[] diagonal) {
        int columns = diagonal.length;
        double[] x = new double[columns];
        for (int k = columns - 1; k >= 0; k--) {
            if (diagonal[k] == 0) {
                continue;
            }
            double sum = b[k];
            for (int j = k + 1; j < columns; j++) {
                sum -= a[k][j] * x[j];
            }
            x[k] = sum / diagonal[k];
        }
        return x;
    }
}
