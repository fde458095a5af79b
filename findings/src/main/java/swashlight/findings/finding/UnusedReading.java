package swashlight.findings.finding;

import swashlight.findings.reading.Reading;

/** A reading that could not be used, and what it lacks. */
public record UnusedReading(Reading reading, String lacks) {}
