package swashlight.drive.motion;

import swashlight.drive.steady.InputState;

/** A duty being changed, control by control; {@link #build()} checks it. */
public final class MotionDutyDraft {
    private InputState input;
    private Timeline stroke;
    private Timeline throttle;
    private Timeline brake;
    private Timeline bypass;
    private Timeline slope;
    private Timeline pull;
    private MotionDuty.Footing footing;
    private Timeline groundSpeed;
    private double oilTemperature; // K
    private double ambientPressure; // Pa
    private double airTemperature; // K

    MotionDutyDraft(MotionDuty duty) {
        input = duty.input();
        stroke = duty.stroke();
        throttle = duty.throttle();
        brake = duty.brake();
        bypass = duty.bypass();
        slope = duty.slope();
        pull = duty.pull();
        footing = duty.footing();
        groundSpeed = duty.groundSpeed();
        oilTemperature = duty.oilTemperature();
        ambientPressure = duty.ambientPressure();
        airTemperature = duty.airTemperature();
    }

    /** What turns the input shaft. */
    public MotionDutyDraft input(InputState other) {
        input = other;
        return this;
    }

    /** Share of full travel over time, 1. */
    public MotionDutyDraft stroke(Timeline other) {
        stroke = other;
        return this;
    }

    /** Share of governed speed over time, 1. */
    public MotionDutyDraft throttle(Timeline other) {
        throttle = other;
        return this;
    }

    /** Share of the brake applied over time, 1. */
    public MotionDutyDraft brake(Timeline other) {
        brake = other;
        return this;
    }

    /** Share of the bypass opened over time, 1. */
    public MotionDutyDraft bypass(Timeline other) {
        bypass = other;
        return this;
    }

    /** Slope over time, positive uphill, rad. */
    public MotionDutyDraft slope(Timeline other) {
        slope = other;
        return this;
    }

    /** Drawbar force that resists motion over time, N. */
    public MotionDutyDraft pull(Timeline other) {
        pull = other;
        return this;
    }

    /** What the wheels stand on. */
    public MotionDutyDraft footing(MotionDuty.Footing other) {
        footing = other;
        return this;
    }

    /** Speed over ground over time, m/s; counts when pushed. */
    public MotionDutyDraft groundSpeed(Timeline other) {
        groundSpeed = other;
        return this;
    }

    /** Temperature of the oil in the loop, K. */
    public MotionDutyDraft oilTemperature(double kelvin) {
        oilTemperature = kelvin;
        return this;
    }

    /** Air pressure in case and sump, Pa. */
    public MotionDutyDraft ambientPressure(double pascal) {
        ambientPressure = pascal;
        return this;
    }

    /** Temperature of the air that cools the drive, K. */
    public MotionDutyDraft airTemperature(double kelvin) {
        airTemperature = kelvin;
        return this;
    }

    /**
     * The duty as drafted.
     *
     * @throws IllegalArgumentException naming the first control that leaves its range
     */
    public MotionDuty build() {
        return new MotionDuty(
                input,
                stroke,
                throttle,
                brake,
                bypass,
                slope,
                pull,
                footing,
                groundSpeed,
                oilTemperature,
                ambientPressure,
                airTemperature);
    }
}
