package swashlight.drive.motion;

/** How a run begins. */
public enum MotionStart {
    /** Machine standing, plate as the duty has it at time 0, loop at case pressure, engine at its speed without load when it runs. */
    AT_REST,
    /** As the steady view answers the duty at time 0. */
    SETTLED
}
