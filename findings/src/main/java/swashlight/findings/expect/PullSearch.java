package swashlight.findings.expect;

import swashlight.drive.description.OutputParameter;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.MostPull;
import swashlight.drive.steady.SteadyPoint;
import swashlight.drive.steady.SteadySolver;
import swashlight.drive.steady.WheelState;

/**
 * The largest drawbar pull: the greatest pull against which the machine still goes the way it is asked to; wheel spin, belt, engine or
 * leakage end it. Told by the state with held wheels where that law holds ({@link MostPull}); else, as where the engine would stall, found by
 * halving, for a machine that moves against a pull also moves against a smaller one.
 */
final class PullSearch {
    private static final double CLOSE = 1e-3; // of the pull, 1: how well halving tells it
    private static final double SLOWEST = 1e-3; // m/s: slower is standing to the eye
    private static final double PER_WEIGHT = 1.3; // no tyre pulls more than this share of the weight, 1
    private static final double GRAVITY = 9.80665; // m/s²

    private final SteadySolver solver;
    private final SteadyPoint point;
    private final MostPull most;
    private double pull;

    PullSearch(SteadySolver solver, SteadyPoint point) {
        this.solver = solver;
        this.point = point;
        most = new MostPull(solver);
    }

    /** Searches with the loaded drive, whose values (index order, SI) are given again; false when not even the free machine could be solved. */
    boolean search(Duty duty, double[] vector) {
        pull = 0;
        if (!(duty.wheels() instanceof WheelState.Ground ground)) {
            return false;
        }
        if (most.solve(duty, ground.slope())) {
            pull = most.pull();
            return true;
        }
        boolean solved = solver.solve(duty.with(new WheelState.Ground(ground.slope(), 0)));
        point.fill(solver);
        if (solved && moves(duty)) {
            halve(
                    duty,
                    ground,
                    Math.min(
                            WheelState.Ground.MOST_PULL,
                            PER_WEIGHT * vector[OutputParameter.MACHINE_MASS.index()] * GRAVITY));
        }
        return solved;
    }

    private void halve(Duty duty, WheelState.Ground ground, double limit) {
        double low = 0;
        double high = limit;
        while (high - low > 2 * CLOSE * high && high - low > 1) {
            double middle = (low + high) / 2;
            if (movesAgainst(duty, ground, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        pull = (low + high) / 2;
    }

    /** Largest pull of the last search, N. */
    double pull() {
        return pull;
    }

    private boolean movesAgainst(Duty duty, WheelState.Ground ground, double force) {
        boolean solved = solver.solve(duty.with(new WheelState.Ground(ground.slope(), force)));
        point.fill(solver);
        return solved && moves(duty);
    }

    private boolean moves(Duty duty) {
        return (duty.stroke() < 0 ? -point.groundSpeed() : point.groundSpeed()) > SLOWEST;
    }
}
