package swashlight.drive.motion;

import swashlight.drive.oil.Oil;
import swashlight.drive.steady.InputState;

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
 *   footing         ground, lifted or held
 *   oilTemperature  of the oil in the loop              K     230 … 430
 *   ambientPressure in case and sump                    Pa
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
        double oilTemperature,
        double ambientPressure) {
    /** What the wheels stand on. */
    public enum Footing {
        GROUND,
        LIFTED,
        HELD
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
                oilTemperature,
                Oil.ATMOSPHERE);
    }

    /** A copy with another input. */
    public MotionDuty with(InputState other) {
        return new MotionDuty(
                other, stroke, throttle, brake, bypass, slope, pull, footing, oilTemperature, ambientPressure);
    }

    /** A copy on another footing. */
    public MotionDuty with(Footing other) {
        return new MotionDuty(
                input, stroke, throttle, brake, bypass, slope, pull, other, oilTemperature, ambientPressure);
    }
}
