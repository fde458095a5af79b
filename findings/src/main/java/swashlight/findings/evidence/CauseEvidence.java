package swashlight.findings.evidence;

import swashlight.findings.cause.Cause;

/**
 * What the readings say about one cause.
 *
 * @param cause the hypothesis
 * @param prior odds times the chance of what was seen, 1
 * @param sampler for more draws
 * @param weighed the machines drawn
 */
public record CauseEvidence(Cause cause, double prior, CauseSampler sampler, Weighed weighed) {
    private static final double POOR = 0.05; // effective share of the machines drawn, 1: badly aimed below

    /** The same cause with more machines drawn, aimed anew where the first were aimed badly. */
    CauseEvidence redrawn(int perBatch) {
        if (!sampler.anchored() || weighed.effectiveSize() < POOR * weighed.size()) {
            sampler.anchorAt(weighed);
        }
        return new CauseEvidence(cause, prior, sampler, sampler.weigh(perBatch));
    }
}
