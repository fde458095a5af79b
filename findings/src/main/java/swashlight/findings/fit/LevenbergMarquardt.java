package swashlight.findings.fit;

import java.util.Arrays;

/**
 * Nonlinear least squares by damped Gauss–Newton steps with limits on the parameters.
 * <pre>
 *   (JᵀJ + λ D) δ = −Jᵀ r,   D the largest diagonal of JᵀJ seen so far
 *
 *   J  derivatives of the residuals     r  residuals     λ  damping, 1
 * </pre>
 * λ follows the ratio of the gain had to the gain foreseen. A parameter on its limit that would be pushed out rests.
 * Source: Marquardt 1963; Moré 1978 (scaling); Nielsen 1999 (damping). Check: 10.1, 10.2, D9 (NIST StRD).
 */
public final class LevenbergMarquardt {
    private static final int MOST_ITERATIONS = 2000;

    /** Relative gain below which a step counts as none, 1. */
    private static final double SMALLEST_GAIN = 1e-15;

    /** Relative step below which the point counts as found, 1. */
    private static final double SMALLEST_STEP = 1e-11;

    /** Cosine between residuals and a column of derivatives that counts as a right angle, 1. */
    private static final double SMALLEST_COSINE = 1e-6;

    /** A parameter whose pull has faded below this share (squared) of the strongest seen has no say any more, 1. */
    private static final double LOST_COLUMN = 1e-24;

    /** Damping at the start, 1: bold first; shy ones follow where a bold step ran onto a plain without slopes. */
    private static final double[] FIRST_DAMPINGS = {1e-3, 1e2, 1e5};

    /** Damping above which no step helps any more, 1. */
    private static final double LARGEST_DAMPING = 1e20;

    private LevenbergMarquardt() {}

    /**
     * The parameters that make the sum of squared residuals smallest, near a start.
     *
     * @param problem residuals
     * @param start first guess, each in its own unit; its length is the number of parameters
     * @param bounds limits
     */
    public static FitOutcome solve(LeastSquares problem, double[] start, Bounds bounds) {
        FitOutcome best = new Run(problem, bounds.clamp(start), bounds, FIRST_DAMPINGS[0]).toTheEnd();
        for (int k = 1; k < FIRST_DAMPINGS.length && !best.converged(); k++) {
            FitOutcome next = new Run(problem, bounds.clamp(start), bounds, FIRST_DAMPINGS[k]).toTheEnd();
            best = next.converged() || next.objective() < best.objective() ? next : best;
        }
        return best;
    }

    private static final class Run {
        private final LeastSquares problem;
        private final Bounds bounds;
        private final double[] residuals;
        private final double[] trialResiduals;
        private final double[][] jacobian;
        private final double[] scale;
        private double[] point;
        private double cost;
        private final double startCost;
        private double damping;
        private double growth = 2;

        Run(LeastSquares problem, double[] start, Bounds bounds, double damping) {
            this.damping = damping;
            this.problem = problem;
            this.bounds = bounds;
            point = start;
            residuals = new double[problem.residualCount()];
            trialResiduals = new double[residuals.length];
            jacobian = new double[residuals.length][start.length];
            scale = new double[start.length];
            problem.residuals(point, residuals);
            cost = squares(residuals);
            startCost = cost;
        }

        FitOutcome toTheEnd() {
            if (!finite(cost)) {
                return new FitOutcome.NotConverged(
                        point, Double.MAX_VALUE, 0, "the law has no finite value at the start; start elsewhere");
            }
            problem.jacobian(point, jacobian);
            for (int iteration = 1; iteration <= MOST_ITERATIONS; iteration++) {
                double[] step = step();
                double[] trial = bounds.clamp(plus(point, step));
                double moved = relativeMove(trial);
                problem.residuals(trial, trialResiduals);
                double trialCost = squares(trialResiduals);
                double foreseen = cost - linearCost(trial);
                if (moved < SMALLEST_STEP
                        || (foreseen <= SMALLEST_GAIN * cost && Math.abs(cost - trialCost) <= 1e-12 * cost)) {
                    return orthogonal() ? new FitOutcome.Converged(point, cost, iteration) : stuck(iteration);
                }
                if (finite(trialCost) && trialCost < cost && foreseen > 0) {
                    accept(trial, trialCost, (cost - trialCost) / foreseen);
                } else {
                    damping *= growth;
                    growth *= 2;
                    if (damping > LARGEST_DAMPING) {
                        return stuck(iteration);
                    }
                }
            }
            return new FitOutcome.NotConverged(
                    point, cost, MOST_ITERATIONS, "iterations ran out; start nearer, or fix a parameter");
        }

