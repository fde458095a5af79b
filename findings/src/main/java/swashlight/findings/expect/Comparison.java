package swashlight.findings.expect;

import java.util.Optional;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;

/**
 * A reading made ready for comparing: its conditions and its number.
 *
 * <p>Times become speeds, v = s/t with error v σ_t/t, so that a machine that stands has the ordinary number 0. Speeds are counted along
 * the direction asked for (downhill for a roll), sizes elsewhere; only creep keeps its sign.
 *
 * @param reading what was read
 * @param conditions stated or usual
 * @param value measured, SI unit of the comparison
 * @param error one standard deviation of the instrument, SI unit of the comparison
 */
public record Comparison(Reading reading, Conditions conditions, double value, double error) {
    private static final double LEAST_ERROR_SHARE = 1e-6; // of the value, 1: nothing is read without error
    private static final double LEAST_ERROR = 1e-15; // SI unit of the comparison
    private static final double PART_ERROR_SHARE = 1e-3; // of a parameter's range where the value is 0, 1

    /** Why a reading cannot be used, or nothing. */
    public static Optional<String> hindrance(Reading reading) {
        ReadingKind kind = reading.kind();
        if (UsualSetup.timed(kind) && reading.setup().distance().isEmpty()) {
            return Optional.of("its distance is not stated");
        }
        if (UsualSetup.timed(kind) && !(reading.value() > 0)) {
            return Optional.of("a time must be above 0 s");
        }
        if (kind == ReadingKind.WARM_TEMPERATURE && reading.setup().since().isEmpty()) {
            return Optional.of("the time since the cold start is not stated");
        }
        if (kind == ReadingKind.WARM_UP_TIME && reading.setup().oilTemperature().isEmpty()) {
            return Optional.of("the temperature to be reached is not stated");
        }
        if (kind == ReadingKind.PART_DIMENSION && reading.setup().part().isEmpty()) {
            return Optional.of("the part measured is not stated");
        }
        if (!(reading.standardError() >= 0 && reading.standardError() < 1e300)) {
            return Optional.of("its error is no number of at least 0");
        }
        return Optional.empty();
    }

    /** A reading that has no hindrance, made ready. */
    public static Comparison of(Reading reading) {
        Conditions conditions = UsualSetup.of(reading.kind(), reading.setup());
        double value = reading.value();
        double error = reading.standardError();
        if (UsualSetup.timed(reading.kind())) {
            double speed = conditions.value(ConditionKind.DISTANCE) / value;
            error = speed * error / value;
            value = speed;
        } else if (reading.kind() == ReadingKind.CREEP_SPEED) {
            value = reading.setup().backwards() ? -Math.abs(value) : value;
        } else if (reading.kind() == ReadingKind.PART_DIMENSION) {
            double low = reading.setup().part().orElseThrow().low();
            double high = reading.setup().part().orElseThrow().high();
            error = error > 0 ? error : PART_ERROR_SHARE * (high - low);
        } else if (reading.kind() != ReadingKind.WARM_TEMPERATURE) {
            value = Math.abs(value);
        }
        return new Comparison(
                reading,
                conditions,
                value,
                Math.max(error, Math.max(LEAST_ERROR, LEAST_ERROR_SHARE * Math.abs(value))));
    }

    /** A compared number told as the reading's kind tells it (a speed as a time). */
    public Expected told(double compared) {
        if (!UsualSetup.timed(reading.kind())) {
            return new Expected.Value(compared);
        }
        double distance = conditions.value(ConditionKind.DISTANCE);
        return compared > 0 ? new Expected.Value(distance / compared) : new Expected.Stands();
    }

    /** Spread of the told number, SI unit of the reading's kind, for a spread of the compared one (its SI unit). */
    public double toldSpread(double compared, double spread) {
        if (!UsualSetup.timed(reading.kind())) {
            return spread;
        }
        double distance = conditions.value(ConditionKind.DISTANCE);
        double slow = Math.max(compared - spread, 0.1 * Math.max(compared, spread));
        return compared > 0 ? Math.abs(distance / slow - distance / compared) : 0;
    }
}
