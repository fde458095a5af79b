package swashlight.desk.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swashlight.findings.wear.WearPart;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The commands teardown and limits, run as a user runs them. */
class WearCommandsTest {
    @TempDir
    Path folder;

    private Stranger.Told types(String line) {
        return new Stranger(folder).types(line);
    }

    @Test
    void aTeardownSaysWhatToRenewAndWhy() {
        Stranger.Told told = types("swashlight teardown rider-opened");
        assertThat(told.code()).isZero();
        assertThat(told.out())
                .startsWith("Rider opened at 640 hours: renew motor: score to the case")
                .contains("An invented teardown", "must not be lapped (invented)", "block springs", "Local rules");
        List<String> rows = types("swashlight teardown rider-opened --csv").rows();
        assertThat(rows.get(0)).startsWith("part,verdict,shows,shows unit");
        assertThat(rows).hasSize(10);
        assertThat(rows.subList(1, rows.size()))
                .filteredOn(row -> row.contains(",replace,"))
                .singleElement()
                .asString()
                .startsWith("motor-face-score");
    }

    /** A weaker wish lets more wear stay: at a quarter of the speed everything is used again. */
    @Test
    void theVerdictFollowsFromWhatIsRequired() {
        JsonNode json = JsonMapper.shared()
                .readTree(types("swashlight teardown rider-opened --need \"25 %\" --json")
                        .out());
        assertThat(json.at("/says/0/key").asString()).isEqualTo("answer.reuse");
        assertThat(json.at("/reaches/value").asDouble()).isGreaterThan(90);
    }

    @Test
    void limitsHaveARowAPart() {
        List<String> rows = types("swashlight limits light-rider --csv").rows();
        assertThat(rows).hasSize(1 + WearPart.all().size() - 2); // springs have no limit to derive
        assertThat(rows.get(0)).contains("reuse,reuse unit,middle", "leak (L/min)");
    }

    @Test
    void papersArePrintedBesideAndNotMixedIn() throws IOException {
        Files.writeString(
                folder.resolve("papers.yaml"),
                "kind: papers\nparts:\n  motor-flatness: {most: 8 µm, source: invented}\ntorques:\n"
                        + "  - {screw: cover, torque: 25 N.m, source: invented}\n");
        String with = types("swashlight limits light-rider --papers papers.yaml --csv")
                .out();
        assertThat(with).isEqualTo(types("swashlight limits light-rider --csv").out());
        assertThat(types("swashlight limits light-rider --papers papers.yaml").out())
                .contains("faces out of flat: at most 8 µm (invented)", "cover: 25 N·m (invented)");
    }

    @Test
    void everythingWrongIsSaidAtOnce() throws IOException {
        Files.writeString(
                folder.resolve("bad.yaml"),
                "kind: teardown\ndrive: demo:light-rider\nmeasured:\n  - {part: pump-pistons, shows: 46 µm}\n"
                        + "  - {part: motor-flatness, shows: 3 kg}\n");
        Stranger.Told told = types("swashlight teardown bad.yaml");
        assertThat(told.code()).isEqualTo(2);
        assertThat(told.err())
                .contains("bad.yaml, line 4, measured[1].part", "bad.yaml, line 5, measured[2].shows")
                .doesNotContain("\tat ");
        Stranger.Told two = types("swashlight limits --speed \"5 km/h\" --pull 300N --hill 80deg");
        assertThat(two.code()).isEqualTo(2);
        assertThat(two.err()).contains("80deg", "one at a time");
    }

    @Test
    void aCaseWithoutDimensionsIsNoTeardown() {
        Stranger.Told told = types("swashlight teardown rider-fades-uphill");
        assertThat(told.code()).isEqualTo(2);
        assertThat(told.err()).contains("partDimension");
    }

    @Test
    void aHillThatTheDriveItselfDoesNotClimbIsRefused() {
        Stranger.Told told = types("swashlight limits --hill 30deg --load 3000N");
        assertThat(told.code()).isEqualTo(2);
        assertThat(told.err()).contains("does not move there");
    }
}
