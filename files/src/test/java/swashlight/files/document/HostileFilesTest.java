package swashlight.files.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import swashlight.files.drive.DriveFiles;

/** Files made to hurt: each must be turned away with a reason, quickly. */
@Timeout(60) // against a hang only
final class HostileFilesTest {
    private static final int MANY = 100_000;

    static Stream<Arguments> files() {
        return Stream.of(
                Arguments.of("deep list.yaml", "a: " + "[".repeat(MANY), "too-large"),
                Arguments.of("deep map.yaml", "{a: ".repeat(MANY), "too-large"),
                Arguments.of("deep list.json", "{\"a\": " + "[".repeat(MANY), "too-large"),
                Arguments.of("deep map.json", "{\"a\": ".repeat(MANY), "too-large"),
                Arguments.of("dashes.yaml", "a:\n" + "- ".repeat(MANY) + "1", "too-large"),
                Arguments.of("keys of keys.yaml", "? ".repeat(MANY) + "1", "not-yaml"),
                Arguments.of("laughs.yaml", laughs(), "yaml-trick"),
                Arguments.of("merge.yaml", "a: &a {b: 1}\nc: {<<: *a}\n", "yaml-trick"),
                Arguments.of("tag.yaml", "oil: !!java.lang.Runtime {}\n", "yaml-trick"),
                Arguments.of("set.yaml", "oil: !!set {a, b}\n", "yaml-trick"),
                Arguments.of("wide.yaml", wide(), "too-large"),
                Arguments.of("long.yaml", "name: " + "x".repeat(MANY), "too-long"),
                Arguments.of("long.json", "{\"name\": \"" + "x".repeat(MANY) + "\"}", "too-large"),
                Arguments.of("long key.json", "{\"" + "x".repeat(MANY) + "\": 1}", "too-large"),
                Arguments.of("long number.json", "{\"format\": " + "1".repeat(MANY) + "}", "too-large"),
                Arguments.of("huge exponent.yaml", "pump: {pistonCount: 1e999999999}\n", "not-a-number"),
                Arguments.of("two.yaml", "name: a\n---\nname: b\n", "more-than-one"),
                Arguments.of("two.json", "{\"name\": \"a\"} {}", "more-than-one"),
                Arguments.of("comment.json", "{/* no */ \"name\": \"a\"}", "not-json"),
                Arguments.of("cut.json", "{\"name\": \"a", "not-json"),
                Arguments.of("tab.yaml", "oil:\n\twater: 0\n", "not-yaml"),
                Arguments.of("nothing.yaml", " \n\n", "empty"),
                Arguments.of("only a comment.yaml", "# nothing\n", "not-keys"),
                Arguments.of("null.yaml", "oil:\n", "not-keys"),
                Arguments.of("list.json", "[1, 2]", "not-keys"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void isTurnedAway(String file, String text, String key) {
        InputFault fault = catchThrowableOfType(InputFault.class, () -> DriveFiles.open(Source.of(file, text)));
        assertThat(fault.complaints()).extracting(FileComplaint::key).contains(key);
        assertThat(fault.getMessage()).hasSizeLessThan(20_000);
        assertThat(fault.getCause()).isNull();
    }

    @Test
    void aHugeFileIsNotReadToItsEnd(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("huge.yaml");
        Files.write(file, new byte[3 * Source.MOST_BYTES]);
        InputFault fault = catchThrowableOfType(InputFault.class, () -> DriveFiles.read(file));
        assertThat(fault.complaints()).extracting(FileComplaint::key).containsExactly("too-large");
    }

    @Test
    void aMissingFileAndAFolderAreToldApart(@TempDir Path folder) {
        InputFault missing = catchThrowableOfType(InputFault.class, () -> DriveFiles.read(folder.resolve("none.yaml")));
        assertThat(missing.complaints().get(0).wrong()).contains("no such file");
        InputFault directory = catchThrowableOfType(InputFault.class, () -> DriveFiles.read(folder));
        assertThat(directory.complaints().get(0).wrong()).contains("cannot be opened");
    }

    private static String laughs() {
        StringBuilder text = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 10; i++) {
            text.append("a" + i + ": &a" + i + " [" + ("*a" + (i - 1) + ", ").repeat(9) + "*a" + (i - 1) + "]\n");
        }
        return text.toString();
    }

    private static String wide() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 30_000; i++) {
            text.append("k").append(i).append(": 1\n");
        }
        return text.toString();
    }
}
