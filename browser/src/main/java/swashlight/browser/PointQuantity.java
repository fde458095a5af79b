package swashlight.browser;

import java.util.function.ToDoubleFunction;
import swashlight.drive.description.Dimension;
import swashlight.drive.steady.SteadyPoint;

/** One number of a settled state. */
enum PointQuantity {
    PRESSURE_A(Dimension.PRESSURE, "pressure of side A", SteadyPoint::pressureA),
    PRESSURE_B(Dimension.PRESSURE, "pressure of side B", SteadyPoint::pressureB),
    GALLERY_PRESSURE(Dimension.PRESSURE, "pressure of the make-up gallery", SteadyPoint::galleryPressure),
    FILL_A(Dimension.NUMBER, "share of side A filled with oil", SteadyPoint::fillA),
    FILL_B(Dimension.NUMBER, "share of side B filled with oil", SteadyPoint::fillB),
    SWASH_ANGLE(Dimension.ANGLE, "swash angle of the pump", SteadyPoint::swashAngle),
    ENGINE_SPEED(Dimension.ROTATION, "engine speed", SteadyPoint::engineSpeed),
    BELT_SLIP(Dimension.NUMBER, "slip of the belt", SteadyPoint::beltSlip),
    PUMP_SPEED(Dimension.ROTATION, "speed of the input shaft", SteadyPoint::pumpSpeed),
    PUMP_TORQUE(Dimension.TORQUE, "torque at the input shaft", SteadyPoint::pumpTorque),
    MOTOR_SPEED(Dimension.ROTATION, "speed of the motor shaft", SteadyPoint::motorSpeed),
    MOTOR_TORQUE(Dimension.TORQUE, "torque of the motor shaft on the gears", SteadyPoint::motorTorque),
    AXLE_SPEED(Dimension.ROTATION, "speed of the axle", SteadyPoint::axleSpeed),
    AXLE_TORQUE(Dimension.TORQUE, "torque that reaches the axle", SteadyPoint::axleTorque),
    WHEEL_SLIP(Dimension.NUMBER, "slip of the wheels", SteadyPoint::wheelSlip),
    GROUND_SPEED(Dimension.SPEED, "speed over ground", SteadyPoint::groundSpeed),
    GROUND_FORCE(Dimension.FORCE, "force of the driven wheels on the ground", SteadyPoint::groundForce),
    PUSH_FORCE(Dimension.FORCE, "force that must push the machine", SteadyPoint::pushForce),
    MAKE_UP_FLOW(Dimension.FLOW, "oil coming back through filter and charge pump", SteadyPoint::makeUpFlow),
    HEAT(Dimension.POWER, "heat left inside drive and oil", SteadyPoint::heat);

    private final Dimension dimension;
    private final String meaning;
    private final ToDoubleFunction<SteadyPoint> reading;

    PointQuantity(Dimension dimension, String meaning, ToDoubleFunction<SteadyPoint> reading) {
        this.dimension = dimension;
        this.meaning = meaning;
        this.reading = reading;
    }

    Dimension dimension() {
        return dimension;
    }

    String meaning() {
        return meaning;
    }

    double of(SteadyPoint point) {
        return reading.applyAsDouble(point);
    }
}
