package swashlight.desk.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The command expect, run as a user runs it. */
class ExpectCommandTest {
    @TempDir
    Path folder;

    private Stranger.Told types(String line) {
        return new Stranger(folder).types(line);
    }

    private JsonNode rows(String line) {
        Stranger.Told told = types(line);
        assertThat(told.code()).as(told.err()).isZero();
        return JsonMapper.shared().readTree(told.out()).at("/expected/rows");
    }

    private static double number(JsonNode row, String column) {
        return row.at("/" + column + "/value").asDouble();
    }

    /** Engine speed without load is governed: the light rider states 3200 rpm ± 30 rpm, so 90 % lie within 1.645 · 30 rpm of the middle. */
    @Test
    void theEnginesIntervalIsThatOfItsGovernor() {
        JsonNode row = rows("swashlight expect engineSpeed --json").get(0);
        double middle = number(row, "middle");
        assertThat(middle).isCloseTo(3200, within(40.0));
        assertThat(number(row, "high") - middle)
                .isCloseTo(1.645 * 30, within(12.0)); // 400 machines: a tail is known to some 10 %
        assertThat(middle - number(row, "low")).isCloseTo(1.645 * 30, within(12.0));
    }

    /** Distance over speed: twice the way takes twice the time, on the same machines. */
    @Test
    void twiceTheDistanceTakesTwiceAsLong() {
        JsonNode one = rows("swashlight expect runTime --distance 15m --json").get(0);
        JsonNode two = rows("swashlight expect runTime --distance 30m --json").get(0);
        for (String end : new String[] {"low", "middle", "high"}) {
            assertThat(number(two, end)).isCloseTo(2 * number(one, end), within(1e-6));
        }
    }

    @Test
    void bothSystemsTellTheSame() {
        JsonNode metric = rows("swashlight expect pushForce --json").get(0);
        JsonNode customary =
                rows("swashlight expect pushForce --units us --json").get(0);
        assertThat(number(customary, "middle") * 4.4482216152605) // N a pound-force, by definition
                .isCloseTo(number(metric, "middle"), within(1e-6));
        assertThat(customary.at("/middle/unit").asString()).isEqualTo("lbf");
    }

    @Test
    void aSickDriveStandsBesideTheSoundOne() throws IOException {
        Stranger.Told told = types(
                "swashlight expect runTime --slope 10deg --oil 80C --fault motor-face-worn=40um --csv --svg bars.svg");
        assertThat(told.code()).isZero();
        assertThat(told.rows().get(0)).contains("low", "middle", "high", "sickLow", "sick", "sickHigh");
        String[] cells = told.rows().get(1).split(",");
        assertThat(Double.parseDouble(cells[11])).as("sick beyond sound").isGreaterThan(Double.parseDouble(cells[5]));
        assertThat(Files.readString(folder.resolve("bars.svg"))).contains("sound", "with its fault", "</svg>");
    }

    @Test
    void aCaseIsAskedAsItWasTaken() {
        JsonNode rows = rows("swashlight expect --case rider-fades-uphill --json");
        assertThat(rows).hasSize(5);
        JsonNode climb = rows.get(1);
        assertThat(climb.at("/reading").asString()).isEqualTo("climb");
        assertThat(number(climb, "measured")).isEqualTo(24);
        assertThat(climb.at("/off").asDouble()).isGreaterThan(5); // the belt slips: far from any sound rider
        Stranger.Told both = types("swashlight expect --case rider-fades-uphill --oil 80C");
        assertThat(both.code()).isEqualTo(2);
        assertThat(both.err()).contains("--oil", "a case brings its own");
    }

    @Test
    void cautionsStandAtTheReadingThatNeedsThem() {
        String raised = types("swashlight expect creepSpeed --lifted").out();
        assertThat(raised).contains("Machine raised", "Local rules");
        assertThat(types("swashlight expect highPressure").out()).contains("goes through skin");
        assertThat(types("swashlight expect inputSpeed --slope 10deg --oil 80C").out())
                .contains("turning", "On a slope", "hot enough to burn");
        assertThat(types("swashlight expect armTravel").out())
                .contains("Engine off")
                .doesNotContain("On a slope");
    }

    @Test
    void aWrongConditionIsRefusedOnce() {
        Stranger.Told told = types("swashlight expect --slope 80deg");
        assertThat(told.code()).isEqualTo(2);
        assertThat(told.err().lines()).hasSize(1);
        assertThat(types("swashlight expect runTim").err()).contains("Did you mean runTime?");
    }
}
