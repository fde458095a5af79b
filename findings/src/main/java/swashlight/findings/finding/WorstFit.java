package swashlight.findings.finding;

import swashlight.findings.reading.Reading;

/**
 * The reading that fits worst under the likeliest cause.
 *
 * @param reading which
 * @param prediction what it should be there
 * @param distrust true when it is more likely wild than not, whatever the cause
 */
public record WorstFit(Reading reading, Prediction prediction, boolean distrust) {}
