package swashlight.findings.evidence;

import java.util.List;

/**
 * All causes weighed against each other.
 *
 * <pre>
 *   P_h = p_h Z_h / Σ p Z
 *   error of P_h, or of a sum of them, from the scatter of batches b that all causes share:
 *   δ_b = Σ_{h in set} P_h (Z_hb/Z_h − 1) − P_set Σ_j P_j (Z_jb/Z_j − 1),   σ² = Σ_b δ_b²/(B (B − 1))
 * </pre>
 *
 * P, p, Z: unit 1.
 */
public final class Posterior {
    private final List<CauseEvidence> causes;
    private final double[] probability;
    private final double[][] deviation; // per cause and batch: Z_hb/Z_h − 1
    private final int batches;
    private final double logTotal;

    /** Weighs causes whose draws share their batches. */
    public Posterior(List<CauseEvidence> causes, int batches) {
        this.causes = List.copyOf(causes);
        this.batches = batches;
        probability = new double[causes.size()];
        deviation = new double[causes.size()][batches];
        double highest = Double.NEGATIVE_INFINITY;
        double[] log = new double[probability.length];
        for (int h = 0; h < log.length; h++) {
            CauseEvidence cause = causes.get(h);
            log[h] = Math.log(cause.prior()) + cause.weighed().logEvidence();
            highest = Math.max(highest, log[h]);
        }
        double sum = 0;
        double priors = 0;
        for (int h = 0; h < log.length; h++) {
            probability[h] = Math.exp(log[h] - highest);
            sum += probability[h];
            priors += causes.get(h).prior();
        }
        logTotal = highest + Math.log(sum / priors);
        for (int h = 0; h < log.length; h++) {
            probability[h] /= sum;
            Weighed weighed = causes.get(h).weighed();
            double reference = weighed.highest();
            double mean = Math.exp(weighed.logEvidence() - reference);
            for (int b = 0; b < batches; b++) {
                deviation[h][b] = weighed.batchEvidence(b, reference) / mean - 1;
            }
        }
    }

    /** The causes, in their own order. */
    public List<CauseEvidence> causes() {
        return causes;
    }

    /** Probability of a cause, 1. */
    public double probability(int cause) {
        return probability[cause];
    }

    /** ln of the evidence of all causes together, readings times their errors; unit 1. */
    public double logEvidence() {
        return logTotal;
    }

    /** Standard error of the probability of one cause, from chance in the computing; unit 1. */
    public double error(int cause) {
        boolean[] set = new boolean[probability.length];
        set[cause] = true;
        return error(set);
    }

    /** Standard error of the probability of a set of causes; unit 1. */
    public double error(boolean[] set) {
        double together = 0;
        for (int h = 0; h < set.length; h++) {
            together += set[h] ? probability[h] : 0;
        }
        double squares = 0;
        for (int b = 0; b < batches; b++) {
            double delta = 0;
            for (int h = 0; h < set.length; h++) {
                delta += probability[h] * deviation[h][b] * ((set[h] ? 1 : 0) - together);
            }
            squares += delta * delta;
        }
        return Math.sqrt(squares / (batches * (batches - 1.0)));
    }
}
