package swashlight.findings.next;

import java.util.Arrays;
import swashlight.findings.belief.Belief;

/**
 * What a step is worth that tells one of a few things, exactly one step ahead over a crowd of suspects.
 *
 * <pre>
 *   saving = min_o Σ_s C(o, s)/N − Σ_y min_o Σ_s p(y | s) C'(o, s)/N        currency
 *   gain   = Σ_y Σ_a p(a, y) ln( p(a, y) / (p(a) p(y)) )                    nat
 *
 *   C, C'   cost of an option now, and once the step is done    currency
 *   y       what is told;   a   what the cause of a suspect calls for
 * </pre>
 *
 * Source: preposterior analysis (Raiffa and Schlaifer 1961, from memory).
 */
final class Sorted {
    private final double[][] afterwards; // by suspect, then option
    private final int[] action;
    private final double[] prior; // by action, 1
    private final double now;
    private double after;
    private double gain;

    /**
     * Over suspects of the same weight.
     *
     * @param action number of what the cause of each calls for
     * @param cost by suspect, then option, now, 1 (currency)
     * @param afterwards the same once the step is done, 1 (currency)
     */
    Sorted(int[] action, double[][] cost, double[][] afterwards) {
        this.action = action.clone();
        this.afterwards = afterwards;
        prior = new double[Arrays.stream(action).max().orElse(0) + 1];
        double[] all = new double[action.length];
        Arrays.fill(all, 1.0 / action.length);
        for (int a : action) {
            prior[a] += 1.0 / action.length;
        }
        now = least(cost, all);
    }

    /** Numbers of what the causes of a belief call for. */
    static int[] actions(Belief belief) {
        return belief.suspects().stream()
                .mapToInt(suspect -> suspect.cause().action().ordinal())
                .toArray();
    }

    /** Begins with a step of which nothing was told yet. */
    void begin() {
        after = 0;
        gain = 0;
    }

    /** Adds one thing that may be told, by its chance on each suspect, 1. */
    void told(double[] chance) {
        double[] share = new double[chance.length];
        double[] joint = new double[prior.length];
        double sum = 0;
        for (int s = 0; s < chance.length; s++) {
            share[s] = chance[s] / chance.length;
            joint[action[s]] += share[s];
            sum += share[s];
        }
        if (sum > 0) {
            after += least(afterwards, share);
            for (int a = 0; a < joint.length; a++) {
                gain += joint[a] > 0 ? joint[a] * Math.log(joint[a] / (prior[a] * sum)) : 0;
            }
        }
    }

    private static double least(double[][] cost, double[] share) {
        double[] mixed = new double[cost[0].length];
        for (int s = 0; s < share.length; s++) {
            if (share[s] > 0) {
                for (int o = 0; o < mixed.length; o++) {
                    mixed[o] += share[s] * cost[s][o];
                }
            }
        }
        return Arrays.stream(mixed).min().orElse(0);
    }

    /** Expected fall of the cost of the best option, all told, 1 (currency). */
    double saving() {
        return Math.max(0, now - after);
    }

    /** Expected information about what is to be done, all told, nat; unit 1. */
    double gain() {
        return Math.max(0, gain);
    }
}
