package swashlight.findings.evidence;

import java.util.List;
import swashlight.findings.expect.Comparison;

/** What was measured, with the errors of the instruments, in the units of comparison. */
public final class Target {
    private final double[] value;
    private final double[] error;

    /** Measured values and errors (one standard deviation, above 0), one unit a reading. */
    public Target(double[] value, double[] error) {
        this.value = value.clone();
        this.error = error.clone();
        for (int i = 0; i < value.length; i++) {
            if (!(Math.abs(value[i]) < 1e300) || !(error[i] > 0 && error[i] < 1e300)) {
                throw new IllegalArgumentException("reading " + i + " is " + value[i] + " with error " + error[i]
                        + "; the error must lie above 0");
            }
        }
    }

    /** The numbers of some comparisons. */
    public static Target of(List<Comparison> comparisons) {
        double[] value = new double[comparisons.size()];
        double[] error = new double[comparisons.size()];
        for (int i = 0; i < value.length; i++) {
            value[i] = comparisons.get(i).value();
            error[i] = comparisons.get(i).error();
        }
        return new Target(value, error);
    }

    /** How many readings. */
    public int size() {
        return value.length;
    }

    /** Measured value of a reading, SI unit of its comparison. */
    public double value(int reading) {
        return value[reading];
    }

    /** One standard deviation of a reading, SI unit of its comparison. */
    public double error(int reading) {
        return error[reading];
    }
}
