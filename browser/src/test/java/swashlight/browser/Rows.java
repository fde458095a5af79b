package swashlight.browser;

import static org.assertj.core.api.Assertions.assertThat;

/** Rows of time and signals, from two places. */
final class Rows {
    private Rows() {}

    /** Largest difference of any signal over that signal's largest value in the run, 1. */
    static double worst(double[] here, double[] there, String[] keys) {
        int width = 1 + keys.length;
        assertThat(there).as("as many rows here as there").hasSameSizeAs(here);
        assertThat(here.length).isGreaterThan(width);
        double worst = 0;
        for (int column = 0; column < width; column++) {
            double largest = 0;
            double apart = 0;
            for (int at = column; at < here.length; at += width) {
                assertThat(there[at]).isFinite();
                largest = Math.max(largest, Math.abs(here[at]));
                apart = Math.max(apart, Math.abs(here[at] - there[at]));
            }
            worst = Math.max(worst, apart == 0 ? 0 : apart / largest);
        }
        return worst;
    }
}
