/**
 * What a reading would be on a given drive.
 *
 * <p>Idea: a kind of reading with its setup becomes conditions, these become duties, and the steady solver answers; times are compared as
 * speeds, so that a machine that stands is an ordinary answer. Imports drive and {@code reading}. Begin with {@code Expectation}.
 */
package swashlight.findings.expect;
