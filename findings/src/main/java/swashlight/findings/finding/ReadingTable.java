package swashlight.findings.finding;

import swashlight.findings.evidence.CauseEvidence;
import swashlight.findings.evidence.Weighed;
import swashlight.findings.evidence.WildLaw;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Expected;

/**
 * What a reading should be under a cause, judged by the others: the machines drawn for the cause are weighed anew without this reading's own
 * likelihood. Weights are held to √N times their mean, so that no single machine speaks alone (after Ionides 2008, from memory).
 */
final class ReadingTable {
    private ReadingTable() {}

    static Prediction predict(CauseEvidence cause, Comparison comparison, int reading) {
        Weighed weighed = cause.weighed();
        double[] with = weighed.shares();
        double[] without = without(weighed, with, comparison, reading);
        double sum = 0;
        double mean = 0;
        double square = 0;
        double wild = 0;
        double all = 0;
        for (int m = 0; m < with.length; m++) {
            all += with[m];
            double off = (comparison.value() - weighed.expected(m, reading)) / comparison.error();
            wild += with[m] * (weighed.solved(m, reading) ? WildLaw.chanceWild(off) : 1);
            if (weighed.solved(m, reading)) {
                double value = weighed.expected(m, reading);
                sum += without[m];
                mean += without[m] * value;
                square += without[m] * value * value;
            }
        }
        if (sum <= 0) {
            return new Prediction(
                    cause.cause().key(), new Expected.NotSolved("no settled state under this cause"), 0, 0, wild / all);
        }
        mean /= sum;
        double spread = Math.sqrt(Math.max(0, square / sum - mean * mean));
        double both = Math.sqrt(spread * spread + comparison.error() * comparison.error());
        return new Prediction(
                cause.cause().key(),
                comparison.told(mean),
                comparison.toldSpread(mean, spread),
                (comparison.value() - mean) / both,
                wild / all);
    }

    private static double[] without(Weighed weighed, double[] with, Comparison comparison, int reading) {
        double[] log = new double[with.length];
        double highest = Double.NEGATIVE_INFINITY;
        for (int m = 0; m < log.length; m++) {
            double off = (comparison.value() - weighed.expected(m, reading)) / comparison.error();
            double own = weighed.solved(m, reading) ? WildLaw.logDensity(off) : WildLaw.logUnsolved();
            log[m] = with[m] > 0 ? Math.log(with[m]) - own : Double.NEGATIVE_INFINITY;
            highest = Math.max(highest, log[m]);
        }
        double sum = 0;
        for (int m = 0; m < log.length; m++) {
            log[m] = Math.exp(log[m] - highest);
            sum += log[m];
        }
        double most = sum / log.length * Math.sqrt(log.length);
        for (int m = 0; m < log.length; m++) {
            log[m] = Math.min(log[m], most);
        }
        return log;
    }
}
