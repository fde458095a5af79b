package swashlight.findings.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;

final class MaximumLikelihoodTest {
    /**
     * Ten failures and ten units stopped at 500 h. Source: NIST/SEMATECH e-Handbook 8.4.1.3 (reference book 9.1): shape 1.7208,
     * scale 606.5280, log-likelihood −75.1346, se(ln scale) 0.2059.
     */
    @Test
    void aWeibullLifeWithStoppedUnits() {
        double[] failed = {54, 187, 216, 240, 244, 335, 361, 373, 375, 386};
        Likelihood life = new Likelihood() {
            @Override
            public int rows() {
                return 20;
            }

            @Override
            public double row(int row, double[] point) {
                double shape = Math.exp(point[1]);
                double time = row < 10 ? failed[row] : 500;
                double logHazard = shape * (Math.log(time) - point[0]);
                double survival = -Math.exp(logHazard);
                return row < 10 ? Math.log(shape) + logHazard - Math.log(time) + survival : survival;
            }
        };
        MaximumLikelihood.Summit summit = MaximumLikelihood.climb(life, new double[] {Math.log(300), 0});
        assertThat(summit.outcome().converged()).isTrue();
        assertThat(Math.exp(summit.outcome().point()[0])).isCloseTo(606.5280, offset(0.002));
        assertThat(Math.exp(summit.outcome().point()[1])).isCloseTo(1.7208, offset(0.00005));
        assertThat(summit.outcome().objective()).isCloseTo(75.1346, offset(0.00005));
        assertThat(Math.sqrt(summit.covariance().orElseThrow()[0][0])).isCloseTo(0.2059, offset(0.00005));
    }

    /** A normal sample: mean and deviation in closed form, information n/σ² and 2n. */
    @Test
    void aNormalSample() {
        double[] sample = {1.2, 0.8, 1.5, 2.2, 0.1, 1.1, 1.9};
        Likelihood normal = new Likelihood() {
            @Override
            public int rows() {
                return sample.length;
            }

            @Override
            public double row(int row, double[] point) {
                return NormalLaw.logDensity((sample[row] - point[0]) / Math.exp(point[1])) - point[1];
            }
        };
        double mean = 8.8 / 7;
        double squares = 0;
        for (double value : sample) {
            squares += (value - mean) * (value - mean);
        }
        MaximumLikelihood.Summit summit = MaximumLikelihood.climb(normal, new double[] {0, 0});
        assertThat(summit.outcome().point()[0]).isCloseTo(mean, offset(1e-7));
        assertThat(summit.outcome().point()[1]).isCloseTo(0.5 * Math.log(squares / 7), offset(1e-6));
        double[][] covariance = summit.covariance().orElseThrow();
        assertThat(covariance[0][0]).isCloseTo(squares / 49, offset(1e-5));
        assertThat(covariance[1][1]).isCloseTo(1.0 / 14, offset(1e-5));
    }

    @Test
    void rowsThatSettleNothingAreSaidSo() {
        Likelihood flat = new Likelihood() {
            @Override
            public int rows() {
                return 5;
            }

            @Override
            public double row(int row, double[] point) {
                return NormalLaw.logDensity(row - point[0] - point[1]);
            }
        };
        MaximumLikelihood.Summit summit = MaximumLikelihood.climb(flat, new double[] {1, 2});
        assertThat(summit.covariance()).isEmpty();
    }
}
