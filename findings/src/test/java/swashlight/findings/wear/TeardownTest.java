package swashlight.findings.wear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.DriveDescription;
import swashlight.findings.fit.NormalLaw;

/** Verdicts on measured parts. */
class TeardownTest {
    private static final PartLeak LEAK = new PartLeak(70e5, 353.15);
    private static final TeardownOptions OPTIONS = new TeardownOptions(240, 3);
    private static final Requirement CLIMB =
            new Requirement(Requirement.Kind.SPEED, true, 0.85, Math.toRadians(8), 0, 353.15, false);

    private static TeardownFinding finding(DriveDescription drive, Measured... measured) {
        return new Teardown(drive, List.of(measured), DrivePapers.none(), List.of(CLIMB), LEAK, OPTIONS).finding();
    }

    private static Measured read(String key, double value, double error, double biasSpread) {
        WearPart part = Drives.part(key);
        Gauge gauge = new Gauge("test", error, 0, 0, biasSpread);
        return new Measured(
                part, value, gauge, 1, OptionalDouble.empty(), part.kind().form(), 0);
    }

    private static double limit(DriveDescription drive, String key) {
        return LimitTable.of(drive, List.of(CLIMB), LEAK, 1, 3).rows().stream()
                .filter(row -> row.part().key().equals(key))
                .findFirst()
                .orElseThrow()
                .alone()
                .wear()
                .middle();
    }

    @Test
    void newPartsAreUsedAgain() {
        TeardownFinding finding = finding(
                Drives.typical(),
                Measured.usual(Drives.part("pump-piston-play"), 30e-6),
                Measured.usual(Drives.part("motor-flatness"), 3e-6),
                Measured.usual(Drives.part("motor-face-score"), 5e-6));
        assertThat(finding.reaches()).isGreaterThan(0.95);
        assertThat(finding.parts()).allMatch(part -> part.verdict() == PartVerdict.REUSE);
        assertThat(finding.renew()).isEmpty();
        assertThat(finding.unmeasured()).hasSize(WearPart.all().size() - 3);
    }

    @Test
    void aRuinedPartIsReplacedAndTheOthersStay() {
        TeardownFinding finding = finding(
                Drives.typical(),
                Measured.usual(Drives.part("pump-piston-play"), 34e-6),
                Measured.usual(Drives.part("motor-face-score"), 320e-6));
        assertThat(finding.parts())
                .extracting(PartFinding::verdict)
                .containsExactly(PartVerdict.REUSE, PartVerdict.REPLACE_ALONE);
        assertThat(finding.renew()).containsExactly(Drives.part("motor-face-score"));
        assertThat(finding.reaches()).isLessThan(0.05);
        assertThat(finding.reachesAfter()).isGreaterThan(0.9);
    }

    /** Three parts at nine tenths of their limits: each would do, together they do not; one renewed is not always enough, all never needed. */
    @Test
    void partsShareTheAllowance() {
        DriveDescription drive = Drives.exact();
        List<String> keys = List.of("pump-piston-play", "motor-piston-play", "motor-worst-piston");
        Measured[] measured = keys.stream()
                .map(key -> read(key, 0.92 * limit(drive, key), 1e-7, 0))
                .toArray(Measured[]::new);
        TeardownFinding finding = finding(drive, measured);
        assertThat(finding.parts()).allMatch(part -> part.reachesAlone() == 1);
        assertThat(finding.reaches()).isZero();
        assertThat(finding.renew()).hasSize(2); // two at 0.92³ = 0.78 of an allowance each are still too much
        assertThat(finding.parts())
                .filteredOn(part -> finding.renew().contains(part.measured().part()))
                .allMatch(part -> part.verdict() == PartVerdict.REPLACE_TOGETHER);
        assertThat(finding.reachesAfter()).isEqualTo(1);
    }

    /**
     * Closed form: a drive known exactly, one part with error and bias: P(reached) = Φ((limit − middle)/√(σ² + β²)), within three standard
     * errors of so many machines.
     */
    @Test
    void theChanceOfReachingItIsThatOfTheNormalLaw() {
        DriveDescription drive = Drives.exact();
        double limit = limit(drive, "motor-piston-play");
        TeardownOptions many = new TeardownOptions(2000, 5);
        for (double z : new double[] {-1, 0.3, 1.5}) {
            double both = Math.sqrt(4e-6 * 4e-6 + 3e-6 * 3e-6);
            Measured measured = read("motor-piston-play", limit - z * both, 4e-6, 3e-6);
            TeardownFinding finding =
                    new Teardown(drive, List.of(measured), DrivePapers.none(), List.of(CLIMB), LEAK, many).finding();
            double expected = NormalLaw.below(z);
            double error = Math.sqrt(expected * (1 - expected) / 2000);
            assertThat(finding.reaches()).isCloseTo(expected, within(3 * error));
        }
    }

