package swashlight.findings.expect;

/**
 * One condition of a reading, stated or taken as usual.
 *
 * @param kind which condition
 * @param value stated or usual, SI unit of the kind
 * @param spread one standard deviation, SI unit of the kind; 0 when it does not matter or is exact
 * @param stated false when nobody said it and the usual value stands in
 */
public record Condition(ConditionKind kind, double value, double spread, boolean stated) {
    /** @throws IllegalArgumentException when a number is not finite or the spread is negative */
    public Condition {
        if (!(Math.abs(value) < 1e300) || !(spread >= 0 && spread < 1e300)) {
            throw new IllegalArgumentException(
                    "condition " + kind.key() + " is " + value + " with spread " + spread + ": no number");
        }
    }

    /**
     * Name of the error: readings that share it share the error, for they were taken with the same instrument at the same place and hour.
     * A slope walked both ways is one slope.
     */
    String errorName() {
        double shared = kind == ConditionKind.SLOPE ? Math.abs(value) : value;
        return kind.key() + (stated ? "=" + shared : "");
    }

    /** The condition with its error at z standard deviations (unit 1), SI unit of the kind. */
    double at(double z) {
        boolean downhill = kind == ConditionKind.SLOPE && value < 0;
        return value + (downhill ? -spread : spread) * z;
    }
}
