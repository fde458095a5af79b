package swashlight.drive.motion;

import swashlight.drive.oil.Oil;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.InputState;
import swashlight.drive.steady.WheelState;

/**
 * What is done to a drive over time.
 *
 * <pre>
 *   input           what turns the input shaft (its throttle is the start value; see throttle)
 *   stroke          share of full travel                1     −1 … 1
 *   throttle        share of governed speed             1     0.2 … 1
 *   brake, bypass   share applied, share open           1     0 … 1
 *   slope           positive uphill                     rad   −0.7 … 0.7
 *   pull            drawbar force resisting motion      N     0 … 1e5
 *   footing         on the ground, lifted, held, or pushed
 *   groundSpeed     counts when pushed                  m/s   −10 … 10
 *   oilTemperature  of the oil in the loop              K     230 … 430
 *   ambientPressure in case and sump                    Pa    5e4 … 1.1e5
 *   airTemperature  of the air that cools the drive     K     220 … 340
 * </pre>
 */
public record MotionDuty(
        InputState input,
        Timeline stroke,
        Timeline throttle,
        Timeline brake,
        Timeline bypass,
        Timeline slope,
        Timeline pull,
        Footing footing,
        Timeline groundSpeed,
        double oilTemperature,
        double ambientPressure,
        double airTemperature) {
    private static final double USUAL_AIR = Oil.CELSIUS_ZERO + 20; // K (own choice)

    /** What the wheels stand on. */
    public enum Footing {
        GROUND,
        LIFTED,
        HELD,
        /** Pushed or towed over the ground at a given speed. */
        PUSHED
    }

    /** @throws IllegalArgumentException naming the first control that leaves its range */
    public MotionDuty {
        demand("stroke", stroke.least(), stroke.greatest(), -1, 1);
        demand("throttle", throttle.least(), throttle.greatest(), 0.2, 1);
        demand("brake", brake.least(), brake.greatest(), 0, 1);
        demand("bypass", bypass.least(), bypass.greatest(), 0, 1);
        demand("slope (rad)", slope.least(), slope.greatest(), -0.7, 0.7);
        demand("pull (N)", pull.least(), pull.greatest(), 0, 1e5);
        demand("ground speed (m/s)", groundSpeed.least(), groundSpeed.greatest(), -10, 10);
        demand("oil temperature (K)", oilTemperature, oilTemperature, 230, 430);
        demand("ambient pressure (Pa)", ambientPressure, ambientPressure, 5e4, 1.1e5);
        demand("air temperature (K)", airTemperature, airTemperature, 220, 340);
    }

    private static void demand(String name, double least, double greatest, double low, double high) {
        if (!(least >= low && greatest <= high)) {
            throw new IllegalArgumentException(name + " reaches " + (least >= low ? greatest : least)
                    + "; it must stay between " + low + " and " + high);
        }
    }

    /**
     * Engine at full throttle, on the ground, one stroke from the start.
     *
     * @param stroke over time, 1
     * @param slope rad
     * @param oilTemperature K
     */
    public static MotionDuty driving(Timeline stroke, double slope, double oilTemperature) {
        return new MotionDuty(
                new InputState.Running(1),
                stroke,
                Timeline.constant(1),
                Timeline.constant(0),
                Timeline.constant(0),
                Timeline.constant(slope),
                Timeline.constant(0),
                Footing.GROUND,
                Timeline.constant(0),
                oilTemperature,
                Oil.ATMOSPHERE,
                USUAL_AIR);
    }

    /** A draft that starts as this duty; build it when its changes are named. */
    public MotionDutyDraft change() {
        return new MotionDutyDraft(this);
    }

    /** A copy with another input. */
    public MotionDuty with(InputState other) {
        return change().input(other).build();
    }

    /** A copy on another footing. */
    public MotionDuty with(Footing other) {
        return change().footing(other).build();
    }

    /** A copy pushed or towed over the ground at a speed over time, m/s. */
    public MotionDuty pushed(Timeline speed) {
        return change().footing(Footing.PUSHED).groundSpeed(speed).build();
    }

    /** The settled situation that would belong to the controls at a time, s. */
    public Duty settledAt(double time) {
        WheelState wheels = switch (footing) {
            case GROUND -> new WheelState.Ground(slope.at(time), pull.at(time));
            case LIFTED -> new WheelState.Lifted();
            case HELD -> new WheelState.Held();
            case PUSHED -> new WheelState.Pushed(groundSpeed.at(time), slope.at(time));
        };
        return new Duty(
                input instanceof InputState.Running ? new InputState.Running(throttle.at(time)) : input,
                stroke.at(time),
                oilTemperature,
                wheels,
                brake.at(time),
                bypass.at(time),
                ambientPressure,
                false);
    }

    /** First corner of any control later than a time (both s), or positive infinity. */
    double nextCorner(double time) {
        double next = Math.min(stroke.nextCorner(time), throttle.nextCorner(time));
        next = Math.min(next, Math.min(brake.nextCorner(time), bypass.nextCorner(time)));
        next = Math.min(next, Math.min(slope.nextCorner(time), pull.nextCorner(time)));
        return Math.min(next, groundSpeed.nextCorner(time));
    }
}
