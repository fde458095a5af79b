package swashlight.findings.insight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.TypicalDrive;

/** Laws of what readings teach, and what the trade has found by trying (common practice, no source). */
final class InsightTest {
    private final Insight insight = new Insight(TypicalDrive.complete("typical", true, Map.of()));
    private final List<Insight.Left> lessons = insight.lessons();

    /** More readings never leave more. */
    @Test
    void moreReadingsLeaveNoMore() {
        for (Insight.Left less : lessons) {
            for (Insight.Left more : lessons) {
                if (more.lesson().labels().containsAll(less.lesson().labels())) {
                    for (int q = 0; q < Wanted.values().length; q++) {
                        assertThat(more.left()[q])
                                .as("%s after %s", Wanted.values()[q], more.lesson())
                                .isLessThanOrEqualTo(less.left()[q] * (1 + 1e-9));
                    }
                }
            }
        }
    }

    /** Pump or motor is not told apart from outside, whatever is read. */
    @Test
    void pumpAndMotorStayTogether() {
        assertThat(left(Lesson.EVERYTHING, Wanted.PUMP_OR_MOTOR))
                .isGreaterThan(0.9 * left(Lesson.NOTHING, Wanted.PUMP_OR_MOTOR));
    }

    /** The run that everyone takes first says next to nothing about leaks; ten minutes with the engine off say most. */
    @Test
    void rollsTeachWhatTheFirstRunDoesNot() {
        double nothing = left(Lesson.NOTHING, Wanted.LEAK_FORWARD);
        assertThat(left(Lesson.LEVEL_COLD, Wanted.LEAK_FORWARD)).isGreaterThan(0.9 * nothing);
        assertThat(left(Lesson.ROLLS_AND_PUSH, Wanted.LEAK_FORWARD)).isLessThan(0.5 * nothing);
        assertThat(left(Lesson.ROLLS_AND_PUSH, Wanted.ASYMMETRY))
                .isLessThan(0.5 * left(Lesson.NOTHING, Wanted.ASYMMETRY));
    }

    /** A quotient of two readings that share what is unknown is better known than the worse of them. */
    @Test
    void quotientsCancelWhatIsShared() {
        for (Insight.Pair pair : insight.pairs()) {
            assertThat(pair.ofQuotient())
                    .as("%s over %s", pair.first(), pair.second())
                    .isLessThan(Math.max(pair.ofFirst(), pair.ofSecond()));
        }
    }

    private double left(Lesson lesson, Wanted wanted) {
        return lessons.get(lesson.ordinal()).left()[wanted.ordinal()];
    }
}
