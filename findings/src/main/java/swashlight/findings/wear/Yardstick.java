package swashlight.findings.wear;

import java.util.List;
import java.util.OptionalDouble;
import swashlight.drive.description.DriveDescription;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Forecast;
import swashlight.findings.expect.Rehearsal;
import swashlight.findings.reading.Reading;

/**
 * Holds machines against requirements.
 *
 * <pre>
 *   margin = performed/required − 1     speed, pull
 *   margin = 1 − performed/required     roll               unit 1; at least 0: reached; −1 where no settled state is found
 * </pre>
 *
 * A workspace, not for several threads.
 */
public final class Yardstick {
    private final List<Requirement> requirements;
    private final Rehearsal rehearsal;
    private final Forecast forecast;
    private final double[] exact;
    private final double[] required;

    /** The requirements of a described drive, of which relative ones are shares. */
    public Yardstick(DriveDescription drive, List<Requirement> requirements) {
        this.requirements = List.copyOf(requirements);
        rehearsal = new Rehearsal(requirements.stream()
                .map(each -> Comparison.of(
                        new Reading(each.kind().key(), each.kind().reading(), 1, OptionalDouble.empty(), each.setup())))
                .toList());
        forecast = new Forecast(requirements.size());
        exact = new double[rehearsal.errors().size()];
        required = new double[requirements.size()];
        run(drive.vector());
        for (int r = 0; r < required.length; r++) {
            Requirement each = requirements.get(r);
            required[r] = each.relative() ? each.bound() * Math.max(forecast.value(r), 0) : each.bound();
        }
    }

    /** What is required, in the order of {@link #required(int)}. */
    public List<Requirement> requirements() {
        return requirements;
    }

    /** What must be performed, SI unit of the requirement's kind; 0 when the described drive itself cannot do it at all. */
    public double required(int requirement) {
        return required[requirement];
    }

    /** False when the described drive itself does nothing there, so that a share of it says nothing. */
    public boolean sensible() {
        for (double each : required) {
            if (!(each > 0)) {
                return false;
            }
        }
        return true;
    }

    /** The least margin of a machine, values in index order, SI; unit 1. */
    public double margin(double[] vector) {
        run(vector);
        double least = Double.MAX_VALUE;
        for (int r = 0; r < required.length; r++) {
            least = Math.min(least, margin(r));
        }
        return least;
    }

    /** Margin of one requirement on the machine asked about last, 1. */
    public double margin(int requirement) {
        if (!forecast.solved(requirement) || !(required[requirement] > 0)) {
            return -1;
        }
        double ratio = forecast.value(requirement) / required[requirement];
        return Math.max(-1, requirements.get(requirement).kind().moreIsBetter() ? ratio - 1 : 1 - ratio);
    }

    /** What the machine asked about last performs, SI unit of the requirement's kind. */
    public double performed(int requirement) {
        return forecast.value(requirement);
    }

    private void run(double[] vector) {
        rehearsal.run(vector, believed -> believed, exact, forecast);
    }
}
