package swashlight.findings.finding;

import swashlight.findings.expect.Condition;
import swashlight.findings.reading.Reading;

/**
 * A condition nobody stated that matters.
 *
 * @param reading whose condition
 * @param assumed what stood in
 * @param widening how much it moves the expected number: by its spread, or by a tenth where it has none; errors of the reading, 1
 */
public record MissingCondition(Reading reading, Condition assumed, double widening) {}
