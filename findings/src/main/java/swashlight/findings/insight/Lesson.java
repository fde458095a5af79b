package swashlight.findings.insight;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.reading.SetupDraft;

/** Sets of readings as they are usually taken, from one to all of them; common practice, no source. */
public enum Lesson {
    NOTHING("nothing", ""),
    LEVEL_COLD("levelCold", "level cold"),
    LEVEL_BOTH("levelBoth", "level cold, level hot"),
    CLIMB_HOT("climbHot", "level cold, level hot, climb hot"),
    CLIMB_BOTH("climbBoth", "level cold, level hot, climb hot, climb cold"),
    SPEEDS("speeds", "level cold, level hot, climb hot, engine, input"),
    ROLL_ONE("rollOne", "roll nose down"),
    ROLLS_AND_PUSH("rollsAndPush", "roll nose down, roll nose up, push"),
    ROLLS_AND_SPEEDS("rollsAndSpeeds", "roll nose down, roll nose up, push, engine, input"),
    WATCH_AND_TACHOMETER(
            "watchAndTachometer",
            "level hot, climb hot, reverse hot, engine, input, roll nose down, roll nose up, push, axle, arm"),
    TONES("tones", "push, engine, pump tone level, motor tone level, pump tone, motor tone"),
    TONES_REVERSE(
            "tonesReverse",
            "push, engine, pump tone level, motor tone level, pump tone, motor tone, pump tone reverse, motor tone reverse"),
    EVERYTHING(
            "everything",
            "level cold, level hot, climb hot, climb cold, reverse hot, engine, input, roll nose down, roll nose up, push, axle, "
                    + "arm, pump tone level, motor tone level, pump tone, motor tone, pump tone reverse, motor tone reverse");

    private static final double HOT = 353.15; // K, 80 °C
    private static final double COLD = 293.15; // K, 20 °C
    private static final double CLIMB = 0.1745; // rad, 10°

    private final String key;
    private final List<String> labels;

    Lesson(String key, String labels) {
        this.key = key;
        this.labels = labels.isEmpty() ? List.of() : List.of(labels.split(", "));
    }

    /** Stable name. */
    public String key() {
        return key;
    }

    /** Labels of its readings. */
    public List<String> labels() {
        return labels;
    }

    /** Its readings, with 1 in place of a value. */
    List<Reading> readings() {
        List<Reading> readings = new ArrayList<>();
        for (String label : labels) {
            readings.add(reading(label));
        }
        return readings;
    }

    private static Reading reading(String label) {
        return switch (label) {
            case "level cold" -> drive(label, ReadingKind.GROUND_SPEED, 1, COLD, 0);
            case "level hot" -> drive(label, ReadingKind.GROUND_SPEED, 1, HOT, 0);
            case "climb hot" -> drive(label, ReadingKind.GROUND_SPEED, 1, HOT, CLIMB);
            case "climb cold" -> drive(label, ReadingKind.GROUND_SPEED, 1, COLD, CLIMB);
            case "reverse hot" -> drive(label, ReadingKind.GROUND_SPEED, -1, HOT, -CLIMB);
            case "engine" -> drive(label, ReadingKind.ENGINE_SPEED, 1, HOT, CLIMB);
            case "input" -> drive(label, ReadingKind.INPUT_SPEED, 1, HOT, CLIMB);
            case "axle" -> drive(label, ReadingKind.AXLE_SPEED, 1, HOT, CLIMB);
            case "pump tone level" -> drive(label, ReadingKind.PUMP_TONE, 1, HOT, 0);
            case "motor tone level" -> drive(label, ReadingKind.MOTOR_TONE, 1, HOT, 0);
            case "pump tone" -> drive(label, ReadingKind.PUMP_TONE, 1, HOT, CLIMB);
            case "motor tone" -> drive(label, ReadingKind.MOTOR_TONE, 1, HOT, CLIMB);
            case "pump tone reverse" -> drive(label, ReadingKind.PUMP_TONE, -1, HOT, -CLIMB);
            case "motor tone reverse" -> drive(label, ReadingKind.MOTOR_TONE, -1, HOT, -CLIMB);
            case "roll nose down" -> off(label, ReadingKind.ROLL_SPEED, 0, -CLIMB);
            case "roll nose up" -> off(label, ReadingKind.ROLL_SPEED, 0, CLIMB);
            case "push" -> off(label, ReadingKind.PUSH_FORCE, 0, 0);
            case "arm" -> off(label, ReadingKind.ARM_TRAVEL, 1, 0);
            default -> throw new IllegalArgumentException("no reading is called " + label);
        };
    }

    private static Reading drive(String label, ReadingKind kind, double stroke, double oil, double slope) {
        return reading(
                label,
                kind,
                new SetupDraft().stroke(stroke).fullThrottle().oil(oil).slope(slope));
    }

    private static Reading off(String label, ReadingKind kind, double stroke, double slope) {
        boolean backwards = kind == ReadingKind.ROLL_SPEED && slope > 0;
        return reading(
                label,
                kind,
                new SetupDraft().stroke(stroke).oil(HOT).slope(slope).backwards(backwards));
    }

    private static Reading reading(String label, ReadingKind kind, SetupDraft draft) {
        return new Reading(label, kind, 1, OptionalDouble.empty(), draft.done());
    }
}
