package swashlight.findings.cause;

import java.util.Optional;
import swashlight.findings.reading.Look;

/**
 * Counted cases whose cause was confirmed.
 *
 * @param cause key of the confirmed cause
 * @param look what was looked for; empty: the cases themselves
 * @param seen cases in which it was there, or all cases
 * @param notSeen cases in which it was looked for and not there
 */
public record Tally(String cause, Optional<Look> look, int seen, int notSeen) {
    public Tally {
        if (seen < 0 || notSeen < 0) {
            throw new IllegalArgumentException(
                    "counts of " + cause + " are " + seen + " and " + notSeen + "; none is below 0");
        }
    }
}
