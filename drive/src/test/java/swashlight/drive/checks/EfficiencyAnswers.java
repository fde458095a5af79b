package swashlight.drive.checks;

import swashlight.checks.CheckRow;
import swashlight.drive.unit.Efficiency;
import swashlight.drive.unit.IdealUnit;

/** The law behind each row of theme {@code efficiency} but the loss models, see {@link LossAnswers}. */
final class EfficiencyAnswers {
    private EfficiencyAnswers() {}

    static double answer(CheckRow row) {
        return switch (row.family()) {
            case "pump-volumetric" -> pump(row).volumetric();
            case "pump-hydromechanical" -> pump(row).hydromechanical();
            case "pump-overall" -> pump(row).overall();
            case "pump-power-out" -> pump(row).overall() * row.si("T") * row.si("n");
            case "pump-power-in" -> row.si("Q") * row.si("dp") / pump(row).overall();
            case "motor-volumetric" -> motor(row).volumetric();
            case "motor-hydromechanical" -> motor(row).hydromechanical();
            case "motor-overall" -> motor(row).overall();
            case "motor-power-out" -> motor(row).overall() * row.si("Q") * row.si("dp");
            case "ideal-torque-in" -> new IdealUnit(row.si("V"), 1, row.si("dp")).torque();
            case "pump-real-flow" ->
                new Efficiency(row.si("etav"), 1).pumpFlow(new IdealUnit(row.si("V"), row.si("n"), 0));
            case "pump-real-torque" ->
                new Efficiency(1, row.si("etahm")).pumpTorque(new IdealUnit(row.si("V"), 1, row.si("dp")));
            case "pump-real-power" ->
                row.si("n")
                        * new Efficiency(1, row.si("etahm")).pumpTorque(new IdealUnit(row.si("V"), 1, row.si("dp")));
            case "motor-real-speed" ->
                row.si("Q") / new Efficiency(row.si("etav"), 1).motorFlow(new IdealUnit(row.si("V"), 1, 0));
            case "motor-real-torque" ->
                new Efficiency(1, row.si("etahm")).motorTorque(new IdealUnit(row.si("V"), 1, row.si("dp")));
            case "efficiency-product" ->
                new Efficiency(1, row.si("pump"))
                        .then(new Efficiency(row.si("line"), 1))
                        .then(new Efficiency(1, row.si("motor")))
                        .overall();
            default -> chain(row);
        };
    }

    private static double chain(CheckRow row) {
        if (row.family().startsWith("transmission-")) {
            return transmission(row);
        }
        if (row.family().startsWith("sizing-")) {
            return sizing(row);
        }
        return LossAnswers.answer(row);
    }

    private static Efficiency pump(CheckRow row) {
        return Efficiency.ofPump(ideal(row), row.si("Q"), row.si("T"));
    }

    private static Efficiency motor(CheckRow row) {
        return Efficiency.ofMotor(ideal(row), row.si("Q"), row.si("T"));
    }

    private static IdealUnit ideal(CheckRow row) {
        return new IdealUnit(row.si("V"), row.si("n"), row.si("dp"));
    }

    private static double transmission(CheckRow row) {
        Efficiency pump = new Efficiency(row.si("pvol"), row.si("phm"));
        Efficiency motor = new Efficiency(row.si("mvol"), row.si("mhm"));
        IdealUnit idealPump = new IdealUnit(row.si("Vp"), row.si("np"), row.si("dp"));
        double perDisplacement = motor.motorFlow(new IdealUnit(1, row.si("nm"), 0)); // 1/s
        IdealUnit idealMotor = new IdealUnit(pump.pumpFlow(idealPump) / perDisplacement, row.si("nm"), row.si("dp"));
        return switch (row.family()) {
            case "transmission-motor-displacement", "transmission-motor-displacement-printed" ->
                idealMotor.displacement();
            case "transmission-motor-torque", "transmission-motor-torque-printed" -> motor.motorTorque(idealMotor);
            case "transmission-pump-torque" -> pump.pumpTorque(idealPump);
            case "transmission-power-in" -> pump.pumpTorque(idealPump) * idealPump.speed();
            case "transmission-power-out" -> motor.motorTorque(idealMotor) * idealMotor.speed();
            case "transmission-overall" -> pump.then(motor).overall();
            default -> throw new NoLaw(row);
        };
    }

    private static double sizing(CheckRow row) {
        Efficiency pump = new Efficiency(row.si("pvol"), row.si("phm"));
        Efficiency motor = new Efficiency(row.si("mvol"), row.si("mhm"));
        double pressure = row.si("T") / motor.motorTorque(new IdealUnit(row.si("Vm"), 1, 1)); // Pa
        double flow = motor.motorFlow(new IdealUnit(row.si("Vm"), row.si("nm"), pressure)); // m³/s
        double speed = flow / pump.pumpFlow(new IdealUnit(row.si("Vp"), 1, pressure)); // rad/s
        double torque = pump.pumpTorque(new IdealUnit(row.si("Vp"), speed, pressure)); // N·m
        return switch (row.family()) {
            case "sizing-pressure" -> pressure;
            case "sizing-flow" -> flow;
            case "sizing-pump-speed" -> speed;
            case "sizing-pump-power" -> torque * speed;
            case "sizing-pump-torque" -> torque;
            default -> throw new NoLaw(row);
        };
    }
}
