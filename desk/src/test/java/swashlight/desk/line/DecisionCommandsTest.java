package swashlight.desk.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The commands next and choose, run as a user runs them. */
class DecisionCommandsTest {
    private static final String PRICES = "kind: prices\ncurrency: EUR\nlabour: 100 EUR/h\nnewDrive: 1000\n"
            + "jobs:\n  renew-belt: {time: 30 min, parts: 40 EUR}\nreadings: {push: 4 min}\n";

    @TempDir
    Path folder;

    /** A worn belt is the truth of this case: renewed for 40 and half an hour at 100, by hand 90. */
    @Test
    void choosesByThePricesOfTheFile() throws IOException {
        Files.writeString(folder.resolve("prices.yaml"), PRICES);
        Stranger.Told told =
                new Stranger(folder).types("swashlight choose rider-fades-uphill --prices prices.yaml --csv");
        assertThat(told.code()).isZero();
        assertThat(told.rows().get(0)).startsWith("option,total,error,direct,time (min),comeback (%),slow (m/s)");
        String[] best = told.rows().get(1).split(",");
        assertThat(best[0]).isEqualTo("renew-belt");
        assertThat(best[3]).isEqualTo("90");
    }

    @Test
    void saysWhichReadingPaysWithCautionsAndRespectsWhatIsThere() {
        Stranger.Told all = new Stranger(folder).types("swashlight next side-hard-to-push --json");
        assertThat(all.code()).isZero();
        JsonNode json = JsonMapper.shared().readTree(all.out());
        assertThat(json.at("/readings/rows").size()).isGreaterThan(10);
        assertThat(json.at("/basis/hill/unit").asString()).isEqualTo("°");
        Stranger.Told few = new Stranger(folder).types("swashlight next side-hard-to-push --have tape,stopwatch");
        assertThat(few.out()).contains("Lacks", "slope").contains("scale");
    }

    /** Looks and an opened drive stand in one ranking with the numbers, sorted by what they pay, and cautions stand beside them. */
    @Test
    void ranksLooksAndAnOpenedDriveWithTheNumbers() {
        Stranger.Told told =
                new Stranger(folder).types("swashlight next rider-too-little-known --prices small-workshop --csv");
        List<String> rows = told.rows().subList(1, told.rows().size());
        assertThat(rows).anyMatch(row -> row.startsWith("look-belt,"));
        assertThat(rows).anyMatch(row -> row.startsWith("open-motor-flatness,"));
        assertThat(rows).anyMatch(row -> row.startsWith("roll-forward-hot,"));
        List<Double> pays = rows.stream()
                .filter(row -> row.endsWith(",")) // with what is at hand
                .map(row -> Double.parseDouble(row.split(",")[1]))
                .toList();
        assertThat(pays).isSortedAccordingTo(Comparator.reverseOrder()).hasSizeGreaterThan(35);
        assertThat(new Stranger(folder)
                        .types("swashlight next rider-too-little-known")
                        .out())
                .contains("look at belt", "key out", "clear level course", "Opening the drive");
    }

    @Test
    void findTakesThePricesToo() {
        Stranger.Told told =
                new Stranger(folder).types("swashlight find rider-fades-uphill --prices small-workshop --hill 10deg");
        assertThat(told.code()).isZero();
        assertThat(told.out()).contains("EUR").doesNotContain("¤");
        Stranger.Told missing = new Stranger(folder).types("swashlight find rider-fades-uphill --prices demo:big");
        assertThat(missing.code()).isEqualTo(2);
        assertThat(missing.err()).contains("there is no demo of that name", "small-workshop");
    }

    @Test
    void aSteepHillAndAnUnknownToolAreRefused() {
        Stranger.Told told =
                new Stranger(folder).types("swashlight next rider-fades-uphill --have tape,hammer --hill 80deg");
        assertThat(told.code()).isEqualTo(2);
        assertThat(told.err()).contains("hammer", "80deg").doesNotContain("\tat ");
    }

    @Test
    void aFaultyPriceIsRefusedWithLineAndField() throws IOException {
        Files.writeString(
                folder.resolve("bad.yaml"), "currency: EUR\nlabour: 100 kg\njobs:\n  renew-belts: {parts: 40}\n");
        Stranger.Told told = new Stranger(folder).types("swashlight choose rider-fades-uphill --prices bad.yaml");
        assertThat(told.code()).isEqualTo(2);
        assertThat(told.err())
                .contains("bad.yaml, line 2", "labour", "100 kg", "renew-belts", "Did you mean renew-belt?");
    }
}
