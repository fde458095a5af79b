package swashlight.desk.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swashlight.desk.text.Ink;

/** Answers fit the terminal; in files and pipes rows of tables stay whole. */
class LineWidthTest {
    @TempDir
    Path folder;

    private List<String> lines(Ink ink, int width, String... words) {
        StringWriter out = new StringWriter();
        Session session = new Session(new PrintWriter(out), new PrintWriter(new StringWriter()), ink, folder, width);
        assertThat(Swashlight.run(words, session)).isZero();
        return out.toString().replaceAll("\u001b\\[\\d*m", "").lines().toList();
    }

    private static List<String> words(List<String> lines) {
        return lines.stream()
                .flatMap(line -> Arrays.stream(line.split(" ")))
                .filter(word -> !word.isEmpty())
                .sorted()
                .toList();
    }

    @Test
    void eightyColumnsAreEnough() {
        assertThat(lines(Ink.TERMINAL, 80, "expect", "runTime", "highPressure")).allMatch(line -> line.length() <= 80);
        assertThat(lines(Ink.TERMINAL, 80, "expect", "--help")).allMatch(line -> line.length() <= 80);
    }

    @Test
    void aLongMeaningIsBrokenBelowItsHeading() {
        List<String> narrow = lines(Ink.TERMINAL, 100, "check", "light-rider");
        assertThat(narrow).allMatch(line -> line.length() <= 100);
        List<String> whole = lines(Ink.PLAIN, 100, "check", "light-rider");
        assertThat(whole).anyMatch(line -> line.length() > 120 && line.startsWith("oil.viscosityFactor "));
        assertThat(words(narrow).equals(words(whole))).as("no word is lost").isTrue();
    }
}
