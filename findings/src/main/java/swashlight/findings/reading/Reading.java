package swashlight.findings.reading;

import java.util.OptionalDouble;

/**
 * One number somebody measured.
 *
 * @param label what its author calls it, for messages
 * @param kind what was read
 * @param value SI unit of the kind (or of the part)
 * @param error stated error, one standard deviation, same unit; empty: the usual one of the kind
 * @param setup conditions
 */
public record Reading(String label, ReadingKind kind, double value, OptionalDouble error, Setup setup) {
    public Reading {
        if (!(Math.abs(value) < 1e300)) {
            throw new IllegalArgumentException("reading " + label + " is not a number: " + value);
        }
    }

    /** The error to reckon with, one standard deviation, SI unit of the kind. */
    public double standardError() {
        return error.orElse(kind.usualError(value));
    }
}
