package swashlight.findings.proof;

import java.util.Arrays;

/**
 * By how much machines show more under other conditions. Middle and half of the middle two thirds, since a belt near its end makes some machines
 * jump.
 *
 * @param middle SI unit of the comparison
 * @param spread one standard deviation from machine to machine, SI unit of the comparison
 */
record Shift(double middle, double spread) {
    private static final double ONE_DEVIATION = 0.8413; // share of a normal law below one standard deviation, 1

    static Shift between(double[] from, double[] to) {
        double[] off = new double[from.length];
        for (int s = 0; s < off.length; s++) {
            off[s] = to[s] - from[s];
        }
        Arrays.sort(off);
        double half = (Band.quantile(off, ONE_DEVIATION) - Band.quantile(off, 1 - ONE_DEVIATION)) / 2;
        return new Shift(Band.quantile(off, 0.5), half);
    }
}
