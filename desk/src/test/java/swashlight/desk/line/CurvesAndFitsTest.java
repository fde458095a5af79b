package swashlight.desk.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swashlight.desk.text.Ink;

/** The commands curve, map, warmup, sway and fit, run as a user runs them. */
class CurvesAndFitsTest {
    private record Told(int code, String out, String err) {
        List<String> rows() {
            return Arrays.asList(out.split("\r\n"));
        }
    }

    @TempDir
    Path folder;

    private Told tell(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code =
                Swashlight.run(arguments, new Session(new PrintWriter(out), new PrintWriter(err), Ink.PLAIN, folder));
        return new Told(code, out.toString(), err.toString());
    }

    @Test
    void aWornMotorLosesMoreSpeedTheSteeperItGets() {
        Told told = tell(
                "curve",
                "--fault",
                "motor-face-worn=30um",
                "--oil",
                "90C",
                "--beside",
                "sound",
                "--steps",
                "3",
                "--csv");
        assertThat(told.code()).isZero();
        assertThat(told.rows()).hasSize(4);
        assertThat(told.rows().get(0)).isEqualTo("slope (°),sick (m/s),sound (m/s)");
        double atStart = loss(told.rows().get(1));
        double atEnd = loss(told.rows().get(3));
        assertThat(atStart).isPositive();
        assertThat(atEnd).isGreaterThan(2 * atStart);
    }

    private static double loss(String row) {
        String[] cells = row.split(",");
        return Double.parseDouble(cells[2]) - Double.parseDouble(cells[1]);
    }

    @Test
    void aMapHasARowForEveryPlaceAndADrawing() throws IOException {
        Told told = tell("map", "--steps", "4", "--csv", "--svg", "map.svg");
        assertThat(told.code()).isZero();
        assertThat(told.rows()).hasSize(17);
        assertThat(Files.readString(folder.resolve("map.svg")))
                .startsWith("<svg")
                .contains("</svg>");
    }

    @Test
    void withoutAFanItGetsHotter() {
        double cooled = lastTemperature(tell("warmup", "--slope", "8deg", "--csv"));
        double still = lastTemperature(tell("warmup", "--slope", "8deg", "--fault", "fan-broken", "--csv"));
        assertThat(still).isGreaterThan(cooled + 5);
    }

    private static double lastTemperature(Told told) {
        List<String> rows = told.rows();
        return Double.parseDouble(rows.get(rows.size() - 1).split(",")[1]);
    }

    @Test
    void anUnloadedDriveDoesNotSwayWithItsLeaks() {
        Told told = tell("sway", "--show", "axle", "--wheels", "lifted", "--oil", "20C", "--csv");
        assertThat(told.code()).isZero();
        assertThat(told.rows().get(1)).containsAnyOf("fullSwashAngle", "speedRatio", "noLoadSpeed");
    }

    @Test
    void theInventedTableGivesBackTheLossesItWasMadeWith() {
        Told told = tell("fit", "--csv");
        assertThat(told.code()).isZero();
        assertThat(value(told, "displacement")).isCloseTo(18.0, within(0.1)); // cm³/rev it was made with
        assertThat(value(told, "laminar")).isCloseTo(2.4e-8, within(0.1e-8));
        assertThat(value(told, "coulomb")).isCloseTo(0.035, within(0.002));
    }

    private static double value(Told told, String quantity) {
        return told.rows().stream()
                .filter(row -> row.startsWith(quantity + ","))
                .map(row -> Double.parseDouble(row.split(",")[1]))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void badTablesAndWordsAreRefusedWhereTheyStand() throws IOException {
        Files.writeString(folder.resolve("bad.csv"), "speed [rpm],pressure [bar]\n1000,abc\n");
        Told told = tell("fit", "bad.csv");
        assertThat(told.code()).isEqualTo(2);
        assertThat(told.err()).contains("bad.csv, line 1, flow").doesNotContain("\tat ");
        Told words = tell("curve", "--show", "sped", "--across", "slop");
        assertThat(words.code()).isEqualTo(2);
        assertThat(words.err()).contains("Did you mean speed?").contains("Did you mean slope?");
    }
}
