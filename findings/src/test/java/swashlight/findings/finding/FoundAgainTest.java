package swashlight.findings.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Causes;
import swashlight.findings.evidence.CauseEvidence;
import swashlight.findings.evidence.Inference;
import swashlight.findings.evidence.InferenceOptions;
import swashlight.findings.evidence.Posterior;
import swashlight.findings.evidence.Weighed;
import swashlight.findings.expect.Comparison;
import swashlight.findings.reading.MachineCase;

/**
 * Laws: machines drawn from the model are found again as often as the probabilities say, and their severities fall evenly among those drawn.
 * Source of the method: Talts et al. 2018, arXiv 1804.06788. Seed 11, fixed.
 */
final class FoundAgainTest {
    private static final int MACHINES = 150;
    private static final List<Double> RANKS = new ArrayList<>();
    private static final List<Double> SURPRISE =
            new ArrayList<>(); // −ln p of the true action, less what was expected, nat
    private static final List<Double> SURPRISE_VARIANCE = new ArrayList<>(); // nat²
    private static final List<Double> OF_BEST_ACTION = new ArrayList<>();
    private static final List<Boolean> RIGHT = new ArrayList<>();

    @BeforeAll
    static void measureMachines() {
        Random chance = new Random(11);
        for (int machine = 0; RIGHT.size() < MACHINES; machine++) {
            Cause cause = drawn(chance);
            double[] severity = cause.parts().stream()
                    .mapToDouble(part -> part.severity().severity(chance.nextDouble()))
                    .toArray();
            Optional<MachineCase> measured = Workshop.machine(cause, severity, chance);
            if (measured.isPresent()) {
                note(weigh(measured.get(), machine), cause, severity);
            }
        }
    }

    private static Posterior weigh(MachineCase measured, long seed) {
        List<Comparison> readings =
                measured.readings().stream().map(Comparison::of).toList();
        return new Inference(InferenceOptions.quick(seed))
                .weigh(measured.drive(), readings, measured.seen(), measured.notSeen());
    }

    private static Cause drawn(Random chance) {
        double all = Causes.all().stream().mapToDouble(Cause::odds).sum();
        double wanted = all * chance.nextDouble();
        for (Cause cause : Causes.all()) {
            wanted -= cause.odds();
            if (wanted <= 0) {
                return cause;
            }
        }
        return Causes.all().get(0);
    }

    private static void note(Posterior posterior, Cause cause, double[] severity) {
        double[] actions = new double[swashlight.findings.cause.Action.values().length];
        for (int h = 0; h < posterior.causes().size(); h++) {
            CauseEvidence evidence = posterior.causes().get(h);
            actions[evidence.cause().action().ordinal()] += posterior.probability(h);
            for (int part = 0; part < cause.parts().size() && evidence.cause().equals(cause); part++) {
                if (!cause.parts().get(part).severity().inSteps()) {
                    RANKS.add(below(evidence.weighed(), part, severity[part]));
                }
            }
        }
        int best = 0;
        for (int a = 1; a < actions.length; a++) {
            best = actions[a] > actions[best] ? a : best;
        }
        OF_BEST_ACTION.add(actions[best]);
        double entropy = 0;
        double square = 0;
        for (double p : actions) {
            entropy -= p > 0 ? p * Math.log(p) : 0;
            square += p > 0 ? p * Math.log(p) * Math.log(p) : 0;
        }
        SURPRISE.add(-Math.log(actions[cause.action().ordinal()]) - entropy);
        SURPRISE_VARIANCE.add(square - entropy * entropy);
        RIGHT.add(best == cause.action().ordinal());
    }

    private static double below(Weighed weighed, int part, double severity) {
        double sum = 0;
        for (int m = 0; m < weighed.size(); m++) {
            sum += weighed.severity(m)[part] < severity ? weighed.share(m) : 0;
        }
        return sum;
    }

    /** Of machines whose best action has probability p, a share p is right; binomial scatter allowed for. */
    @Test
    void theLikeliestActionIsRightAsOftenAsItSays() {
        double right = RIGHT.stream().filter(Boolean::booleanValue).count();
        double said = OF_BEST_ACTION.stream().mapToDouble(Double::doubleValue).sum();
        double scatter =
                Math.sqrt(OF_BEST_ACTION.stream().mapToDouble(p -> p * (1 - p)).sum());
        assertThat(right).isCloseTo(said, within(3 * scatter));
    }

    /** The truth surprises no more than the probabilities promise: Σ −ln p of it against Σ entropy. */
    @Test
    void theTruthSurprisesAsMuchAsItShould() {
        double more = SURPRISE.stream().mapToDouble(Double::doubleValue).sum();
        double variance =
                SURPRISE_VARIANCE.stream().mapToDouble(Double::doubleValue).sum();
        assertThat(more).isCloseTo(0, within(3 * Math.sqrt(variance)));
    }

    @Test
    void severitiesFallEvenly() {
        int[] bins = new int[6];
        for (double rank : RANKS) {
            bins[(int) Math.min(bins.length - 1, rank * bins.length)]++;
        }
        double expected = RANKS.size() / (double) bins.length;
        double square = 0;
        for (int bin : bins) {
            square += (bin - expected) * (bin - expected) / expected;
        }
        double chance = 1 - new ChiSquaredDistribution(bins.length - 1).cumulativeProbability(square);
        assertThat(RANKS).hasSizeGreaterThan(100);
        assertThat(chance).as("χ² %s over bins", square).isGreaterThan(0.005);
    }
}
