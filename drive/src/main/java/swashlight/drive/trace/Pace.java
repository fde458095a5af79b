package swashlight.drive.trace;

import swashlight.drive.motion.MotionChannel;
import swashlight.drive.motion.MotionRun;

/** What counts cycles. */
public enum Pace {
    /** Angle of the pump shaft, rad. */
    PUMP_SHAFT,
    /** Angle of the motor shaft, rad. */
    MOTOR_SHAFT,
    /** Time, s. */
    TIME;

    /** How far it has come, rad or s. */
    double of(MotionRun run) {
        return switch (this) {
            case PUMP_SHAFT -> run.value(MotionChannel.PUMP_ANGLE);
            case MOTOR_SHAFT -> run.value(MotionChannel.MOTOR_ANGLE);
            case TIME -> run.time();
        };
    }
}
