package swashlight.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.DoubleStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swashlight.browser.chromium.Chromium;
import swashlight.browser.chromium.InChromium;

/** What a page does to a run gives there what it gives here: {@code steer.js}, line by line. */
@InChromium
final class SteeredInBrowser {
    private static final double APART =
            1e-6; // of a number, beside 1e-6 of an ordinary one of its kind; the steps are chosen on each side

    @ParameterizedTest
    @ValueSource(strings = {"webassembly", "javascript"})
    void aPageGetsWhatTheJvmGets(String target, Chromium chromium) {
        double[] here = steered();
        double[] there = chromium.run("steer", target).numbers();
        assertThat(there).hasSameSizeAs(here);
        for (int i = 0; i < here.length; i++) {
            double apart = Math.abs(here[i] - there[i]) / (Math.abs(here[i]) + 1e-6);
            assertThat(apart)
                    .as("number " + i + ": " + here[i] + " and " + there[i])
                    .isLessThan(APART);
        }
    }

    private static double[] steered() {
        PageDrive rider = Physics.lightRider();
        PagePlan hill = Physics.namedDuty("hill");
        PageRun run = hill.begin(rider, 1e-3);
        run.advance(0.01);
        DoubleStream told = told(run);
        run.redirect(hill.duty().line("stroke", new double[] {0, 0.02}, new double[] {1, 0.5}));
        run.advance(0.02);
        told = DoubleStream.concat(told, told(run));
        run.turn("pump", Math.PI / 180, 1);
        told = DoubleStream.concat(told, told(run));
        PageRun sick = rider.withFault("pump-bad-piston", 60e-6)
                .takeUp(run, hill.duty().engineOff(), 1e-3);
        sick.advance(0.01);
        told = DoubleStream.concat(told, told(sick));
        told = DoubleStream.concat(told, DoubleStream.of(sick.eventTotals()));
        told = DoubleStream.concat(told, DoubleStream.of(sick.events(0)));
        PagePoint point = rider.withFault("pump-face-worn", 10e-6).settled(hill.duty(), 2);
        told = DoubleStream.concat(told, DoubleStream.of(point.values()));
        return DoubleStream.concat(told, DoubleStream.of(point.ledger())).toArray();
    }

    private static DoubleStream told(PageRun run) {
        return DoubleStream.concat(DoubleStream.of(run.time()), DoubleStream.of(run.values()));
    }
}
