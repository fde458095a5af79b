package swashlight.drive.steady;

/** Linear systems of five unknowns: elimination with row pivoting, in place, without allocation. */
final class SmallSystem {
    static final int SIZE = 5;

    private SmallSystem() {}

    /**
     * Solves J x = f; x replaces f, J is destroyed.
     *
     * @return false when the matrix is singular to working precision
     */
    static boolean solve(double[] j, double[] f) {
        for (int column = 0; column < SIZE; column++) {
            int pivot = column;
            for (int row = column + 1; row < SIZE; row++) {
                if (Math.abs(j[row * SIZE + column]) > Math.abs(j[pivot * SIZE + column])) {
                    pivot = row;
                }
            }
            double head = j[pivot * SIZE + column];
            if (!(Math.abs(head) > 1e-250)) {
                return false;
            }
            if (pivot != column) {
                swap(j, f, pivot, column);
            }
            for (int row = column + 1; row < SIZE; row++) {
                double factor = j[row * SIZE + column] / head;
                if (factor != 0) {
                    for (int k = column + 1; k < SIZE; k++) {
                        j[row * SIZE + k] -= factor * j[column * SIZE + k];
                    }
                    f[row] -= factor * f[column];
                }
            }
        }
        for (int row = SIZE - 1; row >= 0; row--) {
            double sum = f[row];
            for (int k = row + 1; k < SIZE; k++) {
                sum -= j[row * SIZE + k] * f[k];
            }
            f[row] = sum / j[row * SIZE + row];
        }
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
