package swashlight.findings.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import swashlight.findings.cause.Action;
import swashlight.findings.cause.Cause;
import swashlight.findings.choice.Hill;
import swashlight.findings.cost.Prices;
import swashlight.findings.evidence.Weighed;
import swashlight.findings.finding.ActionFinding;
import swashlight.findings.finding.Finding;
import swashlight.findings.finding.Found;
import swashlight.findings.finding.WorstFit;

/**
 * How one finding stands to the truth.
 *
 * @param number of the machine
 * @param truth key of its cause
 * @param chanceOfTruth probability the finding gave that cause, 1
 * @param readings how many there were
 * @param chances probability that each action is needed, 1
 * @param needed the actions that are
 * @param ranks share of the drawn severities below the true one, for each graded fault of the cause, 1
 * @param effective number of machines drawn for the ranks, 1
 * @param slips wild readings, where they were kept
 * @param bills what it costs by whoever decides, where that was worked out
 */
public record StudyRow(
        int number,
        String truth,
        double chanceOfTruth,
        int readings,
        Map<Action, Double> chances,
        List<Action> needed,
        List<Double> ranks,
        double effective,
        Optional<Slips> slips,
        Optional<Bills> bills) {
    public StudyRow {
        chances = Map.copyOf(chances);
        needed = List.copyOf(needed);
        ranks = List.copyOf(ranks);
    }

    /**
     * The row of a machine, its costs at invented prices on the usual hill.
     *
     * @param found what was found and is believed
     * @param ofTruth machines of the true cause alone, many of them
     */
    public static StudyRow of(int number, Simulated truth, Found found, Weighed ofTruth) {
        Map<Action, Double> chances = new EnumMap<>(Action.class);
        for (ActionFinding action : found.finding().actions()) {
            chances.put(action.action(), action.probability());
        }
        Bills bills = Bills.of(truth, found.belief(), likeliest(chances), Prices.invented(), Hill.usual());
        return new StudyRow(
                number,
                truth.cause().key(),
                found.finding().probability(truth.cause().key()),
                truth.machine().readings().size(),
                chances,
                List.copyOf(truth.cause().actions()),
                ranks(number, truth, ofTruth),
                ofTruth.effectiveSize(),
                Optional.of(new Slips(truth.wild(), named(truth, found.finding()))),
                Optional.of(bills));
    }

    private static OptionalInt named(Simulated truth, Finding finding) {
        return finding.worst()
                .filter(WorstFit::distrust)
                .map(worst -> OptionalInt.of(truth.machine().readings().indexOf(worst.reading())))
                .orElse(OptionalInt.empty());
    }

    /**
     * Where the true severities lie among those of machines drawn for the cause, 1: even for honest draws, however few.
     *
     * <pre>
     *   rank = (L s + u)/(L + 1)
     *
     *   s   share of the machines' weight below the truth   1
     *   L   effective number of the machines                1
     *   u   an even number between 0 and 1                  1
     * </pre>
     *
     * Source: Talts et al. 2018, whose rank among L draws is one of L + 1 places; u spreads it over its place.
     */
    static List<Double> ranks(int number, Simulated truth, Weighed weighed) {
        Random even = new Random(number);
        Cause cause = truth.cause();
        double[] shares = weighed.shares();
        double effective = weighed.effectiveSize();
        List<Double> ranks = new ArrayList<>();
        for (int part = 0; part < cause.parts().size(); part++) {
            if (!cause.parts().get(part).severity().inSteps()) {
                double below = 0;
                for (int m = 0; m < shares.length; m++) {
                    below += weighed.severity(m)[part] < truth.severity()[part] ? shares[m] : 0;
                }
                ranks.add((effective * Math.min(1, below) + even.nextDouble()) / (effective + 1));
            }
        }
        return ranks;
    }

    /** The likeliest action. */
    public Action likeliest() {
        return likeliest(chances);
    }

    private static Action likeliest(Map<Action, Double> chances) {
        Action best = Action.LEAVE_ALONE;
        for (Action action : Action.values()) {
            best = chances.get(action) > chances.get(best) ? action : best;
        }
        return best;
    }

    /** Whether the likeliest action is one of those needed. */
    public boolean right() {
        return needed.contains(likeliest());
    }
}
