package swashlight.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The shape of the source files themselves. */
final class SourcesTest {
    private static final int LINES_AT_MOST = 400;

    @Test
    void everyPackageSaysWhatItIsFor() throws IOException {
        List<Path> silent = javaFiles().stream()
                .map(Path::getParent)
                .distinct()
                .filter(folder -> !Files.exists(folder.resolve("package-info.java")))
                .toList();
        assertThat(silent)
                .as("packages without package-info.java: five lines on what it is for, its idea, what it may import,"
                        + " where to begin")
                .isEmpty();
    }

    @Test
    void noFileIsTooLongToRead() throws IOException {
        List<String> tooLong = new ArrayList<>();
        for (Path file : javaFiles()) {
            int lines = Files.readAllLines(file).size();
            if (lines > LINES_AT_MOST) tooLong.add(file + ": " + lines + " lines");
        }
        assertThat(tooLong)
                .as("one idea a file, about 60 lines, at most " + LINES_AT_MOST + "; what else is in these?")
                .isEmpty();
    }

    @Test
    void nobodySignsAFile() throws IOException {
        for (Path file : javaFiles()) {
            assertThat(Files.readString(file))
                    .as(file + ": the history knows who wrote it")
                    .doesNotContain("@author");
        }
    }

    private static List<Path> javaFiles() throws IOException {
        try (Stream<Path> rooms = Files.list(Path.of(".."))) {
            List<Path> sources = rooms.map(room -> room.resolve(Path.of("src", "main", "java")))
                    .filter(Files::isDirectory)
                    .toList();
            assertThat(sources).as("rooms with sources").isNotEmpty();
            return sources.stream().flatMap(SourcesTest::javaFilesIn).sorted().toList();
        }
    }

    private static Stream<Path> javaFilesIn(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".java")).toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
