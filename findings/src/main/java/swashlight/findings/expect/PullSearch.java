package swashlight.findings.expect;

import swashlight.drive.description.OutputParameter;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.SteadyPoint;
import swashlight.drive.steady.SteadySolver;
import swashlight.drive.steady.WheelState;

/**
 * The largest drawbar pull: the greatest pull against which the machine still goes the way it is asked to; wheel spin, belt, engine or
 * leakage end it. First guessed from what tyres and drive show when asked for more than they can; kept when the machine moves against
 * slightly less and does not against slightly more. Else found by halving, for a machine that moves against a pull also moves against a
 * smaller one.
 */
final class PullSearch {
    private static final double MOST = 1e5; // N, what a duty can state
    private static final double CLOSE = 1e-3; // of the pull, 1: how well it is told
    private static final double[] ROUND_THE_GUESS = {-CLOSE, CLOSE, -0.01, 0.01, -0.06, 0.06}; // 1
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
        double low = 0;
        double high = Math.min(MOST, PER_WEIGHT * vector[OutputParameter.MACHINE_MASS.index()] * GRAVITY);
        double guess = guess(duty, ground, high);
        for (double off : ROUND_THE_GUESS) {
            double tried = guess * (1 + off);
            if (tried > low && tried < high) {
                if (movesAgainst(duty, ground, tried)) {
                    low = tried;
                } else {
                    high = tried;
                }
            }
        }
        if (low == 0) {
            boolean solved = solver.solve(duty.with(new WheelState.Ground(ground.slope(), 0)));
            point.fill(solver);
            if (!solved || !moves(duty)) {
                return solved;
            }
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

    /** Largest pull as a machine shows it that is asked for more than it can, N; 0 when unknown. */
    private double guess(Duty duty, WheelState.Ground ground, double most) {
        boolean solved = solver.solve(duty.with(new WheelState.Ground(ground.slope(), most)));
        return solved ? Math.max(0, most + solver.spareForce(duty.stroke() < 0 ? -1 : 1)) : 0;
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
