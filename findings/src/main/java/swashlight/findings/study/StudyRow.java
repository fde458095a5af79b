package swashlight.findings.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import swashlight.findings.cause.Action;
import swashlight.findings.cause.Cause;
import swashlight.findings.evidence.CauseEvidence;
import swashlight.findings.evidence.Posterior;
import swashlight.findings.evidence.Weighed;

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
 */
public record StudyRow(
        int number,
        String truth,
        double chanceOfTruth,
        int readings,
        Map<Action, Double> chances,
        List<Action> needed,
        List<Double> ranks) {
    public StudyRow {
        chances = Map.copyOf(chances);
        needed = List.copyOf(needed);
        ranks = List.copyOf(ranks);
    }

    /**
     * The row of a machine.
     *
     * @param posterior of all causes
     * @param ofTruth machines of the true cause alone, many of them
     */
    public static StudyRow of(int number, Simulated truth, Posterior posterior, Weighed ofTruth) {
        Map<Action, Double> chances = new EnumMap<>(Action.class);
        for (Action action : Action.values()) {
            chances.put(action, 0.0);
        }
        double chanceOfTruth = 0;
        for (int h = 0; h < posterior.causes().size(); h++) {
            CauseEvidence evidence = posterior.causes().get(h);
            double probability = posterior.probability(h);
            for (Action action : evidence.cause().actions()) {
                chances.merge(action, probability, Double::sum);
            }
            if (evidence.cause().equals(truth.cause())) {
                chanceOfTruth = probability;
            }
        }
        return new StudyRow(
                number,
                truth.cause().key(),
                chanceOfTruth,
                truth.machine().readings().size(),
                chances,
                List.copyOf(truth.cause().actions()),
                ranks(truth, ofTruth));
    }

    /** Where the true severities lie among those of machines drawn for the cause, 1. */
    static List<Double> ranks(Simulated truth, Weighed weighed) {
        Cause cause = truth.cause();
        double[] shares = weighed.shares();
        List<Double> ranks = new ArrayList<>();
        for (int part = 0; part < cause.parts().size(); part++) {
            if (!cause.parts().get(part).severity().inSteps()) {
                double below = 0;
                for (int m = 0; m < shares.length; m++) {
                    below += weighed.severity(m)[part] < truth.severity()[part] ? shares[m] : 0;
                }
                ranks.add(Math.min(1, below));
            }
        }
        return ranks;
    }

    /** The likeliest action. */
    public Action likeliest() {
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
