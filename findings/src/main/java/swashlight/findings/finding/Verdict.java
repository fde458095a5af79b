package swashlight.findings.finding;

/**
 * What is said of a cause, of an action, of the whole.
 *
 * <p>THIS from a probability of 0.9, NOT_THIS up to 0.02 (own choice, no source: exchanging a drive pays against half an hour of tests only from
 * about 92 to 95 %, and one in fifty is worth no test).
 */
public enum Verdict {
    THIS("this"),
    NOT_THIS("not-this"),
    CANNOT_TELL("cannot-tell");

    /** Probability from which something counts as certain, 1. Own choice. */
    public static final double ENOUGH = 0.9;

    private static final double NEGLIGIBLE = 0.02; // 1

    private final String key;

    Verdict(String key) {
        this.key = key;
    }

    /** Stable name. */
    public String key() {
        return key;
    }

    /** The verdict on something of a probability, 1. */
    static Verdict on(double probability) {
        return probability >= ENOUGH ? THIS : probability <= NEGLIGIBLE ? NOT_THIS : CANNOT_TELL;
    }
}
