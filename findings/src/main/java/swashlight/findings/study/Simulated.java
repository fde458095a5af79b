package swashlight.findings.study;

import java.util.List;
import java.util.Map;
import swashlight.findings.belief.Belief;
import swashlight.findings.belief.Suspect;
import swashlight.findings.cause.Cause;
import swashlight.findings.evidence.Unknowns;
import swashlight.findings.reading.MachineCase;

/**
 * A machine drawn from the model, and what a workshop would write down about it.
 *
 * @param truth the machine itself
 * @param unknowns what its deviations deviate
 * @param wild readings of the case that went wild by their place, and by how many errors of the instrument, 1
 * @param machine the case, which does not know the cause
 */
public record Simulated(Suspect truth, Unknowns unknowns, Map<Integer, Double> wild, MachineCase machine) {
    public Simulated {
        wild = Map.copyOf(wild);
    }

    /** What is wrong with it. */
    public Cause cause() {
        return truth.cause();
    }

    /** Severity of each fault, in its own SI unit. */
    public double[] severity() {
        return truth.severity();
    }

    /** The truth as a belief that leaves nothing open. */
    Belief known() {
        return Belief.of(machine.drive(), unknowns, List.of(truth));
    }
}
