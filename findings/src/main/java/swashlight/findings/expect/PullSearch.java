package swashlight.findings.expect;

import swashlight.drive.steady.Duty;
import swashlight.drive.steady.SteadyPoint;
import swashlight.drive.steady.SteadySolver;
import swashlight.drive.steady.WheelState;

/**
 * The largest drawbar pull: the greatest pull against which the machine still goes the way it is asked to; wheel spin, belt, engine or
 * leakage end it. Found by halving, for a machine that moves against a pull also moves against a smaller one.
 */
final class PullSearch {
    private static final double MOST = 1e5; // N, what a duty can state
    private static final int HALVINGS = 13; // to 1/8000 of the bracket
    private static final double SLOWEST = 1e-3; // m/s: slower is standing to the eye

    private final SteadySolver solver;
    private final SteadyPoint point;
    private double pull;

    PullSearch(SteadySolver solver, SteadyPoint point) {
        this.solver = solver;
        this.point = point;
    }

    /** Searches with the loaded drive; false when not even the free machine could be solved. */
    boolean search(Duty duty, double weight) {
        pull = 0;
        if (!(duty.wheels() instanceof WheelState.Ground ground)) {
            return false;
        }
        if (!solver.solve(duty.with(new WheelState.Ground(ground.slope(), 0)))) {
            return false;
        }
        point.fill(solver);
        if (!moves(duty)) {
            return true;
        }
        double low = 0;
        double high = Math.min(MOST, 1.3 * weight); // no tyre pulls more than this share of the weight
        for (int count = 0; count < HALVINGS; count++) {
            double middle = (low + high) / 2;
            boolean goes = solver.solve(duty.with(new WheelState.Ground(ground.slope(), middle)));
            point.fill(solver);
            if (goes && moves(duty)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        pull = (low + high) / 2;
        return true;
    }

    /** Largest pull of the last search, N. */
    double pull() {
        return pull;
    }

    private boolean moves(Duty duty) {
        return (duty.stroke() < 0 ? -point.groundSpeed() : point.groundSpeed()) > SLOWEST;
    }
}
