package swashlight.findings.evidence;

/**
 * The directions among the unknowns that the readings pin down, as an orthonormal basis T: eigenvectors of Jᵀ S⁻¹ J with an eigenvalue above a
 * limit, so that a reading leaves less than a third of the spread. Everything else stays nearly as free as it was.
 *
 * <p>Found from the small matrix S^−½ J Jᵀ S^−½ by Jacobi's rotations. Source: Golub and Van Loan, Matrix Computations (from memory).
 */
final class TightSpace {
    private static final double LIMIT = 9; // eigenvalue: spread left below 1/√10
    private static final int SWEEPS = 30;
    private static final double SMALL = 1e-12; // off-diagonal left, share of the diagonal, 1

    private final double[][] basis;

    TightSpace(double[][] jacobian, double[] variance, int k) {
        int n = variance.length;
        double[][] a = new double[n][n];
        double[][] v = new double[n][n];
        for (int i = 0; i < n; i++) {
            v[i][i] = 1;
            for (int j = 0; j < n; j++) {
                double sum = 0;
                for (int l = 0; l < k; l++) {
                    sum += jacobian[i][l] * jacobian[j][l];
                }
                a[i][j] = sum / Math.sqrt(variance[i] * variance[j]);
            }
        }
        rotate(a, v, n);
        int count = 0;
        for (int i = 0; i < n; i++) {
            count += a[i][i] > LIMIT ? 1 : 0;
        }
        basis = new double[count][k];
        int place = 0;
        for (int i = 0; i < n; i++) {
            if (a[i][i] > LIMIT) {
                for (int l = 0; l < k; l++) {
                    double sum = 0;
                    for (int j = 0; j < n; j++) {
                        sum += jacobian[j][l] / Math.sqrt(variance[j]) * v[j][i];
                    }
                    basis[place][l] = sum / Math.sqrt(a[i][i]);
                }
                place++;
            }
        }
    }

    private static void rotate(double[][] a, double[][] v, int n) {
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            double off = 0;
            double on = 0;
            for (int i = 0; i < n; i++) {
                on += a[i][i] * a[i][i];
                for (int j = 0; j < i; j++) {
                    off += a[i][j] * a[i][j];
                }
            }
            if (off <= SMALL * SMALL * on) {
                return;
            }
            for (int p = 0; p < n; p++) {
                for (int q = p + 1; q < n; q++) {
                    rotate(a, v, p, q);
                }
            }
        }
    }

    private static void rotate(double[][] a, double[][] v, int p, int q) {
        if (a[p][q] == 0) {
            return;
        }
        double theta = (a[q][q] - a[p][p]) / (2 * a[p][q]);
        double t = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
        double c = 1 / Math.sqrt(t * t + 1);
        double s = t * c;
        for (int i = 0; i < a.length; i++) {
            double ip = a[i][p];
            double iq = a[i][q];
            a[i][p] = c * ip - s * iq;
            a[i][q] = s * ip + c * iq;
        }
        for (int i = 0; i < a.length; i++) {
            double pi = a[p][i];
            double qi = a[q][i];
            a[p][i] = c * pi - s * qi;
            a[q][i] = s * pi + c * qi;
            double vp = v[i][p];
            double vq = v[i][q];
            v[i][p] = c * vp - s * vq;
            v[i][q] = s * vp + c * vq;
        }
    }

    /** How many directions, 1. */
    int size() {
        return basis.length;
    }

    /** J T: slopes of the readings along the directions. */
    double[][] slopes(double[][] jacobian) {
        double[][] slopes = new double[jacobian.length][basis.length];
        for (int i = 0; i < jacobian.length; i++) {
            for (int b = 0; b < basis.length; b++) {
                slopes[i][b] = dot(basis[b], jacobian[i]);
            }
        }
        return slopes;
    }

    /** Takes off a vector what lies in the space. */
    void outside(double[] z) {
        for (double[] direction : basis) {
            add(direction, -dot(direction, z), z);
        }
    }

    /** Adds T y to a vector. */
    void add(double[] y, double[] z) {
        for (int b = 0; b < basis.length; b++) {
            add(basis[b], y[b], z);
        }
    }

    private static void add(double[] direction, double factor, double[] z) {
        for (int l = 0; l < z.length; l++) {
            z[l] += factor * direction[l];
        }
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int l = 0; l < a.length; l++) {
            sum += a[l] * b[l];
        }
        return sum;
    }
}
