package swashlight.findings.fit;

/**
 * A fitted number for people: value, interval, unit and what it means.
 *
 * @param key stable name, kebab case
 * @param value best value, in its own unit
 * @param low lower end of the interval, in its own unit
 * @param high upper end of the interval, in its own unit
 * @param confidence share of such intervals that hold the truth, 1, 0 … 1
 * @param unit as printed; "1" for a pure number
 * @param meaning one sentence
 */
public record Estimate(
        String key, double value, double low, double high, double confidence, String unit, String meaning) {
    /** The confidence used where nothing else is said, 1. */
    public static final double USUAL_CONFIDENCE = 0.95;

    /** @throws IllegalArgumentException if the three numbers are not finite and in order */
    public Estimate {
        if (!(low <= value && value <= high) || Double.isInfinite(low) || Double.isInfinite(high)) {
            throw new IllegalArgumentException("estimate " + key + " is " + low + " … " + value + " … " + high
                    + "; the three must be finite and in this order");
        }
        if (!(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("estimate " + key + " has confidence " + confidence + "; 0 … 1");
        }
    }

    /**
     * The usual 95 % interval of a number with a standard deviation.
     *
     * @param key stable name
     * @param value best value, in its own unit
     * @param halfWidth half the interval, in its own unit
     * @param unit as printed
     * @param meaning one sentence
     */
    public static Estimate symmetric(String key, double value, double halfWidth, String unit, String meaning) {
        return new Estimate(key, value, value - halfWidth, value + halfWidth, USUAL_CONFIDENCE, unit, meaning);
    }

    /**
     * The usual 95 % interval of a positive number known by its logarithm.
     *
     * @param key stable name
     * @param logarithm ln of the best value, 1
     * @param halfWidth half the interval of the logarithm, 1
     * @param unit as printed
     * @param meaning one sentence
     */
    public static Estimate positive(String key, double logarithm, double halfWidth, String unit, String meaning) {
        return new Estimate(
                key,
                Math.exp(logarithm),
                Math.exp(logarithm - halfWidth),
                Math.exp(logarithm + halfWidth),
                USUAL_CONFIDENCE,
                unit,
                meaning);
    }

    /**
     * Whether the interval holds a number.
     *
     * @param number in the estimate's own unit
     */
    public boolean holds(double number) {
        return low <= number && number <= high;
    }

    /** The estimate as one line of text. */
    public String line() {
        String tail = "1".equals(unit) ? "" : " " + unit;
        return key + ": " + Figures.significant(value, 4) + tail + "  [" + Figures.significant(low, 4) + ", "
                + Figures.significant(high, 4) + "]  " + meaning;
    }
}
