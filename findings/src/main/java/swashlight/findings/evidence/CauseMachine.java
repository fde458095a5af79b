package swashlight.findings.evidence;

import swashlight.drive.description.Parameters;
import swashlight.findings.cause.Cause;
import swashlight.findings.expect.Forecast;
import swashlight.findings.expect.Rehearsal;

/** A drive with one cause in it, on which the readings are taken; a workspace, not for several threads. */
public final class CauseMachine implements Machine {
    private final Cause cause;
    private final Unknowns unknowns;
    private final Rehearsal rehearsal;
    private final double[] vector = new double[Parameters.count()];
    private final double[] deviations;

    public CauseMachine(Cause cause, Unknowns unknowns, Rehearsal rehearsal) {
        this.cause = cause;
        this.unknowns = unknowns;
        this.rehearsal = rehearsal;
        this.deviations = new double[rehearsal.errors().size()];
    }

    @Override
    public int readings() {
        return rehearsal.comparisons().size();
    }

    @Override
    public int nuisances() {
        return unknowns.parameters() + deviations.length;
    }

    @Override
    public void predict(double[] severity, double[] nuisance, Forecast forecast) {
        unknowns.fill(nuisance, vector);
        cause.apply(vector, severity);
        System.arraycopy(nuisance, unknowns.parameters(), deviations, 0, deviations.length);
        rehearsal.run(vector, believed -> cause.on(believed, severity), deviations, forecast);
    }
}
