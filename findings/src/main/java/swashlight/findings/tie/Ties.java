package swashlight.findings.tie;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import swashlight.findings.belief.Suspect;
import swashlight.findings.cause.Action;
import swashlight.findings.cause.Cause;
import swashlight.findings.cost.Prices;
import swashlight.findings.finding.CauseFinding;
import swashlight.findings.finding.Finding;
import swashlight.findings.finding.Verdict;
import swashlight.findings.next.Errand;
import swashlight.findings.next.Foreseen;
import swashlight.findings.next.Prospect;
import swashlight.findings.next.Tool;
import swashlight.findings.next.Worth;
import swashlight.findings.reading.Reading;

/**
 * Groups of causes that cannot be told apart yet, from a finding.
 *
 * <pre>
 *   evidence of a cause   B_c = P(c | read and seen) / P(c)
 *   one group             max B / min B ≤ √10
 * </pre>
 *
 * Below half a power of ten a ratio of evidences is not worth more than a bare mention (Jeffreys 1961, appendix B; from memory). Groups are
 * taken from the top: the cause of greatest evidence and all within reach of it, then the rest.
 */
public final class Ties {
    private static final double REACH = Math.sqrt(10); // 1
    private static final double POSSIBLE = 0.02; // probability below which a cause is no longer thought of, 1
    private static final double PROBABLY = 0.5; // chance to decide from which the cheapest reading is taken, 1
    /** Chance to decide below which a reading is not said to decide, 1. Own choice. */
    public static final double WORTH_NAMING = 0.1;

    private static final double NARROWS = 0.02; // rise of the likeliest work's chance from which a reading narrows, 1
    private static final double MORE = 0.1; // chance by which a reading with other tools must decide more often, 1

    private final Prospect prospect;
    private final Prices prices;
    private final Set<Tool> have;
    private final List<Reading> before;

    /** With what is foreseen of every usual reading, what time costs, which tools are at hand, and what was read before. */
    public Ties(Prospect prospect, Prices prices, Set<Tool> have, List<Reading> before) {
        this.prospect = prospect;
        this.prices = prices;
        this.have = Set.copyOf(have);
        this.before = List.copyOf(before);
    }

    /** The groups of a finding, likeliest first; none when every cause left stands alone. */
    public List<Tie> of(Finding finding) {
        List<CauseFinding> rest = finding.causes().stream()
                .filter(cause -> cause.probability() >= POSSIBLE && cause.prior() > 0)
                .sorted(Comparator.comparingDouble(Ties::evidence).reversed())
                .collect(Collectors.toCollection(ArrayList::new));
        List<Tie> ties = new ArrayList<>();
        while (!rest.isEmpty()) {
            double most = evidence(rest.get(0));
            List<CauseFinding> group = rest.stream()
                    .filter(cause -> evidence(cause) * REACH >= most)
                    .sorted(Comparator.comparingDouble(CauseFinding::probability)
                            .reversed())
                    .toList();
            rest.removeAll(group);
            if (group.size() > 1) {
                ties.add(tie(group));
            }
        }
        ties.sort(Comparator.comparingDouble(Tie::probability).reversed());
        return ties;
    }

    private static double evidence(CauseFinding cause) {
        return cause.probability() / cause.prior();
    }

    private Tie tie(List<CauseFinding> group) {
        double probability =
                group.stream().mapToDouble(CauseFinding::probability).sum();
        Map<Set<Action>, Double> works = group.stream()
                .collect(Collectors.groupingBy(
                        cause -> cause.cause().actions(), Collectors.summingDouble(CauseFinding::probability)));
        double settled =
                works.values().stream().mapToDouble(Double::doubleValue).max().orElse(0) / probability;
        boolean matters = works.size() > 1;
        if (!matters || settled >= Verdict.ENOUGH) {
            return new Tie(group, probability, matters, settled, Optional.empty(), Optional.empty());
        }
        List<Separator> all = separators(group);
        Optional<Separator> here =
                best(all.stream().filter(each -> each.lacking().isEmpty()).toList(), settled);
        double beaten = here.map(Separator::decides).orElse(0.0) + MORE;
        Optional<Separator> better = best(all, settled)
                .filter(each -> !each.lacking().isEmpty() && each.decides() > Math.max(beaten, WORTH_NAMING));
        return new Tie(group, probability, true, settled, here, better);
    }

    /** The cheapest that probably decides; else the one that most likely decides; else the one that narrows most, if any does. */
    private static Optional<Separator> best(List<Separator> all, double settled) {
        return all.stream()
                .filter(each -> each.decides() >= PROBABLY)
                .min(Comparator.comparingDouble(Separator::cost))
                .or(() -> all.stream()
                        .filter(each -> each.decides() >= WORTH_NAMING)
                        .max(Comparator.comparingDouble(Separator::decides)))
                .or(() -> all.stream()
                        .filter(each -> each.right() >= settled + NARROWS)
                        .max(Comparator.comparingDouble(Separator::right)));
    }

    private List<Separator> separators(List<CauseFinding> group) {
        Set<Cause> causes = group.stream().map(CauseFinding::cause).collect(Collectors.toSet());
        List<Suspect> suspects = prospect.belief().suspects();
        int[] members = IntStream.range(0, suspects.size())
                .filter(s -> causes.contains(suspects.get(s).cause()))
                .toArray();
        if (members.length < 2) {
            return List.of();
        }
        Map<Cause, Integer> kinds = new HashMap<>();
        Map<Set<Action>, Integer> works = new HashMap<>();
        int[] kind = new int[members.length];
        int[] work = new int[members.length];
        for (int i = 0; i < members.length; i++) {
            Cause cause = suspects.get(members[i]).cause();
            kind[i] = numberOf(cause, kinds);
            work[i] = numberOf(cause.actions(), works);
        }
        double[] even = new double[members.length];
        Arrays.fill(even, 1);
        Worth worth = new Worth(new double[members.length][1], kind, work, even);
        List<Separator> all = new ArrayList<>();
        Foreseen foreseen = prospect.foreseen();
        for (int e = 0; e < prospect.errands().size(); e++) {
            Errand errand = prospect.errands().get(e);
            worth.weigh(
                    of(foreseen.values(e), members), of(foreseen.errors(e), members), of(foreseen.solved(e), members));
            double time = errand.time(before);
            all.add(new Separator(
                    errand, time, prices.ofTime(time), worth.decides(), worth.right(), errand.lacking(have)));
        }
        return all;
    }

    private static <T> int numberOf(T thing, Map<T, Integer> numbers) {
        Integer known = numbers.get(thing);
        if (known == null) {
            known = numbers.size();
            numbers.put(thing, known);
        }
        return known;
    }

    private static double[] of(double[] all, int[] members) {
        return Arrays.stream(members).mapToDouble(member -> all[member]).toArray();
    }

    private static boolean[] of(boolean[] all, int[] members) {
        boolean[] some = new boolean[members.length];
        for (int i = 0; i < some.length; i++) {
            some[i] = all[members[i]];
        }
        return some;
    }
}