        /** Whether what is left over is square to every direction that may still be taken. */
        private boolean orthogonal() {
            boolean[] resting = resting();
            for (int j = 0; j < point.length; j++) {
                double slope = 0;
                double length = 0;
                for (int i = 0; i < residuals.length; i++) {
                    slope += jacobian[i][j] * residuals[i];
                    length += jacobian[i][j] * jacobian[i][j];
                }
                if (!resting[j] && length < LOST_COLUMN * scale[j]) {
                    return false;
                }
                if (!resting[j] && Math.abs(slope) > SMALLEST_COSINE * Math.sqrt(length * cost) + Double.MIN_NORMAL) {
                    return cost <= 1e-24 * startCost;
                }
            }
            return true;
        }

        private FitOutcome stuck(int iteration) {
            return new FitOutcome.NotConverged(
                    point, cost, iteration, "no step lowers the residuals; check for a kink or start elsewhere");
        }

        private void accept(double[] trial, double trialCost, double ratio) {
            point = trial;
            cost = trialCost;
            System.arraycopy(trialResiduals, 0, residuals, 0, residuals.length);
            problem.jacobian(point, jacobian);
            double t = 2 * ratio - 1;
            damping = Math.max(damping * Math.max(1.0 / 3, 1 - t * t * t), 1e-18);
            growth = 2;
        }

        private double[] step() {
            int n = point.length;
            double[][] rows = new double[residuals.length + n][n];
            double[] right = new double[residuals.length + n];
            boolean[] resting = resting();
            for (int i = 0; i < residuals.length; i++) {
                right[i] = -residuals[i];
                for (int j = 0; j < n; j++) {
                    rows[i][j] = resting[j] ? 0 : jacobian[i][j];
                }
            }
            for (int j = 0; j < n; j++) {
                double square = 0;
                for (int i = 0; i < residuals.length; i++) {
                    square += jacobian[i][j] * jacobian[i][j];
                }
                scale[j] = Math.max(scale[j], square);
                rows[residuals.length + j][j] = Math.sqrt(damping * (scale[j] > 0 ? scale[j] : 1));
            }
            return Householder.solve(rows, right);
        }

        private boolean[] resting() {
            boolean[] resting = new boolean[point.length];
            for (int j = 0; j < point.length; j++) {
                double slope = 0;
                for (int i = 0; i < residuals.length; i++) {
                    slope += jacobian[i][j] * residuals[i];
                }
                resting[j] = bounds.blocks(j, point[j], -slope);
            }
            return resting;
        }

        private double linearCost(double[] trial) {
            double sum = 0;
            for (int i = 0; i < residuals.length; i++) {
                double r = residuals[i];
                for (int j = 0; j < point.length; j++) {
                    r += jacobian[i][j] * (trial[j] - point[j]);
                }
                sum += r * r;
            }
            return sum;
        }

        private double relativeMove(double[] trial) {
            double largest = 0;
            for (int j = 0; j < point.length; j++) {
                largest = Math.max(largest, Math.abs(trial[j] - point[j]) / (Math.abs(point[j]) + 1e-30));
            }
            return largest;
        }

        private static double[] plus(double[] a, double[] b) {
            double[] sum = Arrays.copyOf(a, a.length);
            for (int i = 0; i < a.length; i++) {
                sum[i] += b[i];
            }
            return sum;
        }

        private static double squares(double[] values) {
            double sum = 0;
            for (double value : values) {
                sum += value * value;
            }
            return sum;
        }

        private static boolean finite(double value) {
            return !Double.isNaN(value) && !Double.isInfinite(value);
        }
    }
}
