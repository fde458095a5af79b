package swashlight.findings.next;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** One thing told of two, against closed forms. */
class SortedTest {
    private static final int[] ACTION = {0, 1};
    private static final double[][] COST = {{0, 100}, {100, 0}}; // the wrong work costs 100

    /** A binary symmetric channel that errs in a share e: ln 2 − H(e) nat (Shannon 1948); the wrong work falls from 50 to 100 e. */
    @Test
    void aNoisyYesOrNo() {
        for (double e : new double[] {0.5, 0.3, 0.1, 0.01}) {
            Sorted sorted = new Sorted(ACTION, COST, COST);
            sorted.begin();
            sorted.told(new double[] {1 - e, e});
            sorted.told(new double[] {e, 1 - e});
            double entropy = -e * Math.log(e) - (1 - e) * Math.log(1 - e);
            assertThat(sorted.gain()).isCloseTo(Math.log(2) - entropy, within(1e-12));
            assertThat(sorted.saving()).isCloseTo(50 - 100 * e, within(1e-9));
        }
    }

    /** Told for certain, it saves what perfect information saves, ln 2 nat; what the step spares of the work after it comes on top. */
    @Test
    void forCertainAndSparingSomething() {
        Sorted sorted = new Sorted(ACTION, new double[][] {{10, 110}, {110, 10}}, COST);
        sorted.begin();
        sorted.told(new double[] {1, 0});
        sorted.told(new double[] {0, 1});
        assertThat(sorted.gain()).isCloseTo(Math.log(2), within(1e-12));
        assertThat(sorted.saving()).isCloseTo(60, within(1e-9));
    }
}
