package swashlight.drive.checks;

import swashlight.checks.CheckRow;
import swashlight.drive.description.OutputParameter;
import swashlight.drive.steady.SteadyAnswers;
import swashlight.drive.unit.Efficiency;
import swashlight.drive.unit.IdealUnit;

/** The laws behind the worked climb: ground, gears, motor one after another. */
final class ClimbAnswers {
    private ClimbAnswers() {}

    static double answer(CheckRow row) {
        SteadyAnswers machine = SteadyAnswers.machine(row.si("m") * row.si("g"))
                .set(OutputParameter.WHEELS_ROLLING_RESISTANCE, row.si("f"))
                .set(OutputParameter.WHEELS_ROLLING_RADIUS, row.si("r"))
                .set(OutputParameter.GEARS_RATIO, row.si("i"))
                .set(OutputParameter.GEARS_MESH_EFFICIENCY, row.si("gear"));
        double slope = Math.atan(row.si("grade")); // rad
        double wheelSpeed = row.si("v") / row.si("r"); // rad/s
        Efficiency motor = new Efficiency(1, row.si("mhm"));
        return switch (row.family()) {
            case "worked-climb-force" -> machine.groundForce(slope);
            case "worked-climb-wheel-torque" -> machine.axleTorque(slope);
            case "worked-climb-motor-torque" -> machine.motorTorque(slope);
            case "worked-climb-pressure" ->
                machine.motorTorque(slope) / motor.motorTorque(new IdealUnit(row.si("V"), 1, 1));
            case "worked-climb-wheel-speed" -> wheelSpeed;
            case "worked-climb-motor-speed" -> wheelSpeed * row.si("i");
            case "worked-climb-flow" -> new IdealUnit(row.si("V"), wheelSpeed * row.si("i"), 0).flow();
            default -> throw new NoLaw(row);
        };
    }
}
