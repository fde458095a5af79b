package swashlight.drive.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import swashlight.checks.CheckBook;
import swashlight.checks.CheckRow;

/**
 * Checks: every published value of the books in {@code checks} against the law of the drive that speaks of it. Each row names its
 * source, its tolerance and why; rows without a law are listed in {@code later.csv} with the room that will answer them.
 */
final class PublishedValuesTest {
    private static final Map<String, ToDoubleFunction<CheckRow>> LAWS = Laws.byTheme();

    /** Theme {@code units} is answered by the unit table of {@code checks} itself, {@code statistics} by the room findings. */
    private static final List<String> THEMES = CheckBook.themes().stream()
            .filter(theme -> !theme.equals("units") && !theme.equals("statistics"))
            .toList();

    record Case(String theme, CheckRow row) {
        @Override
        public String toString() {
            return row.id();
        }
    }

    static Stream<Case> answered() {
        return THEMES.stream()
                .flatMap(theme -> CheckBook.read(theme).answered().stream().map(row -> new Case(theme, row)));
    }

    static Stream<Case> waiting() {
        return THEMES.stream()
                .flatMap(theme -> CheckBook.read(theme).waiting().stream().map(row -> new Case(theme, row)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("answered")
    void agreesWithItsSource(Case published) {
        published.row().assertAgrees(LAWS.get(published.theme()).applyAsDouble(published.row()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("waiting")
    void isListedAsLaterOnlyWhileNoLawAnswersIt(Case published) {
        ToDoubleFunction<CheckRow> law = LAWS.get(published.theme());
        assertThatThrownBy(() -> law.applyAsDouble(published.row()))
                .as("a law answers it: take it off later.csv")
                .isInstanceOf(NoLaw.class);
    }

    @Test
    void everyThemeHasItsLaws() {
        assertThat(LAWS.keySet()).containsExactlyInAnyOrderElementsOf(THEMES);
        Map<String, String> count = new TreeMap<>();
        for (String theme : THEMES) {
            CheckBook book = CheckBook.read(theme);
            count.put(
                    theme,
                    book.answered().size() + " answered, " + book.waiting().size() + " later");
        }
        System.out.println("published values: " + count);
    }
}
