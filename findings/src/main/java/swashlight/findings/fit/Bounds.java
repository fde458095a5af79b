package swashlight.findings.fit;

import java.util.Arrays;

/**
 * Lower and upper limits of parameters.
 *
 * @param low lower limits, each in its parameter's unit
 * @param high upper limits, each in its parameter's unit
 */
public record Bounds(double[] low, double[] high) {
    /** @throws IllegalArgumentException if a lower limit is not below its upper one */
    public Bounds {
        low = low.clone();
        high = high.clone();
        for (int i = 0; i < low.length; i++) {
            if (!(low[i] < high[i])) {
                throw new IllegalArgumentException(
                        "limits of parameter " + i + " are " + low[i] + " and " + high[i] + "; low must be below high");
            }
        }
    }

    /**
     * No limits at all.
     *
     * @param parameters how many
     */
    public static Bounds none(int parameters) {
        double[] low = new double[parameters];
        double[] high = new double[parameters];
        Arrays.fill(low, Double.NEGATIVE_INFINITY);
        Arrays.fill(high, Double.POSITIVE_INFINITY);
        return new Bounds(low, high);
    }

    /** The nearest point within the limits. */
    double[] clamp(double[] point) {
        double[] inside = point.clone();
        for (int i = 0; i < point.length; i++) {
            inside[i] = Math.max(low[i], Math.min(high[i], point[i]));
        }
        return inside;
    }

    /** Whether a parameter stands on a limit and would be pushed out of it. */
    boolean blocks(int parameter, double value, double direction) {
        return (direction < 0 && value <= low[parameter]) || (direction > 0 && value >= high[parameter]);
    }
}