    /** The error of a mean of nine is a third; a bias stays. Two readings of one gauge share it. */
    @Test
    void biasIsNotAveragedAway() {
        Measured once = read("pump-piston-play", 50e-6, 3e-6, 2e-6);
        Measured nine = new Measured(once.part(), 50e-6, once.gauge(), 9, OptionalDouble.empty(), 1, 0);
        assertThat(nine.scatter()).isCloseTo(1e-6, within(1e-15));
        assertThat(nine.uncertainty()).isCloseTo(Math.sqrt(5) * 1e-6, within(1e-12));
        WornMachines crowd =
                new WornMachines(Drives.exact(), List.of(nine, read("motor-piston-play", 50e-6, 1e-9, 2e-6)), 400, 1);
        double across = 0;
        double own = 0;
        for (int m = 0; m < crowd.size(); m++) {
            across += (crowd.wear(m, 0) - 50e-6) * (crowd.wear(m, 1) - 50e-6);
            own += (crowd.wear(m, 1) - 50e-6) * (crowd.wear(m, 1) - 50e-6);
        }
        assertThat(across / own).isCloseTo(1, within(0.1));
    }

    /** Five bores that differ by more than the gauge errs: their own scatter counts; 1, 2, 3, 4, 5 have a standard deviation of √2.5. */
    @Test
    void unevenPartsScatterMoreThanTheGauge() {
        List<Measured> bores = List.of(1, 2, 3, 4, 5).stream()
                .map(step -> read("pump-piston-play", step * 1e-5, 2e-6, 1e-6))
                .toList();
        Measured mean = Measured.mean(bores);
        assertThat(mean.value()).isCloseTo(3e-5, within(1e-15));
        assertThat(mean.scatter()).isCloseTo(Math.sqrt(2.5) * 1e-5 / Math.sqrt(5), within(1e-12));
        assertThat(Measured.mean(bores.subList(0, 1))).isEqualTo(bores.get(0));
    }

    /** A needle that reads two micrometres too little: what is believed lies above what it showed. */
    @Test
    void aStatedBiasIsTakenOff() {
        Measured score = Measured.usual(Drives.part("motor-face-score"), 60e-6);
        assertThat(score.middle()).isCloseTo(62e-6, within(1e-12));
    }

    @Test
    void aCoarseGaugeCannotTellAndAFineOneCan() {
        DriveDescription drive = Drives.exact();
        double limit = limit(drive, "motor-flatness");
        assertThat(verdict(finding(drive, read("motor-flatness", limit - 4e-6, 10e-6, 0))))
                .isEqualTo(PartVerdict.CANNOT_TELL);
        assertThat(verdict(finding(drive, read("motor-flatness", limit - 4e-6, 1e-6, 0))))
                .isEqualTo(PartVerdict.REUSE);
        assertThat(verdict(finding(drive, read("motor-flatness", limit + 4e-6, 1e-6, 0))))
                .isEqualTo(PartVerdict.REPLACE_ALONE);
    }

    private static PartVerdict verdict(TeardownFinding finding) {
        return finding.parts().get(0).verdict();
    }

    /** The settled drive asks for no spring force, so that only the drive's papers can have a limit. */
    @Test
    void aSpringIsJudgedByItsPapersOrNotAtAll() {
        WearPart spring = Drives.part("pump-spring");
        Measured short_ = Measured.usual(spring, 0.6e-3);
        assertThat(verdict(finding(Drives.typical(), short_))).isEqualTo(PartVerdict.NO_LAW);
        PartFacts facts = new PartFacts(
                OptionalDouble.of(0.8e-3),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                "invented");
        for (double shortening : new double[] {0.4e-3, 1.2e-3}) {
            TeardownFinding finding = new Teardown(
                            Drives.typical(),
                            List.of(Measured.usual(spring, shortening)),
                            new DrivePapers(Map.of(spring, facts), List.of()),
                            List.of(CLIMB),
                            LEAK,
                            OPTIONS)
                    .finding();
            assertThat(verdict(finding))
                    .isEqualTo(shortening < 0.8e-3 ? PartVerdict.REUSE_AS_STATED : PartVerdict.REPLACE_AS_STATED);
        }
    }

    /** What not even new parts reach is not laid at a worn part's door. */
    @Test
    void beyondEvenNewParts() {
        Requirement race = new Requirement(Requirement.Kind.SPEED, true, 1.0, Math.toRadians(8), 0, 353.15, false);
        Measured worn = Measured.usual(Drives.part("motor-face-score"), 150e-6);
        TeardownFinding finding = new Teardown(
                        Drives.typical(), List.of(worn), DrivePapers.none(), List.of(race), LEAK, OPTIONS)
                .finding();
        assertThat(finding.reachesNew()).isLessThan(0.9);
        assertThat(verdict(finding)).isEqualTo(PartVerdict.BEYOND);
    }

    /** Same question, same answer; costs are those of the part alone. */
    @Test
    void sameQuestionSameAnswer() {
        Measured worn = Measured.usual(Drives.part("motor-face-score"), 150e-6);
        TeardownFinding first = finding(Drives.typical(), worn);
        TeardownFinding second = finding(Drives.typical(), worn);
        assertThat(first.parts()).isEqualTo(second.parts());
        assertThat(first.parts().get(0).cost().middle()).isBetween(0.01, 0.3);
    }
}
