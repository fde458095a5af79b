package swashlight.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swashlight.browser.chromium.Chromium;
import swashlight.browser.chromium.InChromium;
import swashlight.checks.CheckBook;
import swashlight.checks.CheckRow;
import swashlight.drive.checks.Laws;

/** Checks: the published values, each with its source in {@code checks}, answered in a browser. */
@InChromium
final class PublishedInBrowser {
    private static final Path BOOK = Path.of(System.getProperty("proof.directory"), "book.js");
    private static final double SAME = 1e-12; // of the JVM's answer, 1

    private record Asked(String theme, CheckRow row) {}

    @ParameterizedTest
    @ValueSource(strings = {"proof-webassembly", "proof-javascript"})
    void agreeWithTheirSourcesAndWithTheJvm(String target, Chromium chromium) throws IOException {
        List<Asked> asked = new ArrayList<>();
        Laws.byTheme().keySet().stream()
                .sorted()
                .forEach(theme -> CheckBook.read(theme).answered().forEach(row -> asked.add(new Asked(theme, row))));
        Files.writeString(
                BOOK,
                asked.stream()
                        .map(PublishedInBrowser::json)
                        .collect(Collectors.joining(",\n", "export const rows = [\n", "\n];\n")));
        double[] there = chromium.run("published", target).numbers();
        assertThat(there).hasSize(asked.size());
        assertThat(asked.size()).isGreaterThan(100);
        for (int i = 0; i < there.length; i++) {
            CheckRow row = asked.get(i).row();
            row.assertAgrees(there[i]);
            double here = Laws.byTheme().get(asked.get(i).theme()).applyAsDouble(row);
            assertThat(there[i]).as(row.id()).isCloseTo(here, within(SAME * Math.abs(here)));
        }
        System.out.printf("%s: %d published values agree%n", target, there.length);
    }

    private static String json(Asked asked) {
        List<String> names = List.copyOf(asked.row().inputs().keySet());
        return "{ theme: " + quoted(asked.theme()) + ", id: "
                + quoted(asked.row().id()) + ", names: " + list(names) + ", texts: "
                + list(names.stream().map(asked.row().inputs()::get).toList()) + " }";
    }

    private static String list(Collection<String> texts) {
        return texts.stream().map(PublishedInBrowser::quoted).collect(Collectors.joining(", ", "[", "]"));
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
