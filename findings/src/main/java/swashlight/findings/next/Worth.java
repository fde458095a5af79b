package swashlight.findings.next;

import java.util.Arrays;
import swashlight.findings.evidence.WildLaw;
import swashlight.findings.finding.Verdict;

/**
 * What one reading is worth before it is taken, exactly one step ahead over a crowd of suspects.
 *
 * <pre>
 *   saving = min_o Σ_s w_s C(o, s) − ∫ min_o Σ_s w_s p(y | s) C(o, s) dy          currency
 *   gain   = ∫ Σ_a p(a, y) ln( p(a, y) / (p(a) p(y)) ) dy                         nat
 *   told   = ∫ p(y) [max_a p(a | y) ≥ 0.9] dy                                      1
 *   right  = ∫ max_a p(a, y) dy                                                    1
 *   p(y | s) = (1 − w) N(y; v_s, τ_s) + w N(y; v_s, W τ_s),   τ_s² = σ_s² + h_c²
 *
 *   v_s, σ_s   what suspect s shows, the instrument's error there     SI unit of the comparison
 *   h_c        width of a kernel within the suspects of one cause     SI unit of the comparison
 *   a          what the cause of a suspect calls for
 * </pre>
 *
 * A reading is told to one of about a hundred cells, with each suspect's exact chance to fall into it, so that the sum can only lose.
 * Few suspects stand for a spread crowd: without the kernel an accurate reading would seem to name the very suspect. Its width is
 * Silverman's (1986, from memory), 1.06 s n^(−1/5), with s drawn to the mean of all causes where a cause has few. Source: preposterior
 * analysis (Raiffa and Schlaifer 1961, from memory). Checked against its closed form of two options on a normal quantity.
 */
public final class Worth {
    private static final int CELLS = 96; // into which a reading may fall
    private static final double[] MARKS = {-4, -2.5, -1.6, -0.8, 0, 0.8, 1.6, 2.5, 4
    }; // standard deviations round each suspect
    private static final double KERNEL = 1.06; // 1
    private static final double FEW = 3; // suspects, weight of the mean scatter

    private final double[][] cost; // by suspect, then option
    private final int[] group;
    private final int[] action;
    private final int actions;
    private final double[] weight;
    private final double[] width;
    private double saving;
    private double gain;
    private double decides;
    private double right;

    /**
     * Over suspects.
     *
     * @param cost of each option on each suspect, 1 (currency); suspect first
     * @param group number of each suspect's cause
     * @param action number of what it calls for
     * @param weight of each suspect, 1, any sum above 0
     */
    public Worth(double[][] cost, int[] group, int[] action, double[] weight) {
        this.cost = cost;
        this.group = group.clone();
        this.action = action.clone();
        this.weight = weight.clone();
        width = new double[group.length];
        actions = Arrays.stream(action).max().orElse(0) + 1;
        double sum = Arrays.stream(weight).sum();
        for (int s = 0; s < this.weight.length; s++) {
            this.weight[s] /= sum;
        }
    }

    /** Weighs a reading by what it shows on each suspect and how it errs there, SI unit of its comparison; unsolved suspects show nothing. */
    public void weigh(double[] value, double[] error, boolean[] solved) {
        smooth(value, error, solved);
        double[] edges = edges(value, solved);
        double[] mixed = new double[cost[0].length];
        double[] joint = new double[actions];
        double[] below = new double[value.length];
        double[] shares = new double[value.length];
        double after = 0;
        double told = 0;
        decides = 0;
        right = 0;
        for (int k = 0; k <= edges.length; k++) {
            for (int s = 0; s < value.length; s++) {
                double here = k == edges.length ? 1 : solved[s] ? below((edges[k] - value[s]) / width[s]) : 0;
                shares[s] = here - below[s];
                below[s] = here;
            }
            spread(shares, solved, edges.length + 1);
            after += mix(shares, mixed, joint);
            told += information(joint);
            decides += decided(joint);
            right += Arrays.stream(joint).max().orElse(0);
        }
        Arrays.fill(shares, 1);
        saving = Math.max(0, mix(shares, mixed, joint) - after);
        gain = Math.max(0, told - information(joint));
    }

    /** Gives suspects without a settled state the share of all others in a cell, so that it tells nothing about them. */
    private void spread(double[] shares, boolean[] solved, int cells) {
        double sum = 0;
        double all = 0;
        for (int s = 0; s < shares.length; s++) {
            if (solved[s]) {
                sum += weight[s] * shares[s];
                all += weight[s];
            }
        }
        double usual = all > 0 ? sum / all : 1.0 / cells;
        for (int s = 0; s < shares.length; s++) {
            shares[s] = solved[s] ? shares[s] : usual;
        }
    }

