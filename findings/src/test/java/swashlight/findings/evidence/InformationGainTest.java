package swashlight.findings.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import swashlight.checks.CheckBook;
import swashlight.checks.CheckRow;
import swashlight.findings.cause.SeverityPrior;
import swashlight.findings.expect.Forecast;

/**
 * Checks: what a reading y = xθ + e tells about a normal θ, before it is taken. With normal e that is ½ ln(1 + x²σ_θ²/σ²) nat (Lindley 1956, from
 * memory); with now and then a wild e it is h(y) − h(e), the entropies of two mixtures of normal laws, by quadrature.
 */
public final class InformationGainTest {
    private static final int MACHINES = 600;

    static Stream<CheckRow> rows() {
        return CheckBook.read("statistics").answered().stream()
                .filter(row -> row.family().equals("information-gain"));
    }

    /** The straight line that aims shrinks a normal law by what the published gain says. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void theLineLearnsAsPublished(CheckRow row) {
        LinearView view = new LinearView(1, 1);
        view.used[0] = true;
        view.variance[0] = 1;
        view.residual[0] = 0;
        view.jacobian[0][0] = row.si("x") * row.si("prior_sd") / row.si("sd");
        view.prepare();
        double[] mean = {0};
        view.condition(0, mean, new double[1]);
        double[] moved = {1};
        view.condition(0, moved, new double[1]);
        row.assertAgrees(-0.5 * Math.log(moved[0] - mean[0]));
    }

    /** The quadrature used below is right where the closed form is known. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void withoutWildReadingsTheQuadratureIsThePublishedGain(CheckRow row) {
        row.assertAgrees(gain(row.si("x") * row.si("prior_sd") / row.si("sd"), 0));
    }

    /**
     * Mean of ln p(y | θ) − ln Z(y) over machines drawn from the model, Z by the sampler that weighs causes: the gain, within three standard errors of
     * that mean and what the sampler states of its own. Seed 5, fixed.
     */
    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void theSamplersEvidenceTellsTheGain(CheckRow row) {
        double steepness = row.si("x") * row.si("prior_sd") / row.si("sd");
        double exact = gain(steepness, WildLaw.SHARE);
        Random chance = new Random(5);
        double sum = 0;
        double square = 0;
        double own = 0;
        for (int i = 0; i < MACHINES; i++) {
            double theta = chance.nextGaussian();
            double noise = chance.nextGaussian() * (chance.nextDouble() < WildLaw.SHARE ? WildLaw.WIDTH : 1);
            Weighed weighed = weighed(steepness, steepness * theta + noise, i);
            double told = WildLaw.logDensity(noise) - weighed.logEvidence();
            sum += told;
            square += told * told;
            own += weighed.relativeError() * weighed.relativeError();
        }
        double mean = sum / MACHINES;
        double error = Math.sqrt((square / MACHINES - mean * mean) / MACHINES);
        assertThat(mean).isCloseTo(exact, within(3 * error));
        assertThat(error).isLessThan(0.1 * exact);
        assertThat(Math.sqrt(own / MACHINES)).isLessThan(0.05);
    }

    /** A gain a tenth too large or too small would be seen. */
    @Test
    void wildReadingsCostInformation() {
        assertThat(gain(6, WildLaw.SHARE)).isLessThan(0.97 * gain(6, 0)).isGreaterThan(0.85 * gain(6, 0));
        assertThat(gain(0, WildLaw.SHARE)).isCloseTo(0, within(1e-9));
    }

    /** h(y) − h(e) of y = s θ + e with standard normal θ, e of unit error, wild with a chance (1); nat. */
    public static double gain(double steepness, double wild) {
        return entropy(steepness * steepness, wild) - entropy(0, wild);
    }

    private static double entropy(double added, double wild) {
        double tame = Math.sqrt(added + 1);
        double wide = Math.sqrt(added + WildLaw.WIDTH * WildLaw.WIDTH);
        double step = 0.002;
        double end = 9 * (wild > 0 ? wide : tame);
        double sum = 0;
        for (double y = -end; y <= end; y += step) {
            double p = (1 - wild) * normal(y, tame) + (wild > 0 ? wild * normal(y, wide) : 0);
            sum -= p > 0 ? step * p * Math.log(p) : 0;
        }
        return sum;
    }

    private static double normal(double y, double spread) {
        return Math.exp(-0.5 * y * y / (spread * spread)) / (spread * Math.sqrt(2 * Math.PI));
    }

    private static Weighed weighed(double steepness, double measured, long seed) {
        Target target = new Target(new double[] {measured}, new double[] {1});
        CommonDraws draws = new CommonDraws(seed, 16, LineDraw.width(1, 2));
        CauseSampler sampler = new CauseSampler(
                new Straight(steepness), target, List.of(new SeverityPrior.Whole(1)), draws, SamplerOptions.usual());
        sampler.begin();
        return sampler.weigh(48);
    }

    /** y = s z. */
    private static final class Straight implements Machine {
        private final double steepness;

        Straight(double steepness) {
            this.steepness = steepness;
        }

        @Override
        public int readings() {
            return 1;
        }

        @Override
        public int nuisances() {
            return 1;
        }

        @Override
        public void predict(double[] severity, double[] z, Forecast forecast) {
            forecast.put(0, steepness * z[0]);
        }
    }
}
