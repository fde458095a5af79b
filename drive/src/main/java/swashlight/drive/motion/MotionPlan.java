package swashlight.drive.motion;

/**
 * A duty with its beginning and its end.
 *
 * @param duty what is done
 * @param start how it begins
 * @param duration s
 */
public record MotionPlan(MotionDuty duty, MotionStart start, double duration) {
    /** Longest run, s. */
    public static final double LONGEST = 600;

    public MotionPlan {
        if (!(duration > 0 && duration <= LONGEST)) {
            throw new IllegalArgumentException(
                    "a run of " + duration + " s; it must last longer than 0 and up to " + LONGEST + " s");
        }
    }

    /** The same with another duty. */
    public MotionPlan with(MotionDuty other) {
        return new MotionPlan(other, start, duration);
    }

    /** The same for another time, s. */
    public MotionPlan lasting(double time) {
        return new MotionPlan(duty, start, time);
    }
}