    /** Edges of cells into which readings fall about equally often; the reading is taken as told to its cell. */
    private double[] edges(double[] value, boolean[] solved) {
        double[] marks = new double[MARKS.length * value.length];
        int size = 0;
        for (int s = 0; s < value.length; s++) {
            if (solved[s] && weight[s] > 0) {
                for (double mark : MARKS) {
                    marks[size++] = value[s] + mark * width[s];
                }
            }
        }
        Arrays.sort(marks, 0, size);
        int cells = Math.min(CELLS, size);
        double[] edges = new double[Math.max(0, cells - 1)];
        for (int k = 0; k < edges.length; k++) {
            edges[k] = marks[(int) ((k + 1.0) * size / cells)];
        }
        return edges;
    }

    /** Σ_a p(a, y) ln(p(a, y)/p(y)) of one node; unit 1. */
    private static double information(double[] joint) {
        double all = 0;
        for (double part : joint) {
            all += part;
        }
        double sum = 0;
        for (double part : joint) {
            sum += part > 0 ? part * Math.log(part / all) : 0;
        }
        return sum;
    }

    /** Chance of a cell, if one action has as much of it as is called certain; else 0; unit 1. */
    private static double decided(double[] joint) {
        double all = 0;
        double most = 0;
        for (double part : joint) {
            all += part;
            most = Math.max(most, part);
        }
        return most >= Verdict.ENOUGH * all ? all : 0;
    }

    /** Fills the costs of options and the actions' shares; returns the least cost, 1 (currency). */
    private double mix(double[] shares, double[] mixed, double[] joint) {
        Arrays.fill(mixed, 0);
        Arrays.fill(joint, 0);
        for (int s = 0; s < shares.length; s++) {
            double share = weight[s] * shares[s];
            if (share > 1e-12) {
                joint[action[s]] += share;
                for (int o = 0; o < mixed.length; o++) {
                    mixed[o] += share * cost[s][o];
                }
            }
        }
        double least = Double.MAX_VALUE;
        for (double each : mixed) {
            least = Math.min(least, each);
        }
        return least;
    }

    private void smooth(double[] value, double[] error, boolean[] solved) {
        int groups = Arrays.stream(group).max().orElse(0) + 1;
        double[] sum = new double[groups];
        double[] mean = new double[groups];
        double[] square = new double[groups];
        double[] count = new double[groups];
        for (int s = 0; s < value.length; s++) {
            if (solved[s] && weight[s] > 0) {
                double w = weight[s];
                sum[group[s]] += w;
                mean[group[s]] += w * value[s];
                square[group[s]] += w * w;
            }
        }
        double pooled = 0;
        double all = 0;
        double[] scatter = new double[groups];
        for (int g = 0; g < groups; g++) {
            mean[g] = sum[g] > 0 ? mean[g] / sum[g] : 0;
            count[g] = sum[g] > 0 ? sum[g] * sum[g] / square[g] : 0;
        }
        for (int s = 0; s < value.length; s++) {
            if (solved[s] && weight[s] > 0) {
                double off = value[s] - mean[group[s]];
                scatter[group[s]] += weight[s] * off * off;
                pooled += weight[s] * off * off;
                all += weight[s];
            }
        }
        double mutual = all > 0 ? pooled / all : 0;
        for (int s = 0; s < value.length; s++) {
            int g = group[s];
            double own = sum[g] > 0 ? scatter[g] / sum[g] : 0;
            double n = Math.max(1, count[g]);
            double variance = (n * own + FEW * Math.min(mutual, own > 0 ? 4 * own : mutual)) / (n + FEW);
            double kernel = KERNEL * Math.sqrt(variance) * Math.pow(n, -0.2);
            width[s] = Math.sqrt(error[s] * error[s] + kernel * kernel);
        }
    }

    private static double below(double z) {
        return (1 - WildLaw.SHARE) * normal(z) + WildLaw.SHARE * normal(z / WildLaw.WIDTH);
    }

    /** Φ(z) to 7.5e-8, a dozen times faster than exactly. Source: Abramowitz and Stegun 26.2.17. */
    private static double normal(double z) {
        double size = Math.abs(z);
        if (size > 8) {
            return z > 0 ? 1 : 0;
        }
        double t = 1 / (1 + 0.2316419 * size);
        double series =
                t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        double beyond = 0.3989422804014327 * Math.exp(-0.5 * z * z) * series;
        return z > 0 ? 1 - beyond : beyond;
    }

    /** Expected fall of the cost of the best option, 1 (currency). */
    public double saving() {
        return saving;
    }

    /** Expected information about what is to be done, nat; unit 1. */
    public double gain() {
        return gain;
    }

    /** Chance that afterwards one action is as good as certain, 1. */
    public double decides() {
        return decides;
    }

    /** Expected chance of the action that is likeliest afterwards, 1. */
    public double right() {
        return right;
    }
}
