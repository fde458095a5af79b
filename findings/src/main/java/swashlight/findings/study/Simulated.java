package swashlight.findings.study;

import swashlight.findings.cause.Cause;
import swashlight.findings.reading.MachineCase;

/**
 * A machine drawn from the model, and what a workshop would write down about it.
 *
 * @param cause what is wrong with it
 * @param severity of each fault, in its own SI unit
 * @param machine the case, which does not know the cause
 */
public record Simulated(Cause cause, double[] severity, MachineCase machine) {
    public Simulated {
        severity = severity.clone();
    }
}
