package swashlight.drive.steady;

import java.util.Optional;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.InputParameter;

/**
 * Two drives, one a wheel, on one engine: each side is solved with the other side's torque as part of the engine's other load, in turn, until
 * both see the same engine.
 *
 * <pre>
 *   T_other,left = T_other + k_right T_right          k belt ratio, T torque at the input shaft, N·m
 * </pre>
 *
 * The engine is the left side's description's; its droop makes each turn a small correction. Source: torque balance of the engine shaft.
 */
public final class TwinDrive {
    private static final int MOST_TURNS = 60;
    private static final double TOLERANCE = 1e-10; // of torque, 1

    private final double[] left;
    private final double[] right;
    private final double otherTorque; // N·m

    /** Two sides; the engine and its other load are taken from the left one. */
    public TwinDrive(DriveDescription left, DriveDescription right) {
        this.left = left.vector();
        this.right = right.vector();
        for (InputParameter parameter : InputParameter.values()) {
            if (parameter.section().equals("engine")) {
                this.right[parameter.index()] = this.left[parameter.index()];
            }
        }
        this.otherTorque = left.value(InputParameter.ENGINE_OTHER_TORQUE);
    }

    /** Both sides settled on one engine. */
    public record Settled(SteadyPoint left, SteadyPoint right) {}

    /**
     * What both sides do under their duties (same throttle in both).
     *
     * @return both points; empty when a side or the pair does not settle
     */
    public Optional<Settled> answer(Duty leftDuty, Duty rightDuty) {
        SteadySolver leftSolver = new SteadySolver();
        SteadySolver rightSolver = new SteadySolver();
        SteadyPoint leftPoint = new SteadyPoint();
        SteadyPoint rightPoint = new SteadyPoint();
        double leftShare = 0;
        double rightShare = 0;
        for (int turn = 0; turn < MOST_TURNS; turn++) {
            if (!solve(leftSolver, leftPoint, left, leftDuty, rightShare)) {
                return Optional.empty();
            }
            double leftNext = share(leftPoint, left);
            if (!solve(rightSolver, rightPoint, right, rightDuty, leftNext)) {
                return Optional.empty();
            }
            double rightNext = share(rightPoint, right);
            double moved = Math.abs(leftNext - leftShare) + Math.abs(rightNext - rightShare);
            leftShare = leftNext;
            rightShare = rightNext;
            if (moved <= TOLERANCE * (1 + Math.abs(leftShare) + Math.abs(rightShare))) {
                return Optional.of(new Settled(leftPoint, rightPoint));
            }
        }
        return Optional.empty();
    }

    private boolean solve(SteadySolver solver, SteadyPoint point, double[] side, Duty duty, double elsewhere) {
        side[InputParameter.ENGINE_OTHER_TORQUE.index()] =
                Math.max(0, Math.min(InputParameter.ENGINE_OTHER_TORQUE.high(), otherTorque + elsewhere));
        solver.load(side);
        boolean solved = solver.solve(duty);
        point.fill(solver);
        return solved;
    }

    private static double share(SteadyPoint point, double[] side) {
        return point.engineSpeed() > 0 ? point.pumpTorque() * side[InputParameter.BELT_SPEED_RATIO.index()] : 0;
    }
}
