package swashlight.findings.wear;

import java.util.Arrays;

/**
 * Where a number lies over all machines.
 *
 * @param low a share of the machines lies below, in its own unit
 * @param middle half lie below, in its own unit
 * @param high the same share lies above, in its own unit
 */
public record Span(double low, double middle, double high) {
    /** The span that leaves a share (1) out at each end; the numbers stay as they are. */
    static Span of(double[] numbers, double outside) {
        double[] sorted = numbers.clone();
        Arrays.sort(sorted);
        return new Span(quantile(sorted, outside), quantile(sorted, 0.5), quantile(sorted, 1 - outside));
    }

    private static double quantile(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) Math.min(sorted.length - 2.0, Math.floor(place));
        return sorted.length == 1 ? sorted[0] : sorted[below] + (place - below) * (sorted[below + 1] - sorted[below]);
    }
}
