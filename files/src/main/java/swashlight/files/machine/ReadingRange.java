package swashlight.files.machine;

import swashlight.drive.description.Parameter;
import swashlight.files.document.Range;
import swashlight.findings.reading.ReadingKind;

/** What a reading of a kind may be, so that a slip of a unit or a thousand is seen. Own limits, wide: no source. */
public final class ReadingRange {
    private static final double BIAS_SHARE = 0.2; // 1
    private static final double WIDEST = 1e100; // SI unit: no range is wider

    private ReadingRange() {}

    /** The range of an ordinary kind. */
    public static Range of(ReadingKind kind) {
        return switch (kind) {
            case RUN_TIME, ROLL_TIME -> range(kind, 0.05, 3600);
            case GROUND_SPEED -> range(kind, -15, 15);
            case AXLE_SPEED, CREEP_SPEED -> range(kind, -60, 60);
            case ROLL_SPEED -> range(kind, -10, 10);
            case PUSH_FORCE -> range(kind, 0, 2e4);
            case DRAWBAR_PULL -> range(kind, 0, 1e5);
            case ENGINE_SPEED, INPUT_SPEED -> range(kind, 0, 700);
            case HIGH_PRESSURE -> range(kind, 0, 8e7);
            case GALLERY_PRESSURE -> range(kind, -1.1e5, 1e7);
            case WARM_TEMPERATURE -> range(kind, 230, 430);
            case WARM_UP_TIME -> range(kind, 1, 1e5);
            case PUMP_TONE, MOTOR_TONE -> range(kind, 0, 2000);
            case ARM_TRAVEL -> range(kind, -0.6, 0.6);
            case PART_DIMENSION -> range(kind, -Double.MAX_VALUE, Double.MAX_VALUE);
        };
    }

    /** The range of a part: what a description allows, and half as much again for what is worn out. */
    public static Range of(Parameter part) {
        double width = part.high() - part.low();
        return Range.of(part.dimension(), Math.min(0, part.low()), part.high() + width / 2);
    }

    /** By how much an instrument may show too much where its readings have a range: a fifth of that, either way (own limit). */
    public static Range bias(Range reading) {
        double most = BIAS_SHARE * Math.min(reading.high() - reading.low(), 2 * WIDEST);
        return Range.of(reading.dimension(), -most, most);
    }

    private static Range range(ReadingKind kind, double low, double high) {
        return Range.of(kind.dimension(), low, high);
    }
}
