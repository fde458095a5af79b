/**
 * The leak law of a pump from its case-drain flow, read through a meter that does not start at once.
 *
 * <p>Idea: a reading inside the meter's dead band is not a zero and not missing, it says "less than the start flow"; and rows
 * of one ramp are not independent. Imports {@code drive.oil} and {@code findings.fit}. Begin with
 * {@link swashlight.findings.drain.DrainFit}.
 */
package swashlight.findings.drain;
