package swashlight.findings.reading;

import swashlight.drive.description.Dimension;

/**
 * What a technician can read, with the usual error of the instrument (one standard deviation of a single reading).
 *
 * <p>Errors: common practice, no source. Relative error is a share of the value, absolute error is in the SI unit of the dimension; both
 * add in squares.
 */
public enum ReadingKind {
    /** Time to drive a marked distance. */
    RUN_TIME("runTime", Dimension.TIME, 0.01, 0.15),
    /** Speed over ground. */
    GROUND_SPEED("groundSpeed", Dimension.SPEED, 0.02, 0.03),
    /** Speed of the axle. */
    AXLE_SPEED("axleSpeed", Dimension.ROTATION, 0.005, 0.05),
    /** Speed of the axle with the control at neutral and the engine running. */
    CREEP_SPEED("creepSpeed", Dimension.ROTATION, 0.02, 0.02),
    /** Time to roll a marked distance, engine off, control at neutral, bypass shut, on a slope. */
    ROLL_TIME("rollTime", Dimension.TIME, 0.02, 0.3),
    /** Speed of rolling, engine off, control at neutral, bypass shut, on a slope. */
    ROLL_SPEED("rollSpeed", Dimension.SPEED, 0.03, 0.001),
    /** Force to push the machine on the level with the bypass open. */
    PUSH_FORCE("pushForce", Dimension.FORCE, 0.07, 8),
    /** Largest drawbar pull. */
    DRAWBAR_PULL("drawbarPull", Dimension.FORCE, 0.04, 15),
    /** Speed of the engine. */
    ENGINE_SPEED("engineSpeed", Dimension.ROTATION, 0.002, 0.5),
    /** Speed of the input shaft. */
    INPUT_SPEED("inputSpeed", Dimension.ROTATION, 0.003, 0.3),
    /** Pressure of the high side, gauge. */
    HIGH_PRESSURE("highPressure", Dimension.PRESSURE, 0.02, 2e5),
    /** Pressure of the make-up gallery (charge pressure), gauge. */
    GALLERY_PRESSURE("galleryPressure", Dimension.PRESSURE, 0.02, 2e4),
    /** Temperature of case or oil a stated time after a cold start under the duty. */
    WARM_TEMPERATURE("warmTemperature", Dimension.TEMPERATURE, 0, 3),
    /** Time from cold to a stated temperature under the duty. */
    WARM_UP_TIME("warmUpTime", Dimension.TIME, 0.05, 30),
    /** Piston-pass tone of the pump. */
    PUMP_TONE("pumpTone", Dimension.FREQUENCY, 0.002, 0.3),
    /** Piston-pass tone of the motor. */
    MOTOR_TONE("motorTone", Dimension.FREQUENCY, 0.002, 0.3),
    /** Travel of the control arm from neutral, as swash angle. */
    ARM_TRAVEL("armTravel", Dimension.ANGLE, 0, 0.009),
    /** A dimension measured at teardown: {@link Setup#part()} names the parameter. */
    PART_DIMENSION("partDimension", Dimension.NUMBER, 0.05, 0);

    private final String key;
    private final Dimension dimension;
    private final double relativeError;
    private final double absoluteError;

    ReadingKind(String key, Dimension dimension, double relativeError, double absoluteError) {
        this.key = key;
        this.dimension = dimension;
        this.relativeError = relativeError;
        this.absoluteError = absoluteError;
    }

    /** Name in files. */
    public String key() {
        return key;
    }

    /** What it measures; a part dimension takes its parameter's. */
    public Dimension dimension() {
        return dimension;
    }

    /** Usual relative error, one standard deviation, unit 1. */
    public double relativeError() {
        return relativeError;
    }

    /** Usual absolute error, one standard deviation, SI unit of {@link #dimension()}. */
    public double absoluteError() {
        return absoluteError;
    }

    /** Usual error of a value, one standard deviation, both in the SI unit of {@link #dimension()}. */
    public double usualError(double value) {
        double share = relativeError * value;
        return Math.sqrt(share * share + absoluteError * absoluteError);
    }
}
