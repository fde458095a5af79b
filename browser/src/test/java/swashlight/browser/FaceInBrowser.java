package swashlight.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swashlight.browser.chromium.Chromium;
import swashlight.browser.chromium.InChromium;

/** What a page is promised is there, and nothing else. */
@InChromium
final class FaceInBrowser {
    @ParameterizedTest
    @CsvSource({
        "physics, webassembly",
        "physics, javascript",
        "diagnosis, diagnosis-webassembly",
        "diagnosis, diagnosis-javascript"
    })
    void everyExportIsDeclaredAndEveryDeclarationExported(String file, String target, Chromium chromium)
            throws IOException {
        assertThat(new TreeSet<>(chromium.run(file + "-exports", target).lines()))
                .isEqualTo(Declarations.of(file).names());
    }
}
