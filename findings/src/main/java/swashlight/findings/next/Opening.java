package swashlight.findings.next;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import swashlight.drive.description.Parameters;
import swashlight.findings.belief.Belief;
import swashlight.findings.cause.Cause;
import swashlight.findings.choice.Ledger;
import swashlight.findings.cost.Job;
import swashlight.findings.cost.Prices;
import swashlight.findings.wear.WearPart;

/**
 * What opening the drive is worth, for one measured part each, and for all that is seen inside. Work inside that follows no longer has to open it;
 * an exchange gains nothing. Seen inside: every fault there, by its kind, and nothing of those outside (own assumption).
 */
final class Opening {
    /** Stable name of opening it and looking at everything. */
    static final String EVERYTHING = "open-drive";

    private static final String ONE = "open-"; // and the part
    private static final String WORDS = "take the drive out, open it, and look at and measure everything in it";
    private static final double OPENING = 2.25 * 3600; // s, out, open, shut, in, purged (common practice, no source)
    private static final double MEASURING = 10 * 60; // s for one part
    private static final double ALL_MEASURED = 60 * 60; // s for everything
    private static final Set<Job> INSIDE = EnumSet.of(Job.RENEW_MAKE_UP, Job.REPAIR_GEARS, Job.RENEW_RUNNING_SET);

    private final Belief belief;
    private final Prices prices;
    private final double[][] cost; // by suspect, then option
    private final double[][] opened;

    Opening(Belief belief, Ledger ledger, Prices prices) {
        this.belief = belief;
        this.prices = prices;
        cost = costs(ledger);
        opened = new double[cost.length][];
        double[] spared = new double[ledger.options().size()];
        for (int o = 0; o < spared.length; o++) {
            spared[o] = ledger.options().get(o).jobs().stream()
                    .filter(INSIDE::contains)
                    .mapToDouble(job -> prices.ofTime(
                            Math.min(opening(), prices.jobs().get(job).time())))
                    .max()
                    .orElse(0);
        }
        for (int s = 0; s < cost.length; s++) {
            opened[s] = cost[s].clone();
            for (int o = 0; o < spared.length; o++) {
                opened[s][o] -= spared[o];
            }
        }
    }

    /** The ledger's costs by suspect, then option, 1 (currency). */
    static double[][] costs(Ledger ledger) {
        double[][] cost = new double[ledger.suspects()][ledger.options().size()];
        for (int s = 0; s < cost.length; s++) {
            for (int o = 0; o < cost[s].length; o++) {
                cost[s][o] = ledger.cost(s, o);
            }
        }
        return cost;
    }

    private double opening() {
        return prices.readings().getOrDefault(EVERYTHING, OPENING);
    }

    /** Everything first, then each part by itself. */
    List<StepWorth> all() {
        List<StepWorth> all = new ArrayList<>();
        all.add(everything());
        double least = least(cost) - least(opened);
        Worth worth = worth();
        for (WearPart part : WearPart.all()) {
            double[] value = new double[belief.size()];
            double[] error = new double[belief.size()];
            boolean[] known = new boolean[belief.size()];
            Arrays.fill(known, true);
            double[] sound = new double[Parameters.count()];
            double[] vector = new double[Parameters.count()];
            for (int s = 0; s < value.length; s++) {
                belief.sound(s, sound);
                belief.asItStands(s, vector);
                value[s] = vector[part.moved().index()];
                error[s] = part.known(value[s], sound[part.moved().index()]);
            }
            worth.weigh(value, error, known);
            all.add(step(ONE + part.key(), Optional.of(part), MEASURING, least + worth.saving(), worth.gain()));
        }
        return all;
    }

    private Worth worth() {
        int[] group = new int[belief.size()];
        double[] weight = new double[group.length];
        Arrays.fill(weight, 1);
        Map<Cause, Integer> groups = new HashMap<>();
        for (int s = 0; s < group.length; s++) {
            Integer next = groups.size();
            Integer known = groups.putIfAbsent(belief.suspects().get(s).cause(), next);
            group[s] = known == null ? next : known;
        }
        return new Worth(opened, group, Sorted.actions(belief), weight);
    }

    private StepWorth everything() {
        Map<Set<String>, double[]> kinds = new LinkedHashMap<>();
        for (int s = 0; s < belief.size(); s++) {
            Cause cause = belief.suspects().get(s).cause();
            Set<String> inside = new TreeSet<>();
            cause.parts().stream()
                    .filter(Job::inside)
                    .forEach(part -> inside.add(part.fault().key()));
            kinds.computeIfAbsent(inside, each -> new double[belief.size()])[s] = 1;
        }
        Sorted sorted = new Sorted(Sorted.actions(belief), cost, opened);
        sorted.begin();
        kinds.values().forEach(sorted::told);
        return step(EVERYTHING, Optional.empty(), ALL_MEASURED, sorted.saving(), sorted.gain());
    }

    private StepWorth step(String key, Optional<WearPart> part, double measuring, double saving, double gain) {
        double time = opening() + measuring;
        double oil = prices.jobs().get(Job.CHANGE_OIL).parts();
        String words = part.map(one -> "take the drive out, open it, and measure " + one.key())
                .orElse(WORDS);
        return new StepWorth(key, words, List.of(), part, true, time, prices.ofTime(time) + oil, saving, gain);
    }

    private static double least(double[][] costs) {
        double[] mixed = new double[costs[0].length];
        for (double[] one : costs) {
            for (int o = 0; o < mixed.length; o++) {
                mixed[o] += one[o] / costs.length;
            }
        }
        return Arrays.stream(mixed).min().orElse(0);
    }
}
