package swashlight.findings.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Peers: Hipparchus 4.0.3; printed values: common tables of t. */
final class LawsOfChanceTest {
    @ParameterizedTest
    @ValueSource(doubles = {-8, -4.2, -3, -2.999, -1.3, -1e-9, 0, 0.4, 1.96, 2.9999, 3.0001, 5, 7.5})
    void shareBelowAgreesWithAPeer(double z) {
        double theirs = new NormalDistribution().cumulativeProbability(z);
        assertThat(NormalLaw.below(z)).isCloseTo(theirs, offset(1e-12 * Math.min(1, theirs * 100)));
        assertThat(NormalLaw.logBelow(z)).isCloseTo(Math.log(theirs), offset(1e-9));
    }

    @Test
    void theFarTailStaysFinite() {
        // ln Φ(−40) = −804.608442…: Abramowitz and Stegun 26.2.12 with six terms, recomputed.
        assertThat(NormalLaw.logBelow(-40)).isCloseTo(-804.608442013754, offset(1e-9));
        assertThat(NormalLaw.logBelow(-1e5)).isLessThan(-4.9e9).isGreaterThan(-5.1e9);
    }

    @ParameterizedTest
    @CsvSource({"0.95,1,12.706", "0.95,4,2.776", "0.95,10,2.228", "0.99,5,4.032", "0.90,30,1.697", "0.95,1e6,1.960"})
    void factorsArePrintedOnes(double confidence, double freedom, double printed) {
        assertThat(StudentLaw.factor(confidence, freedom)).isCloseTo(printed, offset(0.0005));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.7, 2.5, 4, 17.3, 240})
    void factorsAgreeWithAPeer(double freedom) {
        double theirs = new TDistribution(freedom).inverseCumulativeProbability(0.975);
        assertThat(StudentLaw.factor(0.95, freedom)).isCloseTo(theirs, offset(1e-7 * theirs));
    }
}
