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
    /** The same cause with more machines drawn. */
    CauseEvidence redrawn(int perBatch) {
        return new CauseEvidence(cause, prior, sampler, sampler.weigh(perBatch));
    }
}
