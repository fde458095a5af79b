package swashlight.desk.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import swashlight.files.machine.CaseFiles;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Causes;
import swashlight.findings.cost.Prices;
import swashlight.findings.finding.CauseFinding;
import swashlight.findings.finding.Finder;
import swashlight.findings.finding.FinderOptions;
import swashlight.findings.finding.Finding;
import swashlight.findings.finding.Found;
import swashlight.findings.finding.SeverityRange;
import swashlight.findings.finding.Verdict;
import swashlight.findings.next.Prospect;
import swashlight.findings.next.Tool;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.tie.Tie;
import swashlight.findings.tie.Ties;

/**
 * The invented cases were computed from a fault with a known severity and from other machines than the typical one; the finding must be true to
 * it: never another action for certain, the true cause never ruled out, its severity in the interval or near it.
 */
final class DemoCasesFoundTest {
    private static final double ROOM = 0.5; // of the nine-in-ten interval, 1: a truth may lie outside one time in ten

    static Stream<Arguments> truths() {
        return Stream.of(
                Arguments.of("rider-fades-uphill", "belt-worn", 0.86, true),
                Arguments.of("rider-slow-since-pushed", "bypass-not-closed", 0.05, true),
                Arguments.of("side-weak-forward", "check-a-leaks", 1.2e-6, true),
                Arguments.of("rider-fades-hot", "motor-face-scored", 170e-6, true),
                Arguments.of("side-hard-to-push", "brake-drags", 38.0, false),
                Arguments.of("loader-slow-with-pallets", "overload", 1.8, true),
                Arguments.of("rider-after-oil-change", "oil-too-thin", 0.4, false),
                Arguments.of("loader-howls-cold", "filter-blocked", 1200.0, true),
                Arguments.of("rider-slow-everywhere", "forward-travel-short", 0.22, true),
                Arguments.of("side-one-odd-reading", "pump-bores-worn", 55e-6, true),
                Arguments.of("loader-worn-pump", "pump-face-worn", 18e-6, false));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("truths")
    void isTrueToWhatItWasComputedFrom(String name, String key, double severity, boolean decided) {
        Finding finding = new Finder(FinderOptions.usual(1)).find(CaseFiles.demo(name));
        Cause truth = Causes.find(key).orElseThrow();
        assertThat(finding.conclusion().action()).isEqualTo(truth.action());
        assertThat(finding.conclusion().verdict()).isEqualTo(decided ? Verdict.THIS : Verdict.CANNOT_TELL);
        CauseFinding found = finding.causes().stream()
                .filter(each -> each.cause().key().equals(key))
                .findFirst()
                .orElseThrow();
        assertThat(found.verdict()).isNotEqualTo(Verdict.NOT_THIS);
        SeverityRange range = found.severity().get(0);
        double room = ROOM * (range.high() - range.low());
        assertThat(severity).isBetween(range.low() - room, range.high() + room);
    }

    /** Nothing much was read: what is left cannot be told apart, it matters, and some reading would tell. */
    @Test
    void tooLittleKnownIsSaidSo() {
        MachineCase machine = CaseFiles.demo("rider-too-little-known");
        Found found = new Finder(FinderOptions.usual(1)).found(machine);
        assertThat(found.finding().conclusion().verdict()).isEqualTo(Verdict.CANNOT_TELL);
        Prices prices = Prices.invented();
        Prospect prospect = Prospect.of(found.belief(), prices, 1);
        List<Tie> ties = new Ties(prospect, prices, Tool.usual(), machine.readings()).of(found.finding());
        assertThat(ties).isNotEmpty();
        Tie tie = ties.get(0);
        assertThat(tie.matters()).isTrue();
        assertThat(tie.separator()).isPresent();
        assertThat(tie.separator().get().right()).isBetween(tie.settled(), 1.0);
    }
}
