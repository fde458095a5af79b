package swashlight.findings.drain;

import java.util.List;

/** How well the parameters of a leak law are known, and any sum of them: rows and outside assumptions together. */
final class LawSpread {
    private final double[][] covariance;
    private final double rowFactor;
    private final double outsideFactor;
    private final List<double[]> moves;

    /**
     * @param covariance of the parameters if the rows were independent
     * @param rowFactor from standard error to 95 % half width for the rows, 1
     * @param outsideFactor the same for the assumptions, 1
     * @param moves change of the parameters for one standard deviation of each assumption
     */
    LawSpread(double[][] covariance, double rowFactor, double outsideFactor, List<double[]> moves) {
        this.covariance = covariance;
        this.rowFactor = rowFactor;
        this.outsideFactor = outsideFactor;
        this.moves = List.copyOf(moves);
    }

    /** 95 % half width of Σ weights_j · parameter_j. */
    double halfWidth(double[] weights) {
        double rows = rowHalfWidth(weights);
        double outside = 0;
        for (double[] move : moves) {
            double sum = 0;
            for (int j = 0; j < weights.length; j++) {
                sum += weights[j] * move[j];
            }
            outside += sum * sum;
        }
        return Math.sqrt(rows * rows + outsideFactor * outsideFactor * outside);
    }

    /** The part of it that comes from the rows. */
    double rowHalfWidth(double[] weights) {
        double variance = 0;
        for (int i = 0; i < weights.length; i++) {
            for (int j = 0; j < weights.length; j++) {
                variance += weights[i] * covariance[i][j] * weights[j];
            }
        }
        return rowFactor * Math.sqrt(Math.max(0, variance));
    }
}
