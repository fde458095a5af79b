package swashlight.drive.motion;

import swashlight.drive.description.Dimension;

/** What can be followed over time. Pressures are absolute; forward is positive. */
public enum MotionChannel {
    PRESSURE_A(Dimension.PRESSURE, "pressure of side A"),
    PRESSURE_B(Dimension.PRESSURE, "pressure of side B"),
    GALLERY_PRESSURE(Dimension.PRESSURE, "pressure of the make-up gallery"),
    SWASH_ANGLE(Dimension.ANGLE, "swash angle of the pump"),
    PUMP_ANGLE(Dimension.ANGLE, "angle of the pump shaft"),
    MOTOR_ANGLE(Dimension.ANGLE, "angle of the motor shaft"),
    ENGINE_SPEED(Dimension.ROTATION, "engine speed"),
    PUMP_SPEED(Dimension.ROTATION, "speed of the input shaft"),
    MOTOR_SPEED(Dimension.ROTATION, "speed of the motor shaft"),
    GROUND_SPEED(Dimension.SPEED, "speed over ground"),
    PUMP_TORQUE(Dimension.TORQUE, "torque of the oil on the pump"),
    INPUT_TORQUE(Dimension.TORQUE, "torque at the input shaft"),
    MOTOR_TORQUE(Dimension.TORQUE, "torque of the oil on the motor"),
    OUTPUT_TORQUE(Dimension.TORQUE, "torque of the motor shaft on the gears"),
    GROUND_FORCE(Dimension.FORCE, "force of the driven wheels on the ground"),
    BELT_SLIP(Dimension.NUMBER, "slip of the belt"),
    WHEEL_SLIP(Dimension.NUMBER, "slip of the wheels"),
    MAKE_UP_FLOW(Dimension.FLOW, "oil coming back through filter and charge pump"),
    CASE_LEAK(Dimension.FLOW, "oil lost from the loop to the case"),
    SWASH_MOMENT(Dimension.TORQUE, "moment of the pistons on the pump's swash plate"),
    PUMP_HOLD_DOWN(Dimension.NUMBER, "separating over clamping force of the pump block"),
    MOTOR_HOLD_DOWN(Dimension.NUMBER, "separating over clamping force of the motor block"),
    LOWEST_CHAMBER(Dimension.PRESSURE, "lowest chamber pressure"),
    OIL_TEMPERATURE(Dimension.TEMPERATURE, "oil temperature"),
    PUSH_FORCE(Dimension.FORCE, "force that pushes or tows the machine at the speed it is given"),
    PUMP_FLOW(Dimension.FLOW, "oil from the pump's chambers into side A, mean of a step"),
    MOTOR_FLOW(Dimension.FLOW, "oil from side A into the motor's chambers, mean of a step"),
    CHECK_A_FLOW(Dimension.FLOW, "oil from the gallery into side A through its check valve"),
    CHECK_B_FLOW(Dimension.FLOW, "oil from the gallery into side B through its check valve"),
    BLEED_A_FLOW(Dimension.FLOW, "oil from the gallery into side A through its bleed orifice"),
    BLEED_B_FLOW(Dimension.FLOW, "oil from the gallery into side B through its bleed orifice"),
    BYPASS_FLOW(Dimension.FLOW, "oil from side A to side B through the bypass valve"),
    LIFTED_BLOCK_FLOW(Dimension.FLOW, "oil from both sides to the case past the lifted motor block"),
    RELIEF_FLOW(Dimension.FLOW, "oil from side A to side B through the relief valves"),
    CHARGE_RELIEF_FLOW(Dimension.FLOW, "oil from the gallery to the case through the charge relief valve");

    private final Dimension dimension;
    private final String meaning;

    MotionChannel(Dimension dimension, String meaning) {
        this.dimension = dimension;
        this.meaning = meaning;
    }

    /** What it measures; values are in its SI unit. */
    public Dimension dimension() {
        return dimension;
    }

    /** One plain line. */
    public String meaning() {
        return meaning;
    }
}
