package swashlight.findings.next;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import swashlight.findings.belief.Belief;
import swashlight.findings.cause.Cause;
import swashlight.findings.choice.Ledger;
import swashlight.findings.cost.Prices;
import swashlight.findings.evidence.WildLaw;
import swashlight.findings.finding.Candidate;

/**
 * Simulated visits: a machine of a large crowd is taken as the truth, the others stand for what is believed of it, readings are taken one by
 * one by some rule, the best work is chosen, and both are paid. Readings carry instrument errors, now and then wild ones.
 */
public final class Visits {
    private static final double ENOUGH = 0.9; // probability of an action at which rules without money stop, 1
    private static final double LEAST_GAIN = 0.02; // nat at which the rule by information stops
    private static final double KERNEL = 0.3; // of the scatter within a cause, 1: keeps a few suspects from being named

    /** By what the next reading is chosen. */
    public enum Rule {
        /** By expected saving less cost, until none pays. */
        MONEY,
        /** The cheapest first, until one action has nine tenths. */
        CHEAP_FIRST,
        /** By information about the action, until one has nine tenths or none tells a fiftieth of a nat. */
        INFORMATION,
        /** None. */
        NO_READING
    }

    private final Belief belief;
    private final Ledger ledger;
    private final Prices prices;
    private final List<Errand> errands = new ArrayList<>();
    private final Foreseen foreseen;
    private final double[][] cost;
    private final int[] group;
    private final int[] action;
    private final double[][] value;
    private final double[][] width; // kernel and instrument
    private int readings;

    /** Over a large belief. */
    public Visits(Belief belief, Ledger ledger, Prices prices, long seed) {
        this.belief = belief;
        this.ledger = ledger;
        this.prices = prices;
        for (Candidate candidate : Candidate.of(belief.drive())) {
            Errand errand = Errand.of(candidate, prices);
            if (Tool.usual().containsAll(errand.tools())) {
                errands.add(errand);
            }
        }
        foreseen = Foreseen.of(belief, errands, seed);
        int count = belief.size();
        cost = new double[count][ledger.options().size()];
        group = new int[count];
        action = new int[count];
        Map<Cause, Integer> groups = new HashMap<>();
        for (int s = 0; s < count; s++) {
            Cause cause = belief.suspects().get(s).cause();
            Integer known = groups.get(cause);
            group[s] = known == null ? groups.size() : known;
            groups.put(cause, group[s]);
            action[s] = cause.action().ordinal();
            for (int o = 0; o < cost[s].length; o++) {
                cost[s][o] = ledger.cost(s, o);
            }
        }
        value = new double[errands.size()][];
        width = new double[errands.size()][];
        for (int e = 0; e < errands.size(); e++) {
            value[e] = foreseen.values(e);
            width[e] = widened(value[e], foreseen.errors(e), groups.size());
        }
    }

    private double[] widened(double[] values, double[] errors, int groups) {
        double[] sum = new double[groups];
        double[] square = new double[groups];
        double[] count = new double[groups];
        for (int s = 0; s < values.length; s++) {
            sum[group[s]] += values[s];
            square[group[s]] += values[s] * values[s];
            count[group[s]]++;
        }
        double[] wide = new double[values.length];
        for (int s = 0; s < values.length; s++) {
            double n = count[group[s]];
            double mean = sum[group[s]] / n;
            double scatter = Math.max(0, square[group[s]] / n - mean * mean);
            wide[s] = Math.sqrt(errors[s] * errors[s] + KERNEL * KERNEL * scatter);
        }
        return wide;
    }

    /** What one visit to a machine of the crowd costs in the end, time of readings with it, 1 (currency). */
    public double visit(int truth, Rule rule, long seed) {
        Random chance = new Random(seed * 31 + truth);
        double[] weight = new double[belief.size()];
        Arrays.fill(weight, 1);
        weight[truth] = 0; // the truth is not among those believed
        boolean[] taken = new boolean[errands.size()];
        double[] error = new double[errands.size()];
        boolean[] wild = new boolean[errands.size()];
        for (int e = 0; e < error.length; e++) { // the same luck whatever the rule
            error[e] = chance.nextGaussian();
            wild[e] = chance.nextDouble() < WildLaw.SHARE;
        }
        double paid = 0;
        double oil = 293; // K, comes in cold
        readings = 0;
        for (int next = choose(rule, weight, taken, oil); next >= 0; next = choose(rule, weight, taken, oil)) {
            taken[next] = true;
            readings++;
            paid += prices.ofTime(errands.get(next).timeFrom(oil));
            oil = errands.get(next).leaves(oil);
            if (foreseen.solved(next)[truth]) {
                double read = value[next][truth]
                        + foreseen.errors(next)[truth] * error[next] * (wild[next] ? WildLaw.WIDTH : 1);
                weigh(weight, next, read);
            }
        }
        return paid + cost[truth][best(weight)];
    }

