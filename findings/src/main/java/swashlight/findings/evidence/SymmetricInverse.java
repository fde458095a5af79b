package swashlight.findings.evidence;

/** Inverse and determinant of a small positive definite matrix, in place and without allocation (Gauss–Jordan, no pivoting needed). */
final class SymmetricInverse {
    private SymmetricInverse() {}

    /** Turns the matrix (any unit) into its inverse; returns ln of its determinant (1), or −infinity when it is not definite. */
    static double invert(double[][] a, int n) {
        double log = 0;
        for (int k = 0; k < n; k++) {
            double pivot = a[k][k];
            if (!(pivot > 0)) {
                return Double.NEGATIVE_INFINITY;
            }
            log += Math.log(pivot);
            a[k][k] = 1;
            for (int j = 0; j < n; j++) {
                a[k][j] /= pivot;
            }
            for (int i = 0; i < n; i++) {
                if (i != k) {
                    double factor = a[i][k];
                    a[i][k] = 0;
                    for (int j = 0; j < n; j++) {
                        a[i][j] -= factor * a[k][j];
                    }
                }
            }
        }
        return log;
    }
}
