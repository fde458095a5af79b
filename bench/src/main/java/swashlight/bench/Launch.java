package swashlight.bench;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.HeatParameter;
import swashlight.drive.description.InputParameter;
import swashlight.drive.description.OutputParameter;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.motion.MotionDuty;
import swashlight.drive.motion.MotionRun;
import swashlight.drive.motion.MotionStart;
import swashlight.drive.motion.MovingDrive;
import swashlight.drive.motion.Timeline;
import swashlight.drive.oil.Oil;

/**
 * What the moving drive is measured on: the light rider with another number of pistons, 330 kg, input near 3000 rpm, from rest up a grade of 10
 * %, pedal down within half a second, one second in all. The heat capacity is the largest allowed, so that the oil stays as warm as it is:
 * the peers know no heat.
 */
final class Launch {
    static final double UNTIL = 1; // s
    private static final double RPM = 2 * Math.PI / 60; // rad/s
    private static final double GRADE = Math.atan(0.1); // rad
    private static final double OIL = Oil.CELSIUS_ZERO + 60; // K
    private static final double PEDAL_DOWN = 0.5; // s
    private static final double HEAVY = 5e5; // J/K

    private Launch() {}

    static DriveDescription drive(int pistons) {
        Map<Parameter, Quantity> known = new HashMap<>();
        known.put(UnitParameter.pump(UnitProperty.DISPLACEMENT), Quantity.given(7.1e-6));
        known.put(UnitParameter.pump(UnitProperty.PISTON_COUNT), Quantity.given(pistons));
        known.put(UnitParameter.motor(UnitProperty.DISPLACEMENT), Quantity.given(10e-6));
        known.put(UnitParameter.motor(UnitProperty.PISTON_COUNT), Quantity.given(pistons));
        known.put(InputParameter.ENGINE_NO_LOAD_SPEED, Quantity.given(3200 * RPM));
        known.put(InputParameter.ENGINE_RATED_TORQUE, Quantity.given(26));
        known.put(InputParameter.BELT_SPEED_RATIO, Quantity.given(3000.0 / 3200));
        known.put(OutputParameter.GEARS_RATIO, Quantity.given(28));
        known.put(OutputParameter.WHEELS_ROLLING_RADIUS, Quantity.given(0.24));
        known.put(OutputParameter.MACHINE_MASS, Quantity.given(330));
        known.put(HeatParameter.CAPACITY, Quantity.given(HEAVY));
        return TypicalDrive.complete("launch", true, known);
    }

    static MotionDuty duty() {
        Timeline stroke = Timeline.through(new double[] {0, PEDAL_DOWN}, new double[] {0, 1});
        return MotionDuty.driving(stroke, GRADE, OIL);
    }

    static MotionRun start(int pistons, double tolerance) {
        return new MovingDrive(drive(pistons)).start(duty(), MotionStart.AT_REST, tolerance);
    }

    /** Everything a peer needs to know, SI, one {@code key=value} a line. */
    static String told(int pistons) {
        DriveDescription drive = drive(pistons);
        Map<String, Double> all = new LinkedHashMap<>();
        for (Parameter parameter : Parameters.all()) {
            all.put(parameter.key(), drive.value(parameter));
        }
        MotionDuty duty = duty();
        all.put("duty.until", UNTIL);
        all.put("duty.slope", GRADE);
        all.put("duty.oilTemperature", duty.oilTemperature());
        all.put("duty.ambientPressure", duty.ambientPressure());
        for (int corner = 0; corner < 2; corner++) {
            all.put("duty.strokeTime" + corner, duty.stroke().cornerTime(corner));
            all.put("duty.stroke" + corner, duty.stroke().cornerValue(corner));
        }
        StringBuilder lines = new StringBuilder();
        all.forEach((key, value) -> lines.append(key).append('=').append(value).append('\n'));
        return lines.toString();
    }
}
