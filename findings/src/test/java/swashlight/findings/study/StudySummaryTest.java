package swashlight.findings.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;
import swashlight.findings.cause.Action;
import swashlight.findings.study.Spending.By;

/** Laws of the adding up: honest chances pass, and those who promise too much, too little or too narrow are caught. Seed 3, fixed. */
final class StudySummaryTest {
    private static final int MACHINES = 5000;

    @Test
    void honestChancesPass() {
        StudySummary summary = StudySummary.of(rows(1, 1));
        assertThat(summary.calibrationError()).isLessThan(0.02);
        assertThat(summary.calibrationError()).isCloseTo(summary.luck(), within(0.7 * summary.luck()));
        assertThat(summary.right()).isCloseTo(summary.promised(), within(3 * summary.rightError()));
        assertThat(summary.square()).isLessThan(StudySummary.squareLimit());
    }

    @Test
    void whoPromisesTooMuchIsCaught() {
        StudySummary summary = StudySummary.of(rows(1.3, 1));
        assertThat(summary.calibrationError()).isGreaterThan(0.02);
        assertThat(summary.promised() - summary.right()).isGreaterThan(3 * summary.rightError());
    }

    @Test
    void whoPromisesTooLittleIsCaught() {
        StudySummary summary = StudySummary.of(rows(0.75, 1));
        assertThat(summary.calibrationError()).isGreaterThan(0.02);
        assertThat(summary.right() - summary.promised()).isGreaterThan(3 * summary.rightError());
    }

    @Test
    void tooNarrowAndTooWideIntervalsAreCaught() {
        assertThat(StudySummary.of(rows(1, 1.15)).square()).isGreaterThan(StudySummary.squareLimit());
        assertThat(StudySummary.of(rows(1, 0.85)).square()).isGreaterThan(StudySummary.squareLimit());
    }

    /** The normal band against a library's binomial law. */
    @Test
    void theBandHoldsNineteenInTwenty() {
        StudySummary summary = StudySummary.of(rows(1, 1));
        BinomialDistribution law = new BinomialDistribution(MACHINES, 0.05);
        int low = (int) Math.ceil(summary.evenCount() - summary.evenBand());
        int high = (int) Math.floor(summary.evenCount() + summary.evenBand());
        assertThat(law.cumulativeProbability(high) - law.cumulativeProbability(low - 1))
                .isCloseTo(0.95, within(0.01));
        assertThat(summary.ranks())
                .filteredOn(count -> Math.abs(count - summary.evenCount()) > summary.evenBand())
                .hasSizeLessThan(5);
    }

    /** Two machines by hand: 100 and 300 by money, 200 and 600 by the chart. */
    @Test
    void costsAddUp() {
        List<StudyRow> rows = new ArrayList<>();
        for (double scale : new double[] {1, 3}) {
            Bills bills = new Bills("a", "b", 150, 100 * scale, 120 * scale, 500, 200 * scale, 50 * scale);
            rows.add(row(0, chances(0.6), Action.RENEW_BELT, 0.5, Optional.empty(), Optional.of(bills)));
        }
        Spending spending = StudySummary.of(rows).spending().orElseThrow();
        assertThat(spending.machines()).isEqualTo(2);
        assertThat(spending.promised()).isEqualTo(150);
        assertThat(spending.share(By.MONEY).mean()).isEqualTo(200);
        assertThat(spending.share(By.MONEY).error()).isCloseTo(100, within(1e-9));
        assertThat(spending.share(By.MONEY).dearer()).isZero();
        assertThat(spending.share(By.CHART).dearer()).isEqualTo(200);
        assertThat(spending.share(By.CHART).dearerError()).isCloseTo(100, within(1e-9));
        assertThat(spending.share(By.TRUTH).dearer()).isEqualTo(-100);
    }

    /** A loud one caught, a loud one missed for an honest reading, a quiet one, and a machine without. */
    @Test
    void wildReadingsAreCounted() {
        List<Slips> slips = List.of(
                new Slips(Map.of(0, 12.0, 1, 0.5), OptionalInt.of(0)),
                new Slips(Map.of(3, -7.0), OptionalInt.of(2)),
                new Slips(Map.of(1, 2.0), OptionalInt.of(1)),
                new Slips(Map.of(), OptionalInt.empty()));
        List<StudyRow> rows = slips.stream()
                .map(each -> row(0, chances(0.6), Action.RENEW_BELT, 0.5, Optional.of(each), Optional.empty()))
                .toList();
        assertThat(StudySummary.of(rows).wild()).contains(new WildCount(4, 4, 2, 2, 1, 3, 2));
    }

    /** Machines whose action comes true with a chance between 0.5 and 0.97 and is told with its odds to a power; ranks pushed out by a factor. */
    private static List<StudyRow> rows(double power, double narrow) {
        Random chance = new Random(3);
        List<StudyRow> rows = new ArrayList<>();
        for (int i = 0; i < MACHINES; i++) {
            double honest = 0.5 + 0.47 * chance.nextDouble();
            double odds = Math.pow(honest / (1 - honest), power);
            Action truth = chance.nextDouble() < honest ? Action.RENEW_BELT : Action.FREE_BRAKE;
            double rank = 0.5 + narrow * (chance.nextDouble() - 0.5);
            double inside = Math.max(0, Math.min(1, rank));
            rows.add(row(i, chances(odds / (1 + odds)), truth, inside, Optional.empty(), Optional.empty()));
        }
        return rows;
    }

    private static StudyRow row(
            int number,
            Map<Action, Double> chances,
            Action truth,
            double rank,
            Optional<Slips> slips,
            Optional<Bills> bills) {
        return new StudyRow(number, "x", 0.5, 3, chances, List.of(truth), List.of(rank), 99, slips, bills);
    }

    /** A chance for the belt; the rest spread over all others, so that the belt is always likeliest. */
    private static Map<Action, Double> chances(double belt) {
        Map<Action, Double> chances = new EnumMap<>(Action.class);
        for (Action action : Action.values()) {
            chances.put(action, (1 - belt) / (Action.values().length - 1));
        }
        chances.put(Action.RENEW_BELT, belt);
        return chances;
    }
}
