package swashlight.desk.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swashlight.drive.fault.Faults;
import swashlight.files.demo.DemoShelf;
import tools.jackson.databind.json.JsonMapper;

/** The commands faults, demo and schema, run as a user runs them. */
class ShelvesTest {
    @TempDir
    Path folder;

    private Stranger.Told types(String line) {
        return new Stranger(folder).types(line);
    }

    @Test
    void everyFaultHasARowThatFaultUnderstands() {
        List<String> rows = types("swashlight faults --csv").rows();
        assertThat(rows.get(0)).startsWith("key,place,least,least unit,usual,usual unit");
        assertThat(rows).hasSize(1 + Faults.all().size());
        String key = rows.get(5).split(",")[0];
        assertThat(types("swashlight point --fault " + key).code()).isZero();
    }

    @Test
    void aDemoIsPrintedToTheLetter() {
        assertThat(types("swashlight demo light-rider").out())
                .isEqualTo(DemoShelf.drive("light-rider").text());
    }

    @Test
    void demosAreWrittenOnceAndNeverOver() throws IOException {
        assertThat(types("swashlight demo --to here").code()).isZero();
        Path one = folder.resolve("here/light-rider.yaml");
        try (Stream<Path> files = Files.list(folder.resolve("here"))) {
            assertThat(files)
                    .hasSize(DemoShelf.drives().size()
                            + DemoShelf.cases().size()
                            + DemoShelf.afterwards().size()
                            + DemoShelf.teardowns().size()
                            + DemoShelf.prices().size());
        }
        assertThat(types("swashlight point --drive here/light-rider.yaml").code())
                .isZero();
        Files.writeString(one, "mine");
        Files.delete(folder.resolve("here/small-loader.yaml"));
        Stranger.Told again = types("swashlight demo --to here");
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.err()).contains("light-rider.yaml", "not overwritten");
        assertThat(one).hasContent("mine");
        assertThat(folder.resolve("here/small-loader.yaml")).doesNotExist();
    }

    @Test
    void aFolderThatCannotBeIsRefused() throws IOException {
        Files.writeString(folder.resolve("plain"), "a file, no folder");
        Stranger.Told told = types("swashlight demo --to plain/inside");
        assertThat(told.code()).isEqualTo(2);
        assertThat(told.err()).contains("--to", "plain/inside", "cannot be made");
    }

    @Test
    void oneFormAtATime() {
        Stranger.Told told = types("swashlight faults --json --csv");
        assertThat(told.code()).isEqualTo(2);
        assertThat(told.err()).contains("--json and --csv");
    }

    @Test
    void bytesThatAreNoTextAreNoTable() throws IOException {
        Files.write(folder.resolve("noise.csv"), new byte[] {'a', ',', 'b', '\n', (byte) 0xff, (byte) 0xfe, 1});
        Stranger.Told told = types("swashlight fit noise.csv");
        assertThat(told.code()).isEqualTo(2);
        assertThat(told.err()).contains("UTF-8").doesNotContain("java.");
    }

    @Test
    void unknownNamesAreRefusedWithTheNearest() {
        assertThat(types("swashlight demo light-ridr").err()).contains("Did you mean light-rider?");
        assertThat(types("swashlight schema driv").code()).isEqualTo(2);
        assertThat(types("swashlight schema").err()).contains("KIND", "swashlight schema --help");
    }

    @Test
    void schemasAreJson() {
        for (String kind : List.of("drive", "case", "duty")) {
            String text = types("swashlight schema " + kind).out();
            assertThat(JsonMapper.shared().readTree(text).at("/$schema").asString())
                    .contains("2020-12");
        }
    }
}
