package swashlight.findings.next;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import swashlight.findings.belief.Belief;
import swashlight.findings.cause.Cause;
import swashlight.findings.choice.Ledger;
import swashlight.findings.cost.Prices;
import swashlight.findings.reading.Reading;

/**
 * Every usual reading, what saves most first.
 *
 * @param possible those the tools at hand allow
 * @param impossible those that lack a tool
 */
public record Ranking(List<ReadingWorth> possible, List<ReadingWorth> impossible) {
    public Ranking {
        possible = List.copyOf(possible);
        impossible = List.copyOf(impossible);
    }

    /** Ranks what is foreseen by a ledger of options. */
    public static Ranking of(Prospect prospect, Ledger ledger, Prices prices, Set<Tool> have, List<Reading> before) {
        List<Errand> errands = prospect.errands();
        Foreseen foreseen = prospect.foreseen();
        Worth worth = worth(prospect.belief(), ledger);
        List<ReadingWorth> possible = new ArrayList<>();
        List<ReadingWorth> impossible = new ArrayList<>();
        for (int e = 0; e < errands.size(); e++) {
            worth.weigh(foreseen.values(e), foreseen.errors(e), foreseen.solved(e));
            Set<Tool> lacking = errands.get(e).lacking(have);
            double time = errands.get(e).time(before);
            ReadingWorth found =
                    new ReadingWorth(errands.get(e), time, prices.ofTime(time), worth.saving(), worth.gain(), lacking);
            (lacking.isEmpty() ? possible : impossible).add(found);
        }
        Comparator<ReadingWorth> best =
                Comparator.comparingDouble(ReadingWorth::net).reversed();
        possible.sort(best);
        impossible.sort(best);
        return new Ranking(possible, impossible);
    }

    /** A measure of worth over the suspects of a belief, all of the same weight. */
    static Worth worth(Belief belief, Ledger ledger) {
        int count = belief.size();
        double[][] cost = new double[count][ledger.options().size()];
        int[] group = new int[count];
        int[] action = new int[count];
        double[] weight = new double[count];
        Arrays.fill(weight, 1);
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
        return new Worth(cost, group, action, weight);
    }

    /** The reading to take; none when no possible one pays: stop testing. */
    public Optional<ReadingWorth> next() {
        return possible.stream().findFirst().filter(best -> best.net() > 0);
    }
}
