package swashlight.findings.finding;

import java.util.ArrayList;
import java.util.List;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.MakeUpParameter;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.reading.Setup;
import swashlight.findings.reading.SetupDraft;

/**
 * A reading that could be taken next: usual procedures, with figures of common practice (no source).
 *
 * @param key stable name
 * @param words what to do, in plain words
 * @param kind what to read
 * @param setup under which conditions
 */
public record Candidate(String key, String words, ReadingKind kind, Setup setup) {
    private static final double HOT = 353.15; // K, 80 °C
    private static final double COLD = 293.15; // K, 20 °C
    private static final double CLIMB = 0.14; // rad, 8°
    private static final double ROLL = 0.1; // rad
    private static final double RUN = 20; // m
    private static final double SHORT_ROLL = 1; // m

    /** All that apply to a drive. */
    public static List<Candidate> of(DriveDescription drive) {
        List<Candidate> all = new ArrayList<>();
        all.add(driving(
                "input-climb-hot", "read the input speed while climbing, oil hot", ReadingKind.INPUT_SPEED, CLIMB));
        all.add(driving(
                "engine-climb-hot", "read the engine speed while climbing, oil hot", ReadingKind.ENGINE_SPEED, CLIMB));
        all.add(new Candidate(
                "run-cold",
                "time 20 m on the level, full stroke forward, oil cold",
                ReadingKind.RUN_TIME,
                setup(1, 1, COLD, 0, RUN, false)));
        all.add(new Candidate(
                "run-hot",
                "time 20 m on the level, full stroke forward, oil hot",
                ReadingKind.RUN_TIME,
                setup(1, 1, HOT, 0, RUN, false)));
        all.add(new Candidate(
                "run-reverse-hot",
                "time 20 m on the level, full stroke in reverse, oil hot",
                ReadingKind.RUN_TIME,
                setup(-1, 1, HOT, 0, RUN, false)));
        all.add(new Candidate(
                "climb-hot",
                "time 20 m uphill, full stroke forward, oil hot",
                ReadingKind.RUN_TIME,
                setup(1, 1, HOT, CLIMB, RUN, false)));
        all.add(new Candidate(
                "climb-reverse-hot",
                "time 20 m uphill backwards, full stroke in reverse, oil hot",
                ReadingKind.RUN_TIME,
                setup(-1, 1, HOT, -CLIMB, RUN, false)));
        all.add(roll(
                "roll-forward-hot", "engine off, neutral, nose downhill: time 1 m of rolling, oil hot", HOT, -ROLL));
        all.add(roll("roll-back-hot", "engine off, neutral, nose uphill: time 1 m of rolling, oil hot", HOT, ROLL));
        all.add(roll(
                "roll-forward-cold", "engine off, neutral, nose downhill: time 1 m of rolling, oil cold", COLD, -ROLL));
        all.add(still(
                "push",
                "engine off, bypass pulled: read the force to push on a level floor",
                ReadingKind.PUSH_FORCE,
                0));
        all.add(still("arm-forward", "read the travel of the control arm, full forward", ReadingKind.ARM_TRAVEL, 1));
        all.add(still("arm-reverse", "read the travel of the control arm, full reverse", ReadingKind.ARM_TRAVEL, -1));
        all.add(new Candidate(
                "creep",
                "wheels lifted, engine at full throttle, control at neutral: read the axle speed",
                ReadingKind.CREEP_SPEED,
                lifted(0)));
        all.add(new Candidate(
                "axle-lifted",
                "wheels lifted, full throttle, full stroke, oil hot: read the axle speed",
                ReadingKind.AXLE_SPEED,
                lifted(1)));
        all.add(driving(
                "drawbar",
                "pull against a scale on the level until it stops or the wheels slip",
                ReadingKind.DRAWBAR_PULL,
                0));
        all.add(driving(
                "motor-tone-climb-hot",
                "record the motor’s tone while climbing, oil hot",
                ReadingKind.MOTOR_TONE,
                CLIMB));
        if (drive.value(MakeUpParameter.CHARGE_DISPLACEMENT) > 0) {
            all.add(driving("charge-hot", "read the charge pressure, oil hot", ReadingKind.GALLERY_PRESSURE, 0));
        }
        return all;
    }

    private static Candidate driving(String key, String words, ReadingKind kind, double slope) {
        return new Candidate(key, words, kind, setup(1, 1, HOT, slope, 0, false));
    }

    private static Candidate roll(String key, String words, double oil, double slope) {
        return new Candidate(key, words, ReadingKind.ROLL_TIME, setup(0, 0, oil, slope, SHORT_ROLL, slope > 0));
    }

    private static Candidate still(String key, String words, ReadingKind kind, double stroke) {
        return new Candidate(key, words, kind, setup(stroke, 0, HOT, 0, 0, false));
    }

    private static Setup lifted(double stroke) {
        return new SetupDraft().stroke(stroke).fullThrottle().oil(HOT).lifted().done();
    }

    /** Throttle and distance of 0 stand for not stated. */
    private static Setup setup(
            double stroke, double throttle, double oil, double slope, double distance, boolean backwards) {
        SetupDraft draft = new SetupDraft().stroke(stroke).oil(oil).slope(slope).backwards(backwards);
        if (throttle > 0) {
            draft.fullThrottle();
        }
        if (distance > 0) {
            draft.distance(distance);
        }
        return draft.done();
    }
}
