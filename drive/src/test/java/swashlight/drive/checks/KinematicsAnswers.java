package swashlight.drive.checks;

import swashlight.checks.CheckRow;
import swashlight.drive.unit.Efficiency;
import swashlight.drive.unit.FlowRipple;
import swashlight.drive.unit.IdealUnit;
import swashlight.drive.unit.PistonGroup;

/** The law behind each row of theme {@code kinematics}. */
final class KinematicsAnswers {
    private KinematicsAnswers() {}

    static double answer(CheckRow row) {
        return switch (row.family()) {
            case "swash-angle" -> swashAngle(row);
            case "swash-tangent" -> Math.tan(swashAngle(row));
            case "displacement" -> displacement(row);
            case "pump-flow" ->
                new Efficiency(row.si("etav"), 1).pumpFlow(new IdealUnit(displacement(row), row.si("n"), 0));
            case "piston-speed" -> new PistonGroup(9, 0.02, row.si("R")).pistonSpeed(row.si("alpha"), row.si("n"));
            case "ideal-torque" -> new IdealUnit(row.si("V"), 1, row.si("dp")).torque();
            case "piston-pass" -> ripple(row).pistonFrequency(row.si("n"));
            case "ripple-over-max" -> ripple(row).overMax();
            case "ripple-over-mean" -> ripple(row).overMean();
            case "ripple-cycles" -> ripple(row).cyclesPerTurn();
            case "ripple-harmonic" -> ripple(row).harmonic((int) row.si("order"));
            case "sine-sum-mean" -> ripple(row).meanSum();
            case "sine-sum-max" -> ripple(row).greatestSum();
            case "sine-sum-min" -> ripple(row).leastSum();
            default -> throw new NoLaw(row);
        };
    }

    private static FlowRipple ripple(CheckRow row) {
        return new FlowRipple((int) row.si("N"));
    }

    private static PistonGroup group(CheckRow row) {
        return new PistonGroup((int) row.si("N"), row.si("d"), row.si("D") / 2);
    }

    private static double displacement(CheckRow row) {
        return group(row).displacement(row.si("alpha"));
    }

    private static double swashAngle(CheckRow row) {
        double ideal = row.si("Q") / row.si("etav"); // m³/s
        return group(row).swashAngle(ideal / new IdealUnit(1, row.si("n"), 0).flow());
    }
}
