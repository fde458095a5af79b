package swashlight.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swashlight.browser.chromium.Chromium;
import swashlight.browser.chromium.InChromium;
import swashlight.files.machine.CaseFiles;
import swashlight.findings.finding.CauseFinding;
import swashlight.findings.finding.Finder;
import swashlight.findings.finding.FinderOptions;
import swashlight.findings.reading.MachineCase;

/** A case of the demos is found the same in a browser: same seed, same chance, same causes. */
@InChromium
final class FindInBrowser {
    private static final int SEED = 1;
    private static final double APART = 1e-6; // probability, 1

    @ParameterizedTest
    @CsvSource({
        "rider-fades-uphill, diagnosis-webassembly",
        "side-weak-forward, diagnosis-webassembly",
        "loader-howls-cold, diagnosis-webassembly",
        "rider-fades-uphill, diagnosis-javascript"
    })
    void givesTheSameProbabilities(String name, String target, Chromium chromium) {
        MachineCase machine = CaseFiles.demo(name);
        double[] here = new Finder(FinderOptions.usual(SEED))
                .find(machine).causes().stream()
                        .sorted(Comparator.comparing(cause -> cause.cause().key()))
                        .mapToDouble(CauseFinding::probability)
                        .toArray();
        double[] there =
                chromium.run("find", target, CaseNumbers.of(machine, SEED)).numbers();
        assertThat(there).hasSameSizeAs(here);
        double worst = 0;
        for (int i = 0; i < here.length; i++) {
            worst = Math.max(worst, Math.abs(here[i] - there[i]));
        }
        System.out.printf("%s, %s: probabilities %.1e apart at most%n", name, target, worst);
        assertThat(worst).isLessThan(APART);
    }
}
