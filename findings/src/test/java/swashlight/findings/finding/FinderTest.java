package swashlight.findings.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import swashlight.findings.cause.Action;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Causes;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;

/** Laws of a finding: what any honest answer must obey. Machines are drawn from the model, seeds fixed. */
final class FinderTest {
    private static final int ENGINE = 3; // its place among the workshop's readings

    private final Finder finder = new Finder(FinderOptions.usual(1));

    @Test
    void probabilitiesSumToOneAndEveryCauseStandsOnce() {
        Finding finding = finder.find(machine("belt-worn", 0.7, 1));
        assertThat(finding.causes()).hasSize(Causes.all().size());
        assertThat(finding.causes().stream()
                        .mapToDouble(CauseFinding::probability)
                        .sum())
                .isCloseTo(1, within(1e-9));
        for (ActionFinding action : finding.actions()) {
            double sum = action.causes().stream()
                    .mapToDouble(CauseFinding::probability)
                    .sum();
            assertThat(action.probability()).isCloseTo(sum, within(1e-9)).isBetween(0.0, 1 + 1e-9);
        }
    }

    @Test
    void sameCaseSameSeedSameAnswer() {
        MachineCase machine = machine("pump-face-worn", 25e-6, 2);
        assertThat(new Finder(FinderOptions.usual(1)).find(machine)).isEqualTo(finder.find(machine));
    }

    @Test
    void orderAndSeedMatterNoMoreThanTheErrorSays() {
        MachineCase machine = machine("forward-travel-short", 0.2, 3);
        List<Reading> turned = new ArrayList<>(machine.readings());
        Collections.reverse(turned);
        Finding one = finder.find(machine);
        Finding other = new Finder(FinderOptions.usual(2)).find(Workshop.of(turned));
        for (ActionFinding action : one.actions()) {
            ActionFinding again = other.actions().stream()
                    .filter(each -> each.action() == action.action())
                    .findFirst()
                    .orElseThrow();
            double error = Math.sqrt(action.error() * action.error() + again.error() * again.error());
            assertThat(again.probability())
                    .as(action.action().name())
                    .isCloseTo(action.probability(), within(5 * error + 0.01));
        }
    }

    @Test
    void noReadingsLeaveTheOddsAsTheyWere() {
        Finding finding = finder.find(Workshop.of(List.of()));
        assertThat(finding.conclusion().verdict()).isEqualTo(Verdict.CANNOT_TELL);
        for (CauseFinding cause : finding.causes()) {
            assertThat(cause.probability()).isCloseTo(cause.prior(), within(1e-6));
        }
        assertThat(finding.worst()).isEmpty();
    }

    @Test
    void aClearFaultIsFoundWithItsSeverity() {
        Finding finding = finder.find(machine("forward-travel-short", 0.3, 4));
        assertThat(finding.conclusion().verdict()).isEqualTo(Verdict.THIS);
        assertThat(finding.conclusion().action()).isEqualTo(Action.ADJUST_CONTROL);
        SeverityRange range = finding.causes().get(0).severity().get(0);
        assertThat(0.3).isBetween(range.low() - 0.05, range.high() + 0.05);
    }

    /** A sound machine is not called broken. */
    @Test
    void aSoundMachineStaysPossible() {
        Finding finding = finder.find(machine(Cause.HEALTHY, 0, 5));
        assertThat(finding.conclusion().verdict()).isEqualTo(Verdict.CANNOT_TELL);
        CauseFinding healthy = finding.causes().stream()
                .filter(each -> each.cause().key().equals(Cause.HEALTHY))
                .findFirst()
                .orElseThrow();
        assertThat(healthy.probability()).isGreaterThan(healthy.prior());
    }

    /** The engine's speed spoilt by twenty of its errors while shaft and ground tell another: it is named, and does not decide. */
    @Test
    void aSpoiltReadingIsNamedAndDoesNotDecide() {
        MachineCase machine = machine("forward-travel-short", 0.3, 4);
        List<Reading> spoilt = new ArrayList<>(machine.readings());
        Reading first = spoilt.get(ENGINE);
        double error = first.standardError();
        spoilt.set(
                ENGINE,
                new Reading(
                        first.label(),
                        first.kind(),
                        first.value() + 20 * error,
                        OptionalDouble.of(error),
                        first.setup()));
        Finding finding = finder.find(Workshop.of(spoilt));
        WorstFit worst = finding.worst().orElseThrow();
        assertThat(worst.reading().label()).isEqualTo(first.label());
        assertThat(worst.distrust()).isTrue();
        assertThat(finding.conclusion().action()).isEqualTo(Action.ADJUST_CONTROL);
    }

    private static MachineCase machine(String key, double severity, long seed) {
        Cause cause = Causes.find(key).orElseThrow();
        return Workshop.machine(cause, new double[] {severity}, new Random(seed))
                .orElseThrow();
    }
}
