/**
 * What can be read from outside (or at teardown), with its conditions and its error.
 *
 * <p>Idea: a {@link swashlight.findings.reading.Reading} is a number a person measured, of a {@link swashlight.findings.reading.ReadingKind}, in a
 * {@link swashlight.findings.reading.Setup}. Imports drive. Begin with {@code ReadingKind}.
 */
package swashlight.findings.reading;