    /** Readings taken on the last visit. */
    public int readings() {
        return readings;
    }

    /** What a visit costs when the truth is known, 1 (currency). */
    public double known(int truth) {
        return Arrays.stream(cost[truth]).min().orElse(0);
    }

    /** What always doing one kind of work costs on a machine, 1 (currency). */
    public double always(int truth, String option) {
        for (int o = 0; o < cost[truth].length; o++) {
            if (ledger.options().get(o).key().equals(option)) {
                return cost[truth][o];
            }
        }
        throw new IllegalArgumentException("no option is called " + option);
    }

    private int choose(Rule rule, double[] weight, boolean[] taken, double oil) {
        if (rule == Rule.NO_READING || (rule != Rule.MONEY && sure(weight))) {
            return -1;
        }
        int best = -1;
        double highest = rule == Rule.MONEY ? 0 : rule == Rule.INFORMATION ? LEAST_GAIN : -Double.MAX_VALUE;
        Sample sample = rule == Rule.CHEAP_FIRST ? null : new Sample(weight);
        for (int e = 0; e < taken.length; e++) {
            if (!taken[e]) {
                double price = prices.ofTime(errands.get(e).timeFrom(oil));
                double worth = sample == null ? -price : sample.worth(e, rule, price);
                if (worth > highest) {
                    highest = worth;
                    best = e;
                }
            }
        }
        return best;
    }

    private boolean sure(double[] weight) {
        double[] chances = new double[Arrays.stream(action).max().orElse(0) + 1];
        double sum = 0;
        for (int s = 0; s < weight.length; s++) {
            chances[action[s]] += weight[s];
            sum += weight[s];
        }
        return Arrays.stream(chances).max().orElse(0) >= ENOUGH * sum;
    }

    private int best(double[] weight) {
        double[] expected = new double[cost[0].length];
        ledger.expected(weight, expected);
        int best = 0;
        for (int o = 1; o < expected.length; o++) {
            best = expected[o] < expected[best] ? o : best;
        }
        return best;
    }

    private void weigh(double[] weight, int errand, double read) {
        boolean[] solved = foreseen.solved(errand);
        double most = 0;
        for (int s = 0; s < weight.length; s++) {
            double wide = width[errand][s];
            double law = solved[s]
                    ? WildLaw.logDensity((read - value[errand][s]) / wide) - Math.log(wide)
                    : WildLaw.logUnsolved() - Math.log(wide);
            weight[s] = weight[s] > 0 ? weight[s] * Math.exp(law) : 0;
            most = Math.max(most, weight[s]);
        }
        for (int s = 0; s < weight.length; s++) {
            weight[s] = weight[s] < 1e-6 * most ? 0 : weight[s] / most;
        }
    }

    /** An even sample of some hundred of the believed, on which readings are weighed. */
    private final class Sample {
        private static final int SIZE = 240;
        private final int[] place = new int[SIZE];
        private final Worth worth;

        Sample(double[] weight) {
            double all = Arrays.stream(weight).sum();
            double passed = 0;
            int taken = 0;
            for (int s = 0; s < weight.length && taken < SIZE; s++) {
                passed += weight[s];
                while (taken < SIZE && passed > (taken + 0.5) / SIZE * all) {
                    place[taken++] = s;
                }
            }
            double[][] costs = new double[SIZE][];
            int[] groups = new int[SIZE];
            int[] actions = new int[SIZE];
            double[] even = new double[SIZE];
            Arrays.fill(even, 1);
            for (int i = 0; i < SIZE; i++) {
                costs[i] = cost[place[i]];
                groups[i] = group[place[i]];
                actions[i] = action[place[i]];
            }
            worth = new Worth(costs, groups, actions, even);
        }

        double worth(int errand, Rule rule, double price) {
            double[] values = new double[SIZE];
            double[] errors = new double[SIZE];
            boolean[] solved = new boolean[SIZE];
            double[] error = foreseen.errors(errand);
            boolean[] settles = foreseen.solved(errand);
            for (int i = 0; i < SIZE; i++) {
                values[i] = value[errand][place[i]];
                errors[i] = error[place[i]];
                solved[i] = settles[place[i]];
            }
            worth.weigh(values, errors, solved);
            return rule == Rule.MONEY ? worth.saving() - price : worth.gain();
        }
    }
}
