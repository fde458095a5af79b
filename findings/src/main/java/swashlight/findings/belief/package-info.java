/**
 * What is believed about one machine, as a crowd of machines that might be it.
 *
 * <p>Idea: a {@link swashlight.findings.belief.Belief} is a few hundred {@link swashlight.findings.belief.Suspect}s of equal weight, drawn
 * from a {@link swashlight.findings.evidence.Posterior}. Whatever is asked next (what would a reading show, what would a repair restore,
 * what must a proof measure) is asked of each of them with the full drive, and answered by the crowd.
 */
package swashlight.findings.belief;
