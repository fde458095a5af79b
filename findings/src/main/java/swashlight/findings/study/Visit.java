package swashlight.findings.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.reading.SetupDraft;

/** What a technician reads on one visit; figures of common practice, no source. */
public enum Visit {
    /** A watch, a tape and ears. */
    RUNS,
    /** Also both ways down a slope with the engine off, the push, and the control arm. */
    ROLLS,
    /** Also engine and input speed. */
    SPEEDS;

    private static final double HOT = 348.15; // K, 75 °C
    private static final double COLD = 293.15; // K, 20 °C
    private static final double CLIMB = 0.15; // rad

    /** The readings asked for, with a value of 1 in place of what will be read. */
    public List<Reading> asked() {
        List<Reading> asked = new ArrayList<>();
        drive(asked, "level, cold", ReadingKind.GROUND_SPEED, 1, COLD, 0);
        drive(asked, "level, hot", ReadingKind.GROUND_SPEED, 1, HOT, 0);
        drive(asked, "climb, hot", ReadingKind.GROUND_SPEED, 1, HOT, CLIMB);
        drive(asked, "climb backwards, hot", ReadingKind.GROUND_SPEED, -1, HOT, -CLIMB);
        if (compareTo(ROLLS) >= 0) {
            roll(asked, "roll, nose uphill", CLIMB);
            roll(asked, "roll, nose downhill", -CLIMB);
            still(asked, "push", ReadingKind.PUSH_FORCE, 0);
            still(asked, "arm forward", ReadingKind.ARM_TRAVEL, 1);
        }
        if (compareTo(SPEEDS) >= 0) {
            drive(asked, "engine on the climb", ReadingKind.ENGINE_SPEED, 1, HOT, CLIMB);
            drive(asked, "input shaft on the climb", ReadingKind.INPUT_SPEED, 1, HOT, CLIMB);
        }
        return asked;
    }

    private static void drive(
            List<Reading> asked, String label, ReadingKind kind, double stroke, double oil, double slope) {
        add(
                asked,
                label,
                kind,
                new SetupDraft().stroke(stroke).fullThrottle().oil(oil).slope(slope));
    }

    private static void roll(List<Reading> asked, String label, double slope) {
        SetupDraft draft = new SetupDraft().stroke(0).oil(HOT).slope(slope).backwards(slope > 0);
        add(asked, label, ReadingKind.ROLL_SPEED, draft);
    }

    private static void still(List<Reading> asked, String label, ReadingKind kind, double stroke) {
        add(asked, label, kind, new SetupDraft().stroke(stroke).oil(HOT).slope(0));
    }

    private static void add(List<Reading> asked, String label, ReadingKind kind, SetupDraft draft) {
        asked.add(new Reading(label, kind, 1, OptionalDouble.empty(), draft.done()));
    }
}
