package swashlight.desk.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The command find, run as a user runs it. */
class FindCommandTest {
    @TempDir
    Path folder;

    @Test
    void answersFirstWithDoubtSeedAndDrawing() throws IOException {
        Stranger.Told told = new Stranger(folder).types("swashlight find rider-slow-since-pushed --svg a.svg");
        assertThat(told.code()).isZero();
        assertThat(told.out().lines().findFirst().orElseThrow()).contains("bypass");
        assertThat(told.out()).contains("±", "Readings beside", "Fits worst", "Seed");
        assertThat(Files.readString(folder.resolve("a.svg"))).contains("bypass-not-closed");
    }

    @Test
    void cannotTellIsAnAnswerWithTheCautionAtTheStep() {
        Stranger.Told told = new Stranger(folder).types("swashlight find rider-too-little-known");
        assertThat(told.code()).isZero();
        assertThat(told.out()).contains("cannot tell yet", "Next reading", "! ", "chock", "Local rules");
    }

    @Test
    void sameSeedSameJsonWithUnits() {
        String line = "swashlight find rider-slow-since-pushed --json --seed 3";
        String first = new Stranger(folder).types(line).out();
        assertThat(new Stranger(folder).types(line).out()).isEqualTo(first);
        JsonNode json = JsonMapper.shared().readTree(first);
        assertThat(json.at("/causes/causes/units/probability").asString()).isEqualTo("%");
        assertThat(json.at("/actionProbability/unit").asString()).isEqualTo("%");
        assertThat(json.at("/account/seed").asString()).isEqualTo("3");
    }

    @Test
    void csvIsTheCauses() {
        Stranger.Told told = new Stranger(folder).types("swashlight find rider-slow-since-pushed --csv");
        assertThat(told.rows().get(0))
                .isEqualTo("key,probability (%),error (%),prior (%),low,low unit,severity,severity unit,high,high unit,"
                        + "action");
        assertThat(told.rows().get(1)).startsWith("bypass-not-closed,").endsWith(",close-bypass");
    }

    @Test
    void aFaultyFileIsRefusedWithLineAndField() throws IOException {
        Files.writeString(
                folder.resolve("bad.yaml"),
                "format: 1\nkind: case\nname: bad\ndrive: demo:light-rider\nreadings:\n  - runTime: 12 kg\n    distance: 20 m\n");
        Stranger.Told told = new Stranger(folder).types("swashlight find bad.yaml");
        assertThat(told.code()).isEqualTo(2);
        assertThat(told.out()).isEmpty();
        assertThat(told.err()).contains("bad.yaml, line 6", "runTime", "12 kg").doesNotContain("\tat ");
    }

    @Test
    void aFileThatIsNotThereIsNamed() {
        Stranger.Told told = new Stranger(folder).types("swashlight find nowhere.yaml");
        assertThat(told.code()).isEqualTo(2);
        assertThat(told.err()).contains("nowhere.yaml", "no such file").doesNotContain("\tat ");
    }
}
