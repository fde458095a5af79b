package swashlight.drive.description;

import static swashlight.drive.description.Facts.fixed;
import static swashlight.drive.description.Facts.sized;

/** Engine, belt and control. */
public enum InputParameter implements Parameter {
    ENGINE_NO_LOAD_SPEED(fixed(
            "engine.noLoadSpeed",
            Dimension.ROTATION,
            60,
            600,
            335,
            0.01,
            "governed speed without load, full throttle")),
    ENGINE_DROOP(fixed(
            "engine.droop",
            Dimension.NUMBER,
            0.005,
            0.2,
            0.05,
            0.25,
            "loss of speed at rated torque, as a share of the speed without load")),
    ENGINE_RATED_TORQUE(
            sized("engine.ratedTorque", Dimension.TORQUE, 3, 400, 0.05, "torque at the end of the governed range")),
    ENGINE_PEAK_TORQUE(sized("engine.peakTorque", Dimension.TORQUE, 3, 500, 0.05, "greatest torque")),
    ENGINE_PEAK_SPEED_SHARE(fixed(
            "engine.peakSpeedShare",
            Dimension.NUMBER,
            0.3,
            0.95,
            0.7,
            0.05,
            "speed of greatest torque over the speed without load")),
    ENGINE_STALL_SPEED_SHARE(fixed(
            "engine.stallSpeedShare",
            Dimension.NUMBER,
            0.1,
            0.6,
            0.35,
            0.1,
            "speed below which the engine dies, over the speed without load")),
    ENGINE_STRENGTH(fixed(
            "engine.strength", Dimension.NUMBER, 0.1, 1.3, 1, 0.03, "present torque over that of a sound engine")),
    ENGINE_OTHER_TORQUE(fixed(
            "engine.otherTorque",
            Dimension.TORQUE,
            0,
            300,
            0,
            0.0,
            "torque the engine gives to everything but this drive")),
    ENGINE_INERTIA(
            fixed("engine.inertia", Dimension.INERTIA, 1e-3, 5, 0.08, 0.2, "inertia of the engine with flywheel")),
    BELT_SPEED_RATIO(fixed(
            "belt.speedRatio", Dimension.NUMBER, 0.2, 3, 1, 0.005, "input shaft speed over engine speed without slip")),
    BELT_CAPACITY(sized(
            "belt.capacity",
            Dimension.TORQUE,
            0,
            5000,
            0.15,
            "torque at the input shaft at which the belt lets go (large: rigid shaft)")),
    BELT_CREEP(fixed(
            "belt.creep",
            Dimension.NUMBER,
            0,
            0.1,
            0.012,
            0.3,
            "slip scale of a loaded belt: slip at 63 % of its capacity")),
    BELT_KEYED(fixed(
            "belt.keyed",
            Dimension.NUMBER,
            0,
            1,
            1,
            0.0,
            "1 when pulley and input shaft are joined, 0 when key or spline is sheared")),
    CONTROL_FORWARD_SHARE(fixed(
                    "control.forwardShare",
                    Dimension.NUMBER,
                    0,
                    1,
                    1,
                    0.01,
                    "share of full swash angle that the linkage reaches forward")
            .absolute()),
    CONTROL_REVERSE_SHARE(fixed(
                    "control.reverseShare",
                    Dimension.NUMBER,
                    0,
                    1,
                    0.6,
                    0.02,
                    "share of full swash angle that the linkage reaches in reverse")
            .absolute()),
    CONTROL_NEUTRAL_OFFSET(fixed(
                    "control.neutralOffset",
                    Dimension.ANGLE,
                    -0.1,
                    0.1,
                    0,
                    0.0015,
                    "swash angle left when the control stands at neutral")
            .absolute()),
    CONTROL_PLAY(fixed(
                    "control.play",
                    Dimension.ANGLE,
                    0,
                    0.2,
                    0.003,
                    0.002,
                    "swash angle lost in worn linkage and trunnions, each way")
            .absolute()),
    CONTROL_SWASH_RATE(
            fixed("control.swashRate", Dimension.ANGLE_RATE, 0.02, 50, 1.2, 0.3, "fastest change of swash angle")),
    CONTROL_RETURN_RATE(fixed(
            "control.returnRate",
            Dimension.ANGLE_RATE,
            0,
            50,
            0.6,
            0.3,
            "speed at which the spring brings the plate back to neutral"));

    private static final int FIRST =
            OilParameter.COUNT + UnitParameter.COUNT + LoopParameter.COUNT + MakeUpParameter.COUNT;

    /** How many there are; unit 1. */
    static final int COUNT = 19;

    private final Facts facts;

    InputParameter(Facts facts) {
        this.facts = facts;
    }

    @Override
    public Facts facts() {
        return facts;
    }

    @Override
    public int index() {
        return FIRST + ordinal();
    }
}
