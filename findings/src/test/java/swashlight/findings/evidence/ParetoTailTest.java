package swashlight.findings.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Smoothed weights against closed forms: a tail whose law is known, and an integral that is 1. Seeds fixed. */
final class ParetoTailTest {
    /** Inverse of the generalised Pareto law (closed form); shape within 4 standard errors (1 + κ)/√M, Zhang and Stephens 2009 (from memory). */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.5, 0.9})
    void findsTheShapeOfAKnownTail(double shape) {
        RandomGenerator chance = new Well19937c(5);
        double[] log = new double[10_000];
        for (int i = 0; i < log.length; i++) {
            log[i] = Math.log(1 + (Math.pow(1 - chance.nextDouble(), -shape) - 1) / shape);
        }
        double found = ParetoTail.smooth(log);
        assertThat(found).isCloseTo(shape, within(4 * (1 + shape) / Math.sqrt(300) + 0.02));
    }

    /** E w = 1: normal machines of width 1 drawn with width 0.6, whose weights have no variance (closed form). */
    @Test
    void bringsAnIntegralNearer() {
        RandomGenerator chance = new Well19937c(6);
        double raw = 0;
        double smooth = 0;
        int repeats = 400;
        for (int repeat = 0; repeat < repeats; repeat++) {
            double[] log = new double[400];
            for (int i = 0; i < log.length; i++) {
                double x = 0.6 * chance.nextGaussian();
                log[i] = Math.log(0.6) - 0.5 * x * x + 0.5 * x * x / 0.36;
            }
            raw += square(mean(log) - 1) / repeats;
            ParetoTail.smooth(log);
            smooth += square(mean(log) - 1) / repeats;
        }
        assertThat(Math.sqrt(smooth)).isLessThan(0.8 * Math.sqrt(raw));
    }

    @Test
    void keepsOrderAndNeverExceedsTheLargest() {
        RandomGenerator chance = new Well19937c(7);
        double[] log = new double[500];
        for (int i = 0; i < log.length; i++) {
            log[i] = 3 * chance.nextGaussian();
        }
        double[] before = log.clone();
        ParetoTail.smooth(log);
        double most = Arrays.stream(before).max().orElseThrow();
        for (int i = 0; i < log.length; i++) {
            assertThat(log[i]).isLessThanOrEqualTo(most);
            for (int j = 0; j < log.length; j++) {
                assertThat(before[i] < before[j] && log[i] > log[j]).isFalse();
            }
        }
    }

    @Test
    void leavesFewOrEqualWeightsAlone() {
        double[] few = {0, 1, 5};
        ParetoTail.smooth(few);
        assertThat(few).containsExactly(0, 1, 5);
        double[] equal = new double[100];
        ParetoTail.smooth(equal);
        assertThat(equal).containsOnly(0);
        double[] none = new double[100];
        Arrays.fill(none, Double.NEGATIVE_INFINITY);
        ParetoTail.smooth(none);
        assertThat(none).containsOnly(Double.NEGATIVE_INFINITY);
    }

    private static double mean(double[] log) {
        return Arrays.stream(log).map(Math::exp).average().orElseThrow();
    }

    private static double square(double x) {
        return x * x;
    }
}
