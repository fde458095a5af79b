package swashlight.bench;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.util.Pair;
import swashlight.drive.steady.SteadyEquations;

/** The balances of a situation as Hipparchus wants a problem: values and slopes together, bounds kept, ended when the balances are met. */
final class BalancesAsLeastSquares {
    private static final int SIZE = SteadyEquations.SIZE;
    private static final int MOST = 500; // evaluations: many times what an easy case needs

    private BalancesAsLeastSquares() {}

    static LeastSquaresProblem of(SteadyEquations equations) {
        double[] start = new double[SIZE];
        equations.start(start);
        return new LeastSquaresBuilder()
                .start(start)
                .target(new double[SIZE])
                .model(point -> evaluated(equations, point))
                .parameterValidator(point -> held(equations, point))
                .checker((iteration, before, after) -> {
                    equations.evaluate(after.getPoint().toArray());
                    return equations.solved();
                })
                .maxEvaluations(MOST)
                .maxIterations(MOST)
                .build();
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
