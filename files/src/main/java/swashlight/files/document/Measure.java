package swashlight.files.document;

import java.util.OptionalDouble;

/**
 * A value read from a file, with the spread stated beside it.
 *
 * @param value SI unit of its dimension
 * @param spread one standard deviation, same unit; empty when none is stated
 */
public record Measure(double value, OptionalDouble spread) {}
