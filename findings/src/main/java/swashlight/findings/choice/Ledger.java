package swashlight.findings.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import swashlight.findings.belief.Belief;
import swashlight.findings.belief.Suspect;
import swashlight.findings.cause.Action;
import swashlight.findings.cause.Cause;
import swashlight.findings.cost.Job;
import swashlight.findings.cost.Prices;

/**
 * What every option costs on every suspect.
 *
 * <pre>
 *   cost(o, s) = direct(o, s) + fails(o, s) · (comeback + least direct cost of an option that is right for s)
 *   fails      the cause is not wholly put right, or the speed at the hill stays below what is required
 * </pre>
 *
 * Whoever pays for the wrong work pays for the right one too, with the cause then known. All costs in the currency of the prices, unit 1.
 */
public final class Ledger {
    private static final double WORTH_PAIRING = 0.02; // probability of an action, 1
    private static final int MOST_PAIRING = 6;

    private final List<RepairOption> options;
    private final double required; // m/s
    private final double[][] cost; // by suspect, then option
    private final double[][] speed; // m/s
    private final boolean[][] fails;

    private Ledger(List<RepairOption> options, double required, int suspects) {
        this.options = options;
        this.required = required;
        cost = new double[suspects][options.size()];
        speed = new double[suspects][options.size()];
        fails = new boolean[suspects][options.size()];
    }

    /** Fills the ledger of a belief. */
    public static Ledger of(Belief belief, Prices prices, Hill hill) {
        return of(RepairOption.all(leading(belief)), belief, prices, hill);
    }

    /** Fills the ledger of a belief with options that are given. */
    public static Ledger of(List<RepairOption> given, Belief belief, Prices prices, Hill hill) {
        List<RepairOption> options = List.copyOf(given);
        AfterRepair after = new AfterRepair(belief, hill);
        Ledger ledger = new Ledger(options, hill.share() * after.described(), belief.size());
        for (int s = 0; s < belief.size(); s++) {
            after.forget();
            ledger.fill(s, belief.suspects().get(s), prices, after);
        }
        return ledger;
    }

    private static List<Job> leading(Belief belief) {
        Map<Job, Integer> count = new EnumMap<>(Job.class);
        for (Suspect suspect : belief.suspects()) {
            for (Action action : suspect.cause().actions()) {
                Job.of(action).ifPresent(job -> count.merge(job, 1, Integer::sum));
            }
        }
        List<Job> jobs = new ArrayList<>(count.keySet());
        jobs.removeIf(job -> count.get(job) < WORTH_PAIRING * belief.size());
        jobs.sort(Comparator.comparing(count::get).reversed());
        return jobs.subList(0, Math.min(MOST_PAIRING, jobs.size()));
    }

    private void fill(int s, Suspect suspect, Prices prices, AfterRepair after) {
        Cause cause = suspect.cause();
        double right = Double.MAX_VALUE;
        double cured = Double.MAX_VALUE;
        for (int o = 0; o < options.size(); o++) {
            RepairOption option = options.get(o);
            speed[s][o] = after.speed(suspect, option);
            boolean cures = option.cures(cause);
            fails[s][o] = !cures || speed[s][o] < required;
            cost[s][o] = option.direct(prices, cause);
            right = fails[s][o] ? right : Math.min(right, cost[s][o]);
            cured = cures ? Math.min(cured, cost[s][o]) : cured;
        }
        if (right == Double.MAX_VALUE) { // no listed work reaches what is required: a stronger machine or an easier use
            double both = cured == Double.MAX_VALUE ? apart(cause, prices) : cured;
            right = both + prices.of(Job.CHANGE_USE);
        }
        for (int o = 0; o < options.size(); o++) {
            cost[s][o] += fails[s][o] ? prices.comeback() + right : 0;
        }
    }

    private static double apart(Cause cause, Prices prices) {
        return cause.actions().stream()
                .flatMap(action -> Job.of(action).stream())
                .mapToDouble(prices::of)
                .sum();
    }

    /** The options, in the order of the columns. */
    public List<RepairOption> options() {
        return options;
    }

    /** Suspects, in the order of the belief. */
    public int suspects() {
        return cost.length;
    }

    /** Speed at the hill that is required, m/s. */
    public double required() {
        return required;
    }

    /** What an option costs on a suspect in the end, 1 (currency). */
    public double cost(int suspect, int option) {
        return cost[suspect][option];
    }

    /** Speed at the hill after an option, m/s. */
    public double speed(int suspect, int option) {
        return speed[suspect][option];
    }

    /** Whether the customer would come back. */
    public boolean fails(int suspect, int option) {
        return fails[suspect][option];
    }

    /** Expected cost of every option under weights of the suspects (1, any sum above 0); filled in, 1 (currency). */
    public void expected(double[] weights, double[] into) {
        java.util.Arrays.fill(into, 0);
        double sum = 0;
        for (int s = 0; s < cost.length; s++) {
            double weight = weights[s];
            if (weight > 0) {
                sum += weight;
                for (int o = 0; o < into.length; o++) {
                    into[o] += weight * cost[s][o];
                }
            }
        }
        for (int o = 0; o < into.length; o++) {
            into[o] = sum > 0 ? into[o] / sum : 0;
        }
    }
}
