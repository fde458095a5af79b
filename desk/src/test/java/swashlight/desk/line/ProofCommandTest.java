package swashlight.desk.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swashlight.files.demo.DemoShelf;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The command proof, run as a user runs it. */
class ProofCommandTest {
    @TempDir
    Path folder;

    private Stranger.Told types(String line) {
        return new Stranger(folder).types(line);
    }

    /** The demo's belt really was renewed (truth.csv). */
    @Test
    void aRepairThatWorkedPasses() {
        Stranger.Told told = types("swashlight proof rider-fades-uphill rider-belt-renewed --done renew-belt --json");
        assertThat(told.code()).isZero();
        JsonNode json = JsonMapper.shared().readTree(told.out());
        assertThat(json.at("/says/0/key").asString()).isEqualTo("answer.pass");
        assertThat(json.at("/readings/rows").size()).isEqualTo(5);
        assertThat(json.at("/notices/value").asDouble()).isGreaterThan(80);
    }

    /** The case read again as it was: nothing has changed, and the readings point to the belt again. */
    @Test
    void aMachineThatIsAsBeforeFailsAndSaysWhatItPointsTo() {
        Stranger.Told told = types("swashlight proof rider-fades-uphill rider-fades-uphill --done renew-belt");
        assertThat(told.code()).isZero();
        assertThat(told.out()).contains("the repair fails", "renew or tension the belt");
    }

    @Test
    void thePlanSaysWhatToRead() {
        List<String> rows = types("swashlight proof rider-fades-hot --done renew-running-set --csv")
                .rows();
        assertThat(rows.get(0)).startsWith("reading,before,before unit,low,low unit");
        assertThat(rows.size()).isGreaterThan(6);
        assertThat(types("swashlight proof rider-fades-hot --done renew-running-set")
                        .out())
                .contains("Purged", "Brake holds", "Local rules");
    }

    @Test
    void whatWasDoneMustBeSaidAndTheDriveMustBeTheSame() throws IOException {
        Stranger.Told undone = types("swashlight proof rider-fades-uphill");
        assertThat(undone.code()).isEqualTo(2);
        assertThat(undone.err()).contains("--done", "renew-belt");
        Stranger.Told unknown = types("swashlight proof rider-fades-uphill --done renew-belts");
        assertThat(unknown.err()).contains("Did you mean renew-belt?");
        Files.writeString(
                folder.resolve("other.yaml"),
                DemoShelf.machineCase("rider-belt-renewed").text().replace("demo:light-rider", "demo:small-loader"));
        Stranger.Told other = types("swashlight proof rider-fades-uphill other.yaml --done renew-belt");
        assertThat(other.code()).isEqualTo(2);
        assertThat(other.err()).contains("another drive", "Small loader");
    }
}
