package swashlight.browser;

import swashlight.drive.motion.MotionDutyDraft;
import swashlight.drive.motion.Timeline;

/** What of a duty can change over time. */
enum Control {
    STROKE,
    THROTTLE,
    BRAKE,
    BYPASS,
    SLOPE,
    PULL,
    GROUND_SPEED;

    MotionDutyDraft set(MotionDutyDraft draft, Timeline line) {
        return switch (this) {
            case STROKE -> draft.stroke(line);
            case THROTTLE -> draft.throttle(line);
            case BRAKE -> draft.brake(line);
            case BYPASS -> draft.bypass(line);
            case SLOPE -> draft.slope(line);
            case PULL -> draft.pull(line);
            case GROUND_SPEED -> draft.groundSpeed(line);
        };
    }
}
