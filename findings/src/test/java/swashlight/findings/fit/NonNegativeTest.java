package swashlight.findings.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.Random;
import org.junit.jupiter.api.Test;

final class NonNegativeTest {
    private static final long SEED = 41;

    /** The conditions of Kuhn and Tucker are necessary and sufficient here, and do not know how the answer was found. */
    @Test
    void theSlopeIsFlatWhereATermIsInAndUphillWhereItIsOut() {
        Random random = new Random(SEED);
        int out = 0;
        for (int round = 0; round < 500; round++) {
            int rows = 6 + random.nextInt(20);
            int columns = 2 + random.nextInt(5);
            double[][] a = new double[rows][columns];
            double[] b = new double[rows];
            for (int i = 0; i < rows; i++) {
                b[i] = random.nextGaussian();
                for (int j = 0; j < columns; j++) {
                    a[i][j] = random.nextGaussian() * Math.pow(10, 3 * j);
                }
            }
            FitOutcome outcome = NonNegative.solve(a, b, 1);
            assertThat(outcome.converged())
                    .as("seed " + SEED + " round " + round)
                    .isTrue();
            double[] x = outcome.point();
            for (int j = 0; j < columns; j++) {
                double slope = 0;
                double length = 0;
                for (int i = 0; i < rows; i++) {
                    double left = b[i];
                    for (int k = 0; k < columns; k++) {
                        left -= a[i][k] * x[k];
                    }
                    slope += a[i][j] * left;
                    length += a[i][j] * a[i][j];
                }
                slope /= Math.sqrt(length);
                if (j == 0 || x[j] > 0) {
                    assertThat(slope).isCloseTo(0, offset(1e-9));
                } else {
                    out++;
                    assertThat(x[j]).isZero();
                    assertThat(slope).isLessThan(1e-9);
                }
            }
        }
        assertThat(out).as("rounds in which a term was left out").isGreaterThan(300);
    }
}
