package swashlight.findings.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import swashlight.checks.CheckBook;
import swashlight.checks.CheckRow;
import swashlight.findings.cause.SeverityPrior;
import swashlight.findings.expect.Forecast;

/** Checks: evidence and posteriors where algebra or plain quadrature gives them too. */
final class ClosedFormTest {
    private static final double[] MEASURED = {1.2, -0.4, 2.1};
    private static final double[] ERROR = {0.1, 0.2, 0.15};
    private static final double[][] SLOPES = {{0.8, 0.1, 0}, {0.3, -0.6, 0.2}, {1.1, 0.4, 0.5}};

    /** All eight sets of wild readings, each a normal law, by a library's matrices. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void evidenceOfALinearMachineIsThatOfAlgebra(long seed) {
        CauseSampler sampler = sampler(new Linear(), new SeverityPrior.Whole(1), MEASURED, ERROR, seed);
        Weighed weighed = sampler.weigh(200);
        assertThat(weighed.logEvidence()).isCloseTo(exactEvidence(), within(4 * weighed.relativeError() + 1e-9));
        assertThat(weighed.relativeError()).isLessThan(0.03);
        assertThat(weighed.effectiveSize()).isGreaterThan(0.3 * weighed.size());
    }

    private static double exactEvidence() {
        double sum = 0;
        double scale = 1;
        for (double error : ERROR) {
            scale *= error;
        }
        for (int wild = 0; wild < 8; wild++) {
            double share = 1;
            double[][] noise = new double[3][3];
            for (int i = 0; i < 3; i++) {
                boolean loose = (wild >> i & 1) == 1;
                share *= loose ? WildLaw.SHARE : 1 - WildLaw.SHARE;
                noise[i][i] = ERROR[i] * ERROR[i] * (loose ? WildLaw.WIDTH * WildLaw.WIDTH : 1);
            }
            RealMatrix slopes = new Array2DRowRealMatrix(SLOPES);
            LUDecomposition law =
                    new LUDecomposition(slopes.multiply(slopes.transpose()).add(new Array2DRowRealMatrix(noise)));
            RealVector off = new ArrayRealVector(MEASURED);
            double square = off.dotProduct(law.getSolver().solve(off));
            sum += share * Math.exp(-0.5 * square) / Math.sqrt(Math.pow(2 * Math.PI, 3) * law.getDeterminant());
        }
        return Math.log(sum * scale);
    }

    /** Severity sharp as a needle, bent, and mixed with an unknown: against quadrature on a fine grid. */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.02, 0.002})
    void severityIsWeighedAsByQuadrature(double error) {
        SeverityPrior prior = new SeverityPrior.Spread(0.1, 1, 10);
        double[] measured = {2.3, 1.6};
        double[] errors = {error, 0.3};
        Weighed weighed = sampler(new Bent(), prior, measured, errors, 1).weigh(200);
        Quadrature exact = new Quadrature(prior, measured, errors);
        assertThat(weighed.logEvidence()).isCloseTo(exact.logEvidence, within(4 * weighed.relativeError() + 0.002));
        assertThat(weighed.relativeError()).isLessThan(0.05);
        for (double share : new double[] {0.05, 0.5, 0.95}) {
            double below = exact.below(weighed.severityBelow(0, share));
            double chance = Math.sqrt(share * (1 - share) / weighed.effectiveSize());
            assertThat(below).isCloseTo(share, within(4 * chance + 0.01));
        }
    }

    static Stream<CheckRow> rows() {
        return CheckBook.read("statistics").answered().stream()
                .filter(row -> row.family().equals("normal-normal"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void conditionsANormalLawAsPublished(CheckRow row) {
        double prior = row.si("prior_sd");
        double[] y = {row.si("y1"), row.si("y2"), row.si("y3")};
        LinearView view = new LinearView(3, 1);
        for (int i = 0; i < 3; i++) {
            view.used[i] = true;
            view.variance[i] = 1;
            view.residual[i] = y[i] / row.si("sd");
            view.jacobian[i][0] = prior / row.si("sd");
        }
        view.prepare();
        double[] mean = {0};
        view.condition(0, mean, new double[3]);
        double[] moved = {1};
        view.condition(0, moved, new double[3]);
        double variance = moved[0] - mean[0]; // of the prior's, 1
        row.assertAgrees(row.id().endsWith("sd") ? prior * Math.sqrt(variance) : prior * mean[0]);
    }

    @Test
    void nothingMeasuredLeavesThePrior() {
        Weighed weighed = sampler(new Nothing(), new SeverityPrior.Spread(0.1, 1, 10), new double[0], new double[0], 1)
                .weigh(100);
        assertThat(weighed.logEvidence()).isCloseTo(0, within(1e-12));
        assertThat(weighed.effectiveSize()).isCloseTo(weighed.size(), within(1e-6));
        assertThat(weighed.severityBelow(0, 0.5)).isCloseTo(1, within(0.15));
    }

    private static CauseSampler sampler(
            Machine machine, SeverityPrior prior, double[] measured, double[] error, long seed) {
        Target target = new Target(measured, error);
        int width = LineDraw.width(measured.length, machine.nuisances() + 1);
        CommonDraws draws = new CommonDraws(seed, 16, width);
        CauseSampler sampler = new CauseSampler(machine, target, List.of(prior), draws, SamplerOptions.usual());
        sampler.begin();
        return sampler;
    }

    /** y = S z. */
    private static final class Linear implements Machine {
        @Override
        public int readings() {
            return 3;
        }

        @Override
        public int nuisances() {
            return 3;
        }

        @Override
        public void predict(double[] severity, double[] z, Forecast forecast) {
            for (int i = 0; i < 3; i++) {
                forecast.put(i, SLOPES[i][0] * z[0] + SLOPES[i][1] * z[1] + SLOPES[i][2] * z[2]);
            }
        }
    }

    /** y₁ = s^1.5 + 0.1 z, y₂ = s + 0.5 z. */
    private static final class Bent implements Machine {
        @Override
        public int readings() {
            return 2;
        }

        @Override
        public int nuisances() {
            return 1;
        }

        @Override
        public void predict(double[] severity, double[] z, Forecast forecast) {
            forecast.put(0, severity[0] * Math.sqrt(severity[0]) + 0.1 * z[0]);
            forecast.put(1, severity[0] + 0.5 * z[0]);
        }
    }

    /** Shows nothing. */
    private static final class Nothing implements Machine {
        @Override
        public int readings() {
            return 0;
        }

        @Override
        public int nuisances() {
            return 1;
        }

        @Override
        public void predict(double[] severity, double[] z, Forecast forecast) {}
    }

    /** The bent machine summed over a grid: midpoints in z, and in s by shares of the prior. */
    private static final class Quadrature {
        private static final int SHARES = 40000;
        private static final int STEPS = 600;
        private final double[] cumulative = new double[SHARES];
        private final double[] severity = new double[SHARES];
        final double logEvidence;

        Quadrature(SeverityPrior prior, double[] measured, double[] errors) {
            Bent bent = new Bent();
            Target target = new Target(measured, errors);
            Forecast forecast = new Forecast(2);
            double sum = 0;
            double step = 12.0 / STEPS;
            for (int i = 0; i < SHARES; i++) {
                severity[i] = prior.severity((i + 0.5) / SHARES);
                double rest = measured[0] - severity[i] * Math.sqrt(severity[i]);
                if (Math.abs(rest) < 1 + 60 * errors[0]) {
                    for (int j = 0; j < STEPS; j++) {
                        double z = -6 + (j + 0.5) * step;
                        bent.predict(new double[] {severity[i]}, new double[] {z}, forecast);
                        sum += Math.exp(WildLaw.logLikelihood(target, forecast) - 0.5 * z * z)
                                * step
                                / Math.sqrt(2 * Math.PI)
                                / SHARES;
                    }
                }
                cumulative[i] = sum;
            }
            logEvidence = Math.log(sum);
        }

        double below(double level) {
            int i = 0;
            while (i < SHARES - 1 && severity[i] < level) {
                i++;
            }
            return cumulative[i] / cumulative[SHARES - 1];
        }
    }
}
