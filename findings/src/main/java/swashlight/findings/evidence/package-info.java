/**
 * How well each cause explains the readings: evidence by integration over severity and over everything else that is not known.
 *
 * <p>Idea: unknowns are standard normal z beside a severity; a {@link swashlight.findings.evidence.Machine} predicts readings from them. A
 * linearised answer proposes where to look, the true machine weighs it. Imports drive, {@code expect}, {@code cause}. Begin with {@code
 * CauseSampler}.
 */
package swashlight.findings.evidence;
