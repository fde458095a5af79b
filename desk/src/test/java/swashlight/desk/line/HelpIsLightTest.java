package swashlight.desk.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Help starts neither physics nor readers of files nor drawing: what the JVM loads for it is listed and looked through. */
class HelpIsLightTest {
    private static final List<String> HEAVY = List.of(
            "tools.jackson.",
            "org.snakeyaml.",
            "org.yaml.",
            "org.jfree.",
            "java.awt.Font",
            "swashlight.files.document.",
            "swashlight.files.drive.",
            "swashlight.drive.steady.",
            "swashlight.findings.");

    @ParameterizedTest
    @ValueSource(strings = {"--help", "find --help", "check --help", "fit --help"})
    void nothingHeavyIsLoaded(String line) throws IOException, InterruptedException {
        List<String> loaded = loadedBy(line);
        assertThat(loaded).anyMatch(text -> text.contains("swashlight.desk.line.Catalogue"));
        assertThat(loaded).noneMatch(text -> HEAVY.stream().anyMatch(text::contains));
    }

    @ParameterizedTest
    @ValueSource(strings = "check light-rider")
    void workLoadsThem(String line) throws IOException, InterruptedException {
        assertThat(loadedBy(line)).anyMatch(text -> text.contains("swashlight.files.document."));
    }

    private static List<String> loadedBy(String line) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-verbose:class",
                "-cp",
                System.getProperty("java.class.path"),
                Swashlight.class.getName()));
        command.addAll(List.of(line.split(" ")));
        Process program = new ProcessBuilder(command).redirectErrorStream(true).start();
        String told = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(program.waitFor()).as(told).isZero();
        return told.lines().filter(text -> text.contains(" source: ")).toList();
    }
}
