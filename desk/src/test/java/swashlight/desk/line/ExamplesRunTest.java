package swashlight.desk.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What help shows as an example runs as it stands, in the order it is shown. */
class ExamplesRunTest {
    @TempDir
    Path folder;

    static Stream<String> commands() {
        return Catalogue.words().stream();
    }

    /** The one that does not end by itself is run by .ci/serve-test. */
    static Stream<String> answering() {
        return commands().filter(command -> !command.equals("serve"));
    }

    @ParameterizedTest
    @MethodSource("answering")
    void examplesRun(String command) {
        String examples = new HelpWords(command).getString("examples");
        assertThat(examples.lines().count()).isGreaterThan(1);
        examples.lines().forEach(line -> {
            Stranger.Told told = new Stranger(folder).types(line);
            assertThat(told.code()).as(line + "\n" + told.err()).isZero();
            if (!line.contains("--out")) {
                assertThat(told.out()).as(line).isNotBlank().doesNotContain("{0}", "{1}", "{2}", "%n");
            }
        });
    }

    @ParameterizedTest
    @MethodSource("commands")
    void helpShowsTheExamples(String command) {
        Stranger.Told told = new Stranger(folder).types("swashlight help " + command);
        assertThat(told.code()).isZero();
        assertThat(told.out()).contains("Examples", "swashlight " + command);
        assertThat(told.out()).as("every option has words").doesNotContainPattern("(?m)^ +-\\S+\\R( +-|\\R)");
    }
}
