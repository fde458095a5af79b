package swashlight.findings.finding;

import swashlight.findings.cause.Lore;
import swashlight.findings.evidence.InferenceOptions;

/**
 * How to find.
 *
 * @param inference seed and work put into weighing
 * @param lore what is known of causes before reading
 */
public record FinderOptions(InferenceOptions inference, Lore lore) {
    private static final int SUSPECTS = 240;

    /** What a case on the desk gets. */
    public static FinderOptions usual(long seed) {
        return new FinderOptions(InferenceOptions.usual(seed), Lore.seeds());
    }

    /** A quick look, for thousands of cases at once. */
    public static FinderOptions quick(long seed) {
        return new FinderOptions(InferenceOptions.quick(seed), Lore.seeds());
    }

    /** How many machines stand for what is believed afterwards. */
    public int suspects() {
        return SUSPECTS;
    }

    /** The same with other lore. */
    public FinderOptions with(Lore other) {
        return new FinderOptions(inference, other);
    }
}
