package swashlight.findings.finding;

import java.util.List;
import java.util.Optional;
import swashlight.findings.evidence.Posterior;
import swashlight.findings.evidence.Weighed;
import swashlight.findings.evidence.WildLaw;
import swashlight.findings.expect.Comparison;

/** Which readings to doubt, over all causes by their probability. */
final class Doubt {
    private static final double MORE_LIKELY_THAN_NOT = 0.5; // 1
    private static final double MATTERS = 1e-3; // probability of a cause, 1
    private static final double TOO_MANY = 1.5; // wild readings expected, whatever their number
    private static final double TOO_LARGE_SHARE = 1.0 / 3; // of the readings

    private Doubt() {}

    static Optional<WorstFit> worst(List<ReadingFinding> table, Posterior posterior, List<Comparison> readings) {
        int worst = -1;
        for (int i = 0; i < table.size(); i++) {
            if (worst < 0 || off(table.get(i)) > off(table.get(worst))) {
                worst = i;
            }
        }
        if (worst < 0) {
            return Optional.empty();
        }
        boolean distrust = chanceWild(posterior, readings.get(worst), worst) > MORE_LIKELY_THAN_NOT;
        ReadingFinding found = table.get(worst);
        return Optional.of(new WorstFit(found.reading(), found.predictions().get(0), distrust));
    }

    private static double off(ReadingFinding reading) {
        return Math.abs(reading.predictions().get(0).standardised());
    }

    /** True when so many readings would have to be wild that no listed cause explains the case. */
    static boolean contradiction(Posterior posterior, List<Comparison> readings) {
        double wild = 0;
        for (int i = 0; i < readings.size(); i++) {
            wild += chanceWild(posterior, readings.get(i), i);
        }
        return wild > Math.max(TOO_MANY, TOO_LARGE_SHARE * readings.size());
    }

    private static double chanceWild(Posterior posterior, Comparison comparison, int reading) {
        double sum = 0;
        double all = 0;
        for (int h = 0; h < posterior.causes().size(); h++) {
            double probability = posterior.probability(h);
            if (probability > MATTERS) {
                Weighed weighed = posterior.causes().get(h).weighed();
                double[] shares = weighed.shares();
                all += probability;
                for (int m = 0; m < shares.length; m++) {
                    double off = (comparison.value() - weighed.expected(m, reading)) / comparison.error();
                    sum += probability * shares[m] * (weighed.solved(m, reading) ? WildLaw.chanceWild(off) : 1);
                }
            }
        }
        return all > 0 ? sum / all : 0;
    }
}
