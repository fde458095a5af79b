package swashlight.drive.motion;

/**
 * Something that begins or ends during a run.
 *
 * @param time s
 * @param kind what
 * @param begins true when it begins, false when it ends
 * @param lasted how long it lasted when it ends, s; 0 when it begins
 */
public record MotionEvent(double time, Kind kind, boolean begins, double lasted) {
    /** What can begin and end. */
    public enum Kind {
        CHECK_A_OPEN("make-up check valve A open"),
        CHECK_B_OPEN("make-up check valve B open"),
        SIDE_A_STARVES("oil missing on side A"),
        SIDE_B_STARVES("oil missing on side B"),
        CHAMBER_STARVES("oil missing in a chamber"),
        RELIEF_OPEN("relief valve open"),
        WHEELS_SPIN("wheels slip by more than half"),
        BELT_SLIPS("belt slips by more than a twentieth"),
        ENGINE_STALLED("engine stalled"),
        DRIVE_STALLED("motor stands still under pressure"),
        PUMP_BLOCK_LIFTS("pump block lifts off its face"),
        MOTOR_BLOCK_LIFTS("motor block lifts off its face");

        private final String meaning;

        Kind(String meaning) {
            this.meaning = meaning;
        }

        /** One plain line. */
        public String meaning() {
            return meaning;
        }
    }
}
