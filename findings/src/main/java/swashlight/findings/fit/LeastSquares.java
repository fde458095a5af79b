package swashlight.findings.fit;

/** A least-squares problem as an object: residuals, and their derivatives where the law gives them. */
public interface LeastSquares {
    /** Number of residuals. */
    int residualCount();

    /**
     * Writes the residuals (model less reading, over its error) at a point.
     *
     * @param point parameters, each in its own unit
     * @param residuals filled, 1
     */
    void residuals(double[] point, double[] residuals);

    /**
     * Writes ∂r_i/∂p_j at a point; central differences unless the problem knows better.
     *
     * @param point parameters, each in its own unit
     * @param jacobian rows of derivatives, filled
     */
    default void jacobian(double[] point, double[][] jacobian) {
        int n = residualCount();
        double[] ahead = new double[n];
        double[] behind = new double[n];
        double[] moved = point.clone();
        for (int j = 0; j < point.length; j++) {
            double step = CentralStep.at(point[j]);
            moved[j] = point[j] + step;
            residuals(moved, ahead);
            moved[j] = point[j] - step;
            residuals(moved, behind);
            moved[j] = point[j];
            for (int i = 0; i < n; i++) {
                jacobian[i][j] = (ahead[i] - behind[i]) / (2 * step);
            }
        }
    }
}
