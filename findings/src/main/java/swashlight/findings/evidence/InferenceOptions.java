package swashlight.findings.evidence;

/**
 * How carefully to weigh.
 *
 * @param seed of all chance
 * @param batches independent repeats from whose scatter errors are told, 1
 * @param leastDraws machines a batch of a cause that is next to impossible, 1
 * @param someDraws machines a batch, at least, of a cause drawn once more, 1
 * @param mostDraws machines a batch of the likeliest cause at first; others by the root of their share of it, 1
 * @param limit machines a batch at most, 1
 * @param rounds how often causes may be redrawn, 1
 * @param tolerance standard error of a probability worth more draws, 1
 * @param wantedSize effective sample size wanted for a cause above 5 %, 1
 * @param sampler work put into proposing
 */
public record InferenceOptions(
        long seed,
        int batches,
        int leastDraws,
        int someDraws,
        int mostDraws,
        int limit,
        int rounds,
        double tolerance,
        double wantedSize,
        SamplerOptions sampler) {
    public InferenceOptions {
        if (batches < 4 || leastDraws < 1 || someDraws < 1 || mostDraws < 1 || limit < mostDraws || rounds < 0) {
            throw new IllegalArgumentException("batches " + batches + ", draws " + leastDraws + ", " + someDraws + ", "
                    + mostDraws + ", limit " + limit + ", rounds " + rounds
                    + ": at least 4 batches, 1 draw, limit not below, rounds from 0");
        }
    }

    /** What a case on the desk gets. */
    public static InferenceOptions usual(long seed) {
        return new InferenceOptions(seed, 16, 1, 3, 8, 96, 2, 0.01, 60, SamplerOptions.usual());
    }

    /** A quick look, for thousands of cases at once. */
    public static InferenceOptions quick(long seed) {
        return new InferenceOptions(seed, 8, 1, 2, 12, 48, 1, 0.02, 30, SamplerOptions.usual());
    }
}
