package swashlight.findings.finding;

import swashlight.findings.expect.Expected;

/**
 * What a reading should be under one cause, judged by all the other readings.
 *
 * @param cause key of the cause
 * @param expected middle of it, as the kind of reading tells it
 * @param spread one standard deviation, SI unit of the reading's kind
 * @param standardised measured less expected over both errors together, on the scale of comparison (of speed, for a time), 1
 * @param chanceWild chance that this reading is wild if this is the cause, 1
 */
public record Prediction(String cause, Expected expected, double spread, double standardised, double chanceWild) {}
