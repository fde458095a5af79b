package swashlight.drive.steady;

/** Linear systems of five unknowns: elimination with row pivoting, in place, without allocation. */
final class SmallSystem {
    static final int SIZE = 5;
    private static final double SINGULAR = 1e-250; // pivot

    private SmallSystem() {}

    /**
     * Solves J x = f; x replaces f, J is destroyed.
     *
     * @return false when the matrix is singular to working precision
     */
    static boolean solve(double[] j, double[] f) {
        for (int column = 0; column < SIZE; column++) {
            int pivot = column;
            double most = Math.abs(j[column * SIZE + column]);
            for (int row = column + 1; row < SIZE; row++) {
                double size = Math.abs(j[row * SIZE + column]);
                if (size > most) {
                    most = size;
                    pivot = row;
                }
            }
            if (!(most > SINGULAR)) {
                return false;
            }
            int top = column * SIZE;
            if (pivot != column) {
                swap(j, f, pivot, column);
            }
            double inverse = 1 / j[top + column];
            for (int row = column + 1; row < SIZE; row++) {
                int at = row * SIZE;
                double factor = j[at + column];
                if (factor != 0) {
                    factor *= inverse;
                    for (int k = column + 1; k < SIZE; k++) {
                        j[at + k] -= factor * j[top + k];
                    }
                    f[row] -= factor * f[column];
                }
            }
        }
        f[4] = f[4] / j[24];
        f[3] = (f[3] - j[19] * f[4]) / j[18];
        f[2] = (f[2] - j[13] * f[3] - j[14] * f[4]) / j[12];
        f[1] = (f[1] - j[7] * f[2] - j[8] * f[3] - j[9] * f[4]) / j[6];
        f[0] = (f[0] - j[1] * f[1] - j[2] * f[2] - j[3] * f[3] - j[4] * f[4]) / j[0];
        return true;
    }

    private static void swap(double[] j, double[] f, int a, int b) {
        for (int k = 0; k < SIZE; k++) {
            double hold = j[a * SIZE + k];
            j[a * SIZE + k] = j[b * SIZE + k];
            j[b * SIZE + k] = hold;
        }
        double hold = f[a];
        f[a] = f[b];
        f[b] = hold;
    }
}
