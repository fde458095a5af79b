/**
 * What readings teach and what they leave unknown, before anyone takes them.
 *
 * <p>Idea: about a drive with a little of every common fault, readings and {@link swashlight.findings.insight.Wanted} quantities are straight
 * lines in everything unknown; what a set of readings leaves of a quantity's spread then follows from linear algebra
 * ({@link swashlight.findings.insight.Insight}). Guidance for choosing readings, not a promise about one machine.
 */
package swashlight.findings.insight;
