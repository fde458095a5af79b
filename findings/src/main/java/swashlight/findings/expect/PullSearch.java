package swashlight.findings.expect;

import swashlight.drive.description.OutputParameter;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.SteadyPoint;
import swashlight.drive.steady.SteadySolver;
import swashlight.drive.steady.WheelState;

/**
 * The largest drawbar pull: the greatest pull against which the machine still goes the way it is asked to; wheel spin, belt, engine or
 * leakage end it. First guessed as what the drive gives at a creep, or the tyres carry; kept when the machine moves against slightly less
 * and does not against slightly more. Else found by halving, for a machine that moves against a pull also moves against a smaller one.
 */
final class PullSearch {
    private static final double MOST = 1e5; // N, what a duty can state
    private static final double CLOSE = 1e-3; // of the pull, 1: how well a guess is proved
    private static final double SLOWEST = 1e-3; // m/s: slower is standing to the eye
    private static final double PER_WEIGHT = 1.3; // no tyre pulls more than this share of the weight, 1
    private static final double GRAVITY = 9.80665; // m/s²

    private final SteadySolver solver;
    private final SteadyPoint point;
    private double pull;

    PullSearch(SteadySolver solver, SteadyPoint point) {
        this.solver = solver;
        this.point = point;
    }

    /** Searches with the loaded drive, whose values (index order, SI) are given again; false when not even the free machine could be solved. */
    boolean search(Duty duty, double[] vector) {
        pull = 0;
        if (!(duty.wheels() instanceof WheelState.Ground ground)) {
            return false;
        }
        double low = -1;
        double high = Math.min(MOST, PER_WEIGHT * vector[OutputParameter.MACHINE_MASS.index()] * GRAVITY);
        double guess = guess(duty, ground.slope(), vector);
        if (guess > 0 && guess * (1 + CLOSE) < high) {
            if (movesAgainst(duty, ground, guess * (1 - CLOSE))) {
                low = guess * (1 - CLOSE);
                high = movesAgainst(duty, ground, guess * (1 + CLOSE)) ? high : guess * (1 + CLOSE);
            } else {
                high = guess * (1 - CLOSE);
            }
        }
        if (low < 0) {
            boolean solved = solver.solve(duty.with(new WheelState.Ground(ground.slope(), 0)));
            point.fill(solver);
            if (!solved || !moves(duty)) {
                return solved;
            }
            low = 0;
        }
        while (high - low > 2 * CLOSE * high && high - low > 1) {
            double middle = (low + high) / 2;
            if (movesAgainst(duty, ground, middle)) {
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

    /** What the drive gives while it is led along at a creep, but no more than the tyres carry; N, 0 when unknown. */
    private double guess(Duty duty, double slope, double[] vector) {
        int way = duty.stroke() < 0 ? -1 : 1;
        double normal = vector[OutputParameter.MACHINE_MASS.index()] * GRAVITY * Math.cos(slope);
        double grip = vector[OutputParameter.WHEELS_TRACTION.index()]
                * vector[OutputParameter.WHEELS_LOAD_SHARE.index()]
                * normal;
        double uphill = way * Math.tan(slope) * normal;
        double tyres = grip - vector[OutputParameter.WHEELS_ROLLING_RESISTANCE.index()] * normal - uphill;
        if (!solver.solve(duty.with(new WheelState.Pushed(way * SLOWEST, slope)))) {
            return 0;
        }
        point.fill(solver);
        double drive = -way * point.pushForce();
        return Math.max(0, drive > 0 ? Math.min(drive, tyres) : tyres);
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
