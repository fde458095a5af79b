/**
 * What work and mistakes cost: the user's own figures, invented ones to begin with.
 *
 * <p>Idea: a {@link swashlight.findings.cost.Job} says what it puts right, {@link swashlight.findings.cost.Prices} what it costs. Imports
 * drive and {@code cause}. Begin with {@code Prices}.
 */
package swashlight.findings.cost;
