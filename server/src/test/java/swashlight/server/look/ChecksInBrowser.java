package swashlight.server.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The checks that the page's rooms bring along ({@code web/src/test/resources/page-checks}), run in the opened page. */
@WithEyes
final class ChecksInBrowser {
    static Stream<Path> checks() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("..", "web", "src", "test", "resources", "page-checks"))) {
            return files.filter(file -> file.toString().endsWith(".js")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("checks")
    void nothingIsWrong(Path check, Eyes eyes) throws IOException {
        try (Visit visit = eyes.visit(Look.DESK)) {
            assertThat((java.util.List<?>) visit.page().evaluate(Files.readString(check)))
                    .as(check.getFileName() + " found")
                    .isEmpty();
        }
    }
}
