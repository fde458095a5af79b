package swashlight.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import swashlight.browser.chromium.Chromium;
import swashlight.browser.chromium.InChromium;

/** The example in {@code docs/page.md} works as written. */
@InChromium
final class ExampleInBrowser {
    private static final Path PAGE = Path.of("..", "docs", "page.md");
    private static final Path SCRIPT = Path.of(System.getProperty("proof.directory"), "example.js");
    private static final double UNTIL = 0.01; // s

    @Test
    void givesWhatTheJvmGives(Chromium chromium) throws IOException {
        String text = Files.readString(PAGE);
        String block = text.substring(text.indexOf("```js\n") + "```js\n".length(), text.lastIndexOf("\n```"));
        Files.writeString(SCRIPT, block + "\nexport default () => frame(" + UNTIL + ");\n");
        double[] there = chromium.run("proof/example", "webassembly").numbers();
        PageDuty duty = Physics.driving(0, 0.1, 333.15).line("stroke", new double[] {0, 0.6}, new double[] {0, 1});
        PageRun run = Physics.lightRider().withFault("pump-bad-piston", 60e-6).startAtRest(duty, 1e-3);
        assertThat(run.advance(UNTIL)).isTrue();
        double[] here = run.values();
        assertThat(there).hasSameSizeAs(here);
        for (int i = 0; i < here.length; i++) {
            assertThat(there[i])
                    .as(run.signals().keys()[i])
                    .isCloseTo(here[i], within(1e-9 + 1e-6 * Math.abs(here[i])));
        }
    }
}
