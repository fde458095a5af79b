package swashlight.bench;

import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.LUDecomposer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.GaussNewtonOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import swashlight.drive.steady.SteadyEquations;

/** Those who solve the same equations. */
enum Peer {
    /** The drive's own kernel. */
    OWN("own kernel") {
        @Override
        boolean solve(SteadyEquations equations) {
            return equations.solve();
        }
    },
    /** Hipparchus: Levenberg–Marquardt, its own tolerances out of the way. */
    LEVENBERG_MARQUARDT("Hipparchus 4.0.3, Levenberg–Marquardt") {
        @Override
        boolean solve(SteadyEquations equations) {
            return solve(
                    new LevenbergMarquardtOptimizer()
                            .withCostRelativeTolerance(LEAST)
                            .withParameterRelativeTolerance(LEAST)
                            .withOrthoTolerance(LEAST),
                    equations);
        }
    },
    /** Hipparchus: Gauss–Newton by LU, undamped. */
    GAUSS_NEWTON("Hipparchus 4.0.3, Gauss–Newton") {
        @Override
        boolean solve(SteadyEquations equations) {
            return solve(new GaussNewtonOptimizer(new LUDecomposer(0), false), equations);
        }
    };

    private static final double LEAST = 1e-15; // tighter than the test of the balances, which ends the search

    private final String words;

    Peer(String words) {
        this.words = words;
    }

    /** Solves from the start; true when every balance is met as the drive's own solver asks, at the unknowns then last set. */
    abstract boolean solve(SteadyEquations equations);

    String words() {
        return words;
    }

    static boolean solve(LeastSquaresOptimizer optimizer, SteadyEquations equations) {
        try {
            equations.evaluate(optimizer
                    .optimize(BalancesAsLeastSquares.of(equations))
                    .getPoint()
                    .toArray());
            return equations.solved();
        } catch (MathRuntimeException gaveUp) {
            return false;
        }
    }
}
