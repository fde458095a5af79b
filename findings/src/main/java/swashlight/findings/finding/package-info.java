/**
 * From a case to a reasoned finding: what it is, how sure, what fits badly, what is missing, what to read next.
 *
 * <p>Idea: {@link swashlight.findings.finding.Finder} weighs all causes and tells them grouped by what they call for; the answer is one
 * of this, not this, cannot tell. Imports drive and the rooms of findings below it. Begin with {@code Finder}.
 */
package swashlight.findings.finding;
