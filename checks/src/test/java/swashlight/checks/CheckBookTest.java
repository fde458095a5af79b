package swashlight.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The books themselves: every row is complete, agrees with itself, and says why it may be trusted how far. */
final class CheckBookTest {

    static Stream<CheckRow> rows() {
        return CheckBook.themes().stream().flatMap(theme -> CheckBook.read(theme).rows().stream());
    }

    /** Against outside: NIST SP 811 (2008), appendix B.8, the absolute values printed there. */
    static Stream<CheckRow> units() {
        return CheckBook.read("units").answered().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("units")
    void unitsAreWorthWhatThePrintedTableSays(CheckRow row) {
        row.assertAgrees(row.si("x"));
    }

    @Test
    void idsAreUniqueOverAllThemes() {
        assertThat(rows().map(CheckRow::id)).doesNotHaveDuplicates().hasSizeGreaterThan(700);
    }

    @Test
    void printedAndExpectedAreTheSameNumber() {
        rows().forEach(row -> assertThat(row.expected())
                .as(row.id())
                .isCloseTo(row.printed().si(), org.assertj.core.data.Percentage.withPercentage(1e-10)));
    }

    @Test
    void inputsAreReadable() {
        rows().filter(row -> !row.inputs().containsKey("grade") && !row.inputs().containsKey("data"))
                .forEach(row -> row.inputs()
                        .keySet()
                        .forEach(name -> assertThat(row.si(name)).isFinite()));
    }

    @Test
    void aToleranceIsHalfTheLastPrintedDigitUnlessItSaysOtherwise() {
        rows().filter(row -> row.why().equals("half of the last printed digit"))
                .forEach(row -> assertThat(row.tolerance())
                        .as(row.id())
                        .isCloseTo(
                                row.printed().halfLastDigit(), org.assertj.core.data.Percentage.withPercentage(1e-6)));
    }

    @Test
    void aRowThatDoesNotReproduceSaysWhatIsPrintedElsewhere() {
        assertThat(rows().filter(row -> row.status() == Status.DISAGREES))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.note()).as(row.id()).isNotBlank());
    }

    @Test
    void everyLaterEntrySpeaksOfARow() {
        List<CheckRow> rows = rows().toList();
        assertThat(CheckBook.later())
                .allSatisfy(entry -> assertThat(rows).as(entry.id()).anyMatch(entry::covers));
    }

    @Test
    void answeredAndWaitingTogetherAreAll() {
        for (String theme : CheckBook.themes()) {
            CheckBook book = CheckBook.read(theme);
            assertThat(book.answered().size() + book.waiting().size())
                    .as(theme)
                    .isEqualTo(book.rows().size());
        }
    }

    @Test
    void aRowThatFailsSaysEverythingNeededToJudgeIt() {
        CheckRow row = CheckBook.read("gap").row("gap-annular/fox").orElseThrow();
        assertThatThrownBy(() -> row.assertAgrees(5e-8))
                .isInstanceOf(AssertionError.class)
                .hasMessageContainingAll("gap-annular/fox", "57.57 mm3/s", "5.0E-8", "allowed", "Fox & McDonald");
        assertThat(row.agrees(Double.NaN)).isFalse();
    }
}
