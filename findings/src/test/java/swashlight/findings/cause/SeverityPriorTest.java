package swashlight.findings.cause;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swashlight.findings.fit.NormalLaw;

/** Laws: shares and severities undo each other; the normal law's inverse is a library's. */
final class SeverityPriorTest {
    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 0.001, 0.1, 0.3, 0.5, 0.77, 0.999, 1 - 1e-6})
    void quantileIsALibrarys(double share) {
        double expected = new NormalDistribution(0, 1).inverseCumulativeProbability(share);
        assertThat(NormalLaw.quantile(share)).isCloseTo(expected, within(1e-9 * Math.max(1, Math.abs(expected))));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.1, 0.3, 0.5, 0.77, 0.999})
    void sharesAndSeveritiesUndoEachOther(double share) {
        SeverityPrior prior = new SeverityPrior.Spread(2e-6, 1.5e-5, 6e-5);
        assertThat(prior.below(prior.severity(share))).isCloseTo(share, within(1e-10));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1})
    void endsAreTheEnds(double share) {
        SeverityPrior prior = new SeverityPrior.Spread(2e-6, 1.5e-5, 6e-5);
        assertThat(prior.severity(share)).isEqualTo(share == 0 ? 2e-6 : 6e-5);
    }
}
