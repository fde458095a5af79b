package swashlight.findings.belief;

import swashlight.findings.cause.Cause;

/**
 * One machine that might be the one in the yard.
 *
 * @param cause what is wrong with it
 * @param severity of each fault, in its own SI unit
 * @param unknowns deviations of everything else, standard deviations, in the order of the belief's unknowns
 */
public record Suspect(Cause cause, double[] severity, double[] unknowns) {
    public Suspect {
        severity = severity.clone();
        unknowns = unknowns.clone();
    }
}
