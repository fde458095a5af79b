package swashlight.drive.trace;

import java.util.Map;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.motion.MotionDuty;
import swashlight.drive.motion.MotionRun;
import swashlight.drive.motion.MotionStart;
import swashlight.drive.motion.MovingDrive;
import swashlight.drive.motion.Timeline;
import swashlight.drive.steady.InputState;

/** A usual drive whose input shaft turns at a fixed speed. */
final class Turning {
    static final DriveDescription DRIVE = TypicalDrive.complete("any", true, Map.of());

    private Turning() {}

    /** Input speed in rad/s, slope in rad. */
    static MotionRun at(double speed, double slope) {
        MotionDuty duty =
                MotionDuty.driving(Timeline.constant(0.8), slope, 333.15).with(new InputState.Fixed(speed));
        return new MovingDrive(DRIVE).start(duty, MotionStart.SETTLED, MotionRun.USUAL_TOLERANCE);
    }
}
