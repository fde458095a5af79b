package swashlight.browser;

import java.util.HashMap;
import java.util.Map;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.InputParameter;
import swashlight.drive.description.OilParameter;
import swashlight.drive.description.Origin;
import swashlight.drive.description.OutputParameter;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;

/**
 * The demo drive "light rider" without a file to read: an invented light riding machine. The same numbers as the room {@code files} has in
 * {@code drive-light-rider.yaml}, where they stand with their units; a test compares both.
 */
final class LightRider {
    private static final double RPM = 2 * Math.PI / 60; // rad/s

    private LightRider() {}

    static DriveDescription description() {
        Map<Parameter, Quantity> known = new HashMap<>();
        known.put(OilParameter.VISCOSITY40, new Quantity(165e-6, 0.12 * 165e-6, Origin.TYPICAL)); // SAE 20W-50
        known.put(OilParameter.VISCOSITY100, new Quantity(18.5e-6, 0.08 * 18.5e-6, Origin.TYPICAL));
        known.put(UnitParameter.pump(UnitProperty.DISPLACEMENT), Quantity.given(7.1e-6));
        known.put(UnitParameter.pump(UnitProperty.PISTON_COUNT), Quantity.given(5));
        known.put(UnitParameter.motor(UnitProperty.DISPLACEMENT), Quantity.given(10e-6));
        known.put(UnitParameter.motor(UnitProperty.PISTON_COUNT), Quantity.given(5));
        known.put(InputParameter.ENGINE_NO_LOAD_SPEED, Quantity.given(3200 * RPM, 30 * RPM));
        known.put(InputParameter.ENGINE_RATED_TORQUE, Quantity.given(26));
        known.put(InputParameter.BELT_SPEED_RATIO, Quantity.given(0.95, 0.01));
        known.put(InputParameter.CONTROL_REVERSE_SHARE, Quantity.given(0.55, 0.03));
        known.put(OutputParameter.GEARS_RATIO, Quantity.given(28));
        known.put(OutputParameter.WHEELS_ROLLING_RADIUS, Quantity.given(0.24));
        known.put(OutputParameter.MACHINE_MASS, Quantity.given(300, 12));
        return TypicalDrive.complete("Light rider", true, known);
    }
}
