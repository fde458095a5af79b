package swashlight.desk.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Work in rows can be cut anywhere and taken up again, and other work is not mixed in. */
class LongWorkTest {
    private static final String SIFT = "swashlight sift rider-slow-everywhere rider-slow-since-pushed --to rows.csv";

    @TempDir
    Path folder;

    @Test
    void aRowCutShortIsDoneAgainAndTheOthersAreNot() throws IOException {
        Stranger stranger = new Stranger(folder);
        assertThat(stranger.types(SIFT).code()).isZero();
        Path rows = folder.resolve("rows.csv");
        List<String> whole = Files.readAllLines(rows);
        assertThat(whole).hasSize(4);
        String kept =
                whole.get(2).replace("1.000", "0.123").replace("0.98", "0.12"); // so that doing it again would show
        Files.writeString(
                rows,
                whole.get(0) + "\n" + whole.get(1) + "\n" + kept + "\n"
                        + whole.get(3).substring(0, 20));
        assertThat(stranger.types(SIFT).code()).isZero();
        assertThat(Files.readAllLines(rows)).containsExactly(whole.get(0), whole.get(1), kept, whole.get(3));
    }

    @Test
    void otherWorkIsNotMixedIn() throws IOException {
        Stranger stranger = new Stranger(folder);
        assertThat(stranger.types("swashlight study --machines 2 --to rows.csv").code())
                .isZero();
        String before = Files.readString(folder.resolve("rows.csv"));
        Stranger.Told told = stranger.types("swashlight study --machines 2 --seed 9 --to rows.csv");
        assertThat(told.code()).isEqualTo(2);
        assertThat(told.err()).contains("Name a new file", "study of");
        assertThat(Files.readString(folder.resolve("rows.csv"))).isEqualTo(before);
    }

    @Test
    void aCaseThatCannotBeReadSaysSoInItsRow() throws IOException {
        Files.createDirectory(folder.resolve("cases"));
        Files.writeString(folder.resolve("cases/broken.yaml"), "case: nonsense\nreadings: 7\n");
        Stranger.Told told = new Stranger(folder).types("swashlight sift cases");
        assertThat(told.code()).isZero();
        assertThat(told.out()).contains("broken.yaml", "refused", "line ");
    }

    @Test
    void namesWithCommasAndQuotesAreTakenUpAgain() throws IOException {
        Files.createDirectory(folder.resolve("cases"));
        Files.writeString(folder.resolve("cases/Miller, \"red\" one.yaml"), "format: 1\nkind: case\nname: x\n");
        Stranger stranger = new Stranger(folder);
        String line = "swashlight sift cases --to rows.csv --csv";
        Stranger.Told told = stranger.types(line);
        assertThat(told.rows()).hasSize(2);
        assertThat(told.rows().get(1)).contains("Miller, \"\"red\"\" one.yaml", "line 1, drive: the drive is missing");
        String rows = Files.readString(folder.resolve("rows.csv"));
        assertThat(stranger.types(line).out()).isEqualTo(told.out());
        assertThat(folder.resolve("rows.csv")).hasContent(rows);
    }

    @Test
    void aStudyTakenUpAgainIsTheStudyInOneGo() throws IOException {
        Stranger stranger = new Stranger(folder);
        stranger.types("swashlight study --machines 2 --to parts.csv");
        String parts = stranger.types("swashlight study --machines 4 --to parts.csv --json")
                .out();
        String oneGo = stranger.types("swashlight study --machines 4 --json").out();
        assertThat(parts).isEqualTo(oneGo);
    }

    @Test
    void studiesAddUp() throws IOException {
        Stranger stranger = new Stranger(folder);
        stranger.types("swashlight study --machines 3 --drive zero-turn-side --to sides.csv");
        String both =
                stranger.types("swashlight study --machines 2 --with sides.csv").out();
        assertThat(both)
                .contains("2 studies together, 5 machines", "Zero-turn side, seed 1", "fixed chart", "truth known");
        Files.writeString(folder.resolve("other.csv"), "# sift\ncase\n");
        Stranger.Told told = stranger.types("swashlight study --machines 2 --with other.csv");
        assertThat(told.code()).isEqualTo(2);
        assertThat(told.err()).contains("other.csv", "--to");
    }
}
