package swashlight.findings.fit;

import java.util.Optional;

/**
 * The parameters that make what was seen most likely, by damped Newton steps on differenced derivatives.
 * <pre>
 *   (H + λ |diag H|) δ = −g     g, H  gradient and Hessian of −ln L
 * </pre>
 * Meant for a dozen parameters of about unit size. The inverse Hessian is the covariance if the rows are independent.
 * Source: Nocedal and Wright, Numerical Optimization, chapter 6. Check: Weibull 9.1 of the reference book.
 */
public final class MaximumLikelihood {
    private static final int MOST_ITERATIONS = 200;

    /** Newton decrement gᵀH⁻¹g below which the point counts as found, 1 (log-likelihood units). */
    private static final double SMALLEST_DECREMENT = 1e-9;

    /** Step of the second differences, 1 (parameters are of about unit size). */
    private static final double STEP = 1e-4;

    private MaximumLikelihood() {}

    /**
     * A likelihood's summit.
     *
     * @param outcome the point
     * @param covariance inverse of the observed information, rows taken as independent; empty where it has none
     */
    public record Summit(FitOutcome outcome, Optional<double[][]> covariance) {}

    /**
     * Climbs to the nearest summit.
     *
     * @param likelihood rows
     * @param start first guess, each in its own unit
     */
    public static Summit climb(Likelihood likelihood, double[] start) {
        double[] point = start.clone();
        double cost = cost(likelihood, point);
        if (Double.isInfinite(cost)) {
            return new Summit(
                    new FitOutcome.NotConverged(point, Double.MAX_VALUE, 0, "the start is impossible; start elsewhere"),
                    Optional.empty());
        }
        double damping = 0;
        for (int iteration = 1; iteration <= MOST_ITERATIONS; iteration++) {
            double[] gradient = gradient(likelihood, point);
            double[][] hessian = hessian(likelihood, point);
            Optional<Cholesky> factor = Cholesky.of(damped(hessian, damping));
            while (factor.isEmpty() && damping < 1e12) {
                damping = Math.max(10 * damping, 1e-6);
                factor = Cholesky.of(damped(hessian, damping));
            }
            if (factor.isEmpty()) {
                return flat(point, cost, iteration);
            }
            double[] step = factor.get().solve(gradient);
            double decrement = dot(step, gradient);
            if (decrement < SMALLEST_DECREMENT && damping < 1e-3) {
                return new Summit(
                        new FitOutcome.Converged(point, cost, iteration),
                        Cholesky.of(hessian).map(Cholesky::inverse));
            }
            double[] trial = minus(point, step);
            double trialCost = cost(likelihood, trial);
            if (trialCost < cost + 1e-12 * Math.abs(cost)) {
                point = trial;
                cost = trialCost;
                damping = damping < 1e-5 ? 0 : damping / 10;
            } else {
                damping = Math.max(10 * damping, 1e-3);
                if (damping > 1e12) {
                    return flat(point, cost, iteration);
                }
            }
        }
        return new Summit(
                new FitOutcome.NotConverged(point, cost, MOST_ITERATIONS, "iterations ran out; start nearer"),
                Optional.empty());
    }

    private static Summit flat(double[] point, double cost, int iteration) {
        return new Summit(
                new FitOutcome.NotConverged(
                        point, cost, iteration, "the rows do not settle every parameter; fix one or add readings"),
                Optional.empty());
    }

    private static double cost(Likelihood likelihood, double[] point) {
        double sum = 0;
        for (int i = 0; i < likelihood.rows(); i++) {
            sum -= likelihood.row(i, point);
        }
        return Double.isNaN(sum) ? Double.POSITIVE_INFINITY : sum;
    }

    private static double[] gradient(Likelihood likelihood, double[] point) {
        double[] gradient = new double[point.length];
        double[] moved = point.clone();
        for (int j = 0; j < point.length; j++) {
            double step = 0.1 * STEP;
            moved[j] = point[j] + step;
            double ahead = cost(likelihood, moved);
            moved[j] = point[j] - step;
            gradient[j] = (ahead - cost(likelihood, moved)) / (2 * step);
            moved[j] = point[j];
        }
        return gradient;
    }

    private static double[][] hessian(Likelihood likelihood, double[] point) {
        int n = point.length;
        double[][] hessian = new double[n][n];
        double[] moved = point.clone();
        double middle = cost(likelihood, point);
        for (int j = 0; j < n; j++) {
            for (int k = 0; k <= j; k++) {
                double sum = 0;
                for (int sign = 0; sign < 4; sign++) {
                    double a = (sign & 1) == 0 ? STEP : -STEP;
                    double b = (sign & 2) == 0 ? STEP : -STEP;
                    moved[j] += a;
                    moved[k] += b;
                    double there = j == k && a != b ? middle : cost(likelihood, moved);
                    sum += (a == b ? 1 : -1) * there;
                    moved[j] = point[j];
                    moved[k] = point[k];
                }
                hessian[j][k] = sum / (4 * STEP * STEP);
                hessian[k][j] = hessian[j][k];
            }
        }
        return hessian;
    }

    private static double[][] damped(double[][] hessian, double damping) {
        double[][] damped = new double[hessian.length][];
        for (int j = 0; j < hessian.length; j++) {
            damped[j] = hessian[j].clone();
            damped[j][j] += damping * Math.max(Math.abs(hessian[j][j]), 1e-8);
        }
        return damped;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double[] minus(double[] a, double[] b) {
        double[] difference = a.clone();
        for (int i = 0; i < a.length; i++) {
            difference[i] -= b[i];
        }
        return difference;
    }
}
