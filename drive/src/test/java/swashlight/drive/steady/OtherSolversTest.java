package swashlight.drive.steady;

import static org.assertj.core.api.Assertions.assertThat;

import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import org.junit.jupiter.api.Test;

/** Laws: solvers that know nothing of drives find what the drive's own solver finds, on random cases. */
final class OtherSolversTest {
    private static final long SEED = 20261129;
    private static final int SIZE = SteadyEquations.SIZE;

    /** Levenberg–Marquardt of Hipparchus 4.0.3 on the same balances and slopes, from the same start and from beside the answer. */
    @Test
    void aGeneralSolverFindsTheSame() {
        RandomCases cases = new RandomCases(SEED);
        int asked = 0;
        int found = 0;
        for (int i = 0; i < 1500; i++) {
            RandomCases.Case next = cases.ordinary();
            SteadyEquations equations = new SteadyEquations(next.vector());
            if (!equations.pose(next.duty())) {
                continue;
            }
            double[] ours = new double[SIZE];
            double[] start = new double[SIZE];
            equations.solution(ours);
            equations.start(start);
            for (int k = 0; k < SIZE && i % 2 == 0; k++) {
                start[k] = ours[k] * (1 + 0.2 * cases.random.nextGaussian());
            }
            asked++;
            RealVector theirs = levenbergMarquardt(equations, start);
            equations.evaluate(theirs.toArray());
            if (equations.solved()) {
                found++;
                same(equations, ours, theirs.toArray(), next);
            }
        }
        System.out.println("steady, Levenberg–Marquardt solves " + found + " of " + asked);
        assertThat(found).isGreaterThan(asked * 3 / 4);
    }

    private static void same(SteadyEquations equations, double[] ours, double[] theirs, RandomCases.Case next) {
        double high = Math.max(equations.pressureA(ours), equations.pressureB(ours));
        String story = "seed " + SEED + ", " + next;
        assertThat(equations.pressureA(theirs) - equations.pressureA(ours))
                .as(story)
                .isBetween(-1e-9 * high, 1e-9 * high);
        assertThat(equations.pressureB(theirs) - equations.pressureB(ours))
                .as(story)
                .isBetween(-1e-9 * high, 1e-9 * high);
        double fast = 1e-9 * Math.max(10, Math.abs(equations.motorSpeed(ours)));
        assertThat(equations.motorSpeed(theirs) - equations.motorSpeed(ours))
                .as(story)
                .isBetween(-fast, fast);
    }

    private static RealVector levenbergMarquardt(SteadyEquations equations, double[] start) {
        LeastSquaresProblem problem = new LeastSquaresBuilder()
                .start(start)
                .target(new double[SIZE])
                .model(point -> evaluated(equations, point))
                .parameterValidator(point -> held(equations, point))
                .checker((iteration, before, after) -> {
                    equations.evaluate(after.getPoint().toArray());
                    return equations.solved();
                })
                .maxEvaluations(2000)
                .maxIterations(2000)
                .build();
        try {
            return new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(1e-15)
                    .withParameterRelativeTolerance(1e-15)
                    .withOrthoTolerance(1e-15)
                    .optimize(problem)
                    .getPoint();
        } catch (MathRuntimeException gaveUp) {
            return new ArrayRealVector(start);
        }
    }

    private static Pair<RealVector, RealMatrix> evaluated(SteadyEquations equations, RealVector point) {
        double[] residual = new double[SIZE];
        double[][] slopes = new double[SIZE][SIZE];
        equations.evaluate(point.toArray());
        equations.residual(residual);
        for (int row = 0; row < SIZE; row++) {
            for (int column = 0; column < SIZE; column++) {
                slopes[row][column] = equations.slope(row, column);
            }
        }
        return new Pair<>(new ArrayRealVector(residual, false), new Array2DRowRealMatrix(slopes, false));
    }

    private static RealVector held(SteadyEquations equations, RealVector point) {
        double[] x = point.toArray();
        equations.hold(x);
        return new ArrayRealVector(x, false);
    }
}
