package swashlight.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swashlight.browser.chromium.Chromium;
import swashlight.browser.chromium.InChromium;

/** The light rider's launch up a slope of 0.1 rad, 0.1 s, computed by the JVM and by a browser. */
@InChromium
final class LaunchInBrowser {
    private static final double END = 0.1; // s
    private static final double SAME_STEPS = 1e-9; // of a signal's largest value, 1
    private static final double TOLERANCE = 1e-3; // of the adaptive run, 1

    private static PageRun launch(double tolerance) {
        PageDuty duty = Physics.driving(0, 0.1, 333.15).line("stroke", new double[] {0, 0.08}, new double[] {0, 0.6});
        return Physics.lightRider().startAtRest(duty, tolerance);
    }

    @ParameterizedTest
    @ValueSource(strings = {"webassembly", "javascript"})
    void onTheSameStepsTheTracesAgree(String target, Chromium chromium) {
        double[] lengths = chosenLengths();
        double[] here = launch(TOLERANCE).steps(lengths);
        double[] there = chromium.run("launch", target, lengths).numbers();
        double worst = Rows.worst(here, there, launch(TOLERANCE).signals().keys());
        System.out.printf("%s, %d steps: worst difference %.1e%n", target, lengths.length, worst);
        assertThat(worst).isLessThan(SAME_STEPS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"webassembly", "javascript"})
    void withStepsOfItsOwnChoiceItStaysWithinTheTolerance(String target, Chromium chromium) {
        double[] times = {0.02, 0.04, 0.06, 0.08, END};
        PageRun run = launch(TOLERANCE);
        double[] here = new double[times.length * (1 + run.values().length)];
        int at = 0;
        for (double time : times) {
            run.advance(time);
            here[at++] = run.time();
            for (double value : run.values()) {
                here[at++] = value;
            }
        }
        double[] input = new double[1 + times.length];
        input[0] = TOLERANCE;
        System.arraycopy(times, 0, input, 1, times.length);
        double[] there = chromium.run("launch-adaptive", target, input).numbers();
        double worst = Rows.worst(here, there, run.signals().keys());
        System.out.printf("%s, own steps: worst difference %.1e%n", target, worst);
        assertThat(worst).isLessThan(TOLERANCE);
    }

    private static double[] chosenLengths() {
        PageRun run = launch(TOLERANCE);
        List<Double> lengths = new ArrayList<>();
        while (run.time() < END) {
            double before = run.time();
            double length = Math.min(run.nextStep(), END - before);
            lengths.add(length);
            assertThat(run.step(length)).isTrue();
        }
        return lengths.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
