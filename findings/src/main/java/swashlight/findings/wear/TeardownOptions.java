package swashlight.findings.wear;

/**
 * How carefully to work.
 *
 * @param machines drawn, 1
 * @param seed of all chance
 */
public record TeardownOptions(int machines, long seed) {
    private static final int USUAL = 240;

    /** @throws IllegalArgumentException when there are too few machines for a share of one in ten */
    public TeardownOptions {
        if (machines < 20) {
            throw new IllegalArgumentException("at least 20 machines are drawn, not " + machines);
        }
    }

    /** As many as elsewhere in findings. */
    public static TeardownOptions usual(long seed) {
        return new TeardownOptions(USUAL, seed);
    }
}
