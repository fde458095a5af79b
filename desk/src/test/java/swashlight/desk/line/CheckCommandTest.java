package swashlight.desk.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swashlight.drive.description.Parameters;

/** The command check, run as a user runs it. */
class CheckCommandTest {
    private static final String LABEL =
            "format: 1\nkind: drive\nname: Mine\n# from the label\npump:\n  displacement: 10 cm3/rev\n"
                    + "motor:\n  displacement: 12 cm3/rev\n";

    @TempDir
    Path folder;

    @BeforeEach
    void aLabel() throws IOException {
        Files.writeString(folder.resolve("mine.yaml"), LABEL);
    }

    private Stranger.Told types(String line) {
        return new Stranger(folder).types(line);
    }

    @Test
    void twoNumbersOfALabelAreCompleted() {
        List<String> rows = types("swashlight check mine.yaml --csv").rows();
        assertThat(rows).hasSize(1 + Parameters.all().size());
        assertThat(rows).anyMatch(row -> row.startsWith("pump.displacement,10,cm³/rev,") && row.contains(",given,"));
        assertThat(rows).anyMatch(row -> row.startsWith("pump.faceGap,") && row.contains(",typical,"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"all.yaml", "all.json", "all.yaml --units us"})
    void whatIsWrittenReadsTheSame(String write) {
        assertThat(types("swashlight check mine.yaml --write " + write).code()).isZero();
        assertThat(types("swashlight check " + write.split(" ")[0] + " --csv").out())
                .isEqualTo(types("swashlight check mine.yaml --csv").out());
    }

    @Test
    void aDescriptionIsNotWrittenOverItself() {
        Stranger.Told told = types("swashlight check mine.yaml --write mine.yaml");
        assertThat(told.code()).isEqualTo(2);
        assertThat(told.err()).contains("--write", "the description itself");
        assertThat(folder.resolve("mine.yaml")).hasContent(LABEL);
    }

    @Test
    void everythingWrongIsSaidAtOnceWithItsLine() throws IOException {
        Files.writeString(
                folder.resolve("bad.yaml"),
                "format: 1\nkind: drive\nname: Bad\npump:\n  displacement: 10\n  pistonCount: 5\nmotor:\n  displacemnt: 12 cm3/rev\n");
        Stranger.Told told = types("swashlight check bad.yaml");
        assertThat(told.code()).isEqualTo(2);
        assertThat(told.out()).isEmpty();
        assertThat(told.err()).contains("bad.yaml, line 5", "unit", "bad.yaml, line 8", "displacement?");
    }
}
