package swashlight.findings.finding;

import swashlight.findings.evidence.InferenceOptions;

/**
 * How to find.
 *
 * @param inference seed and work put into weighing
 * @param suggestNext whether to look for the reading that would separate best
 */
public record FinderOptions(InferenceOptions inference, boolean suggestNext) {
    /** What a case on the desk gets. */
    public static FinderOptions usual(long seed) {
        return new FinderOptions(InferenceOptions.usual(seed), true);
    }

    /** A quick look, for thousands of cases at once. */
    public static FinderOptions quick(long seed) {
        return new FinderOptions(InferenceOptions.quick(seed), false);
    }
}
