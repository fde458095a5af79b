package swashlight.drive.motion;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * A control over time: straight between its corners, level before the first and after the last.
 *
 * <p>Times in s, rising; values in the SI unit of the control.
 */
public final class Timeline {
    private final double[] times;
    private final double[] values;

    private Timeline(double[] times, double[] values) {
        this.times = times;
        this.values = values;
    }

    /** A control that never changes (value in its own unit). */
    public static Timeline constant(double value) {
        return new Timeline(new double[] {0}, new double[] {value});
    }

    /**
     * A control through corners.
     *
     * @param times s, not falling
     * @param values one a time, SI unit of the control
     * @throws IllegalArgumentException when lengths differ, times fall or a number is not finite
     */
    public static Timeline through(double[] times, double[] values) {
        if (times.length == 0 || times.length != values.length) {
            throw new IllegalArgumentException(
                    "a timeline needs as many values as times: " + values.length + " for " + times.length);
        }
        for (int i = 0; i < times.length; i++) {
            if (!(Math.abs(times[i]) < 1e9) || !(Math.abs(values[i]) < 1e12) || (i > 0 && times[i] < times[i - 1])) {
                throw new IllegalArgumentException("timeline corner " + (i + 1) + ": time " + times[i] + " s, value "
                        + values[i] + "; times must not fall");
            }
        }
        return new Timeline(times.clone(), values.clone());
    }

    /** Value at a time (s), SI unit of the control. */
    public double at(double time) {
        int last = times.length - 1;
        if (time <= times[0]) {
            return values[0];
        }
        for (int i = 1; i <= last; i++) {
            if (time < times[i]) {
                double share = (time - times[i - 1]) / (times[i] - times[i - 1]);
                return values[i - 1] + share * (values[i] - values[i - 1]);
            }
        }
        return values[last];
    }

    /** First corner later than a time (both s), or positive infinity. */
    public double nextCorner(double time) {
        for (double corner : times) {
            if (corner > time) {
                return corner;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** Slope of the leg that begins at or holds a time (s), SI unit of the control per s; 0 outside the corners and at a jump. */
    public double slopeAfter(double time) {
        for (int i = 1; i < times.length; i++) {
            if (time >= times[i - 1] && time < times[i]) {
                return (values[i] - values[i - 1]) / (times[i] - times[i - 1]);
            }
        }
        return 0;
    }

    /** Least value, SI unit of the control. */
    public double least() {
        double least = values[0];
        for (double value : values) {
            least = Math.min(least, value);
        }
        return least;
    }

    /** Greatest value, SI unit of the control. */
    public double greatest() {
        double greatest = values[0];
        for (double value : values) {
            greatest = Math.max(greatest, value);
        }
        return greatest;
    }

    /** Number of corners, 1. */
    public int corners() {
        return times.length;
    }

    /** Time of a corner (0 … corners − 1), s. */
    public double cornerTime(int corner) {
        return times[corner];
    }

    /** Value at a corner (0 … corners − 1), SI unit of the control. */
    public double cornerValue(int corner) {
        return values[corner];
    }

    /** The same corners with other values. */
    public Timeline map(DoubleUnaryOperator change) {
        double[] changed = new double[values.length];
        for (int i = 0; i < changed.length; i++) {
            changed[i] = change.applyAsDouble(values[i]);
        }
        return through(times, changed);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Timeline that && Arrays.equals(times, that.times) && Arrays.equals(values, that.values);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(times) + Arrays.hashCode(values);
    }
}
