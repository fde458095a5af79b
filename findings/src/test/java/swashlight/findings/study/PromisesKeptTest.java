package swashlight.findings.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.TypicalDrive;
import swashlight.findings.cause.Action;
import swashlight.findings.evidence.Inference;
import swashlight.findings.evidence.Weighed;
import swashlight.findings.expect.Comparison;
import swashlight.findings.finding.Finder;
import swashlight.findings.finding.FinderOptions;
import swashlight.findings.reading.MachineCase;

/**
 * Laws: machines drawn from the model are found again as often as the probabilities say, and their severities fall evenly among those drawn.
 * Source of the method: Talts et al. 2018, arXiv 1804.06788. Seed 11, fixed; {@code docs/findings.md} has thousands.
 */
final class PromisesKeptTest {
    private static final int MACHINES = 120;
    private static final List<StudyRow> ROWS = new ArrayList<>();

    @BeforeAll
    static void studyMachines() {
        DriveDescription drive = TypicalDrive.complete("typical", true, Map.of());
        Simulator simulator = new Simulator(drive, 11);
        for (int number = 0; number < MACHINES; number++) {
            Simulated truth = simulator.draw(number);
            MachineCase machine = truth.machine();
            List<Comparison> readings =
                    machine.readings().stream().map(Comparison::of).toList();
            FinderOptions options = FinderOptions.quick(number);
            Weighed alone = new Inference(options.inference()).alone(truth.cause(), drive, readings, 48);
            ROWS.add(StudyRow.of(number, truth, new Finder(options).found(machine), alone));
        }
    }

    @Test
    void theLikeliestActionIsNeededAsOftenAsItSays() {
        StudySummary summary = StudySummary.of(ROWS);
        assertThat(summary.right()).isCloseTo(summary.promised(), within(3 * summary.rightError()));
    }

    @Test
    void severitiesFallEvenly() {
        StudySummary summary = StudySummary.of(ROWS);
        assertThat(summary.ranks().stream().mapToInt(Integer::intValue).sum()).isGreaterThan(100);
        assertThat(summary.square()).isLessThan(StudySummary.squareLimit());
    }

    @Test
    void theLimitIsALibrarys() {
        double library = new ChiSquaredDistribution(19).inverseCumulativeProbability(0.99);
        assertThat(StudySummary.squareLimit()).isCloseTo(library, within(0.03));
    }

    @Test
    void aNumberGivesTheSameMachineEveryTime() {
        DriveDescription drive = TypicalDrive.complete("typical", true, Map.of());
        Simulated one = new Simulator(drive, 5).draw(7);
        Simulated other = new Simulator(drive, 5).draw(7);
        assertThat(one.machine()).isEqualTo(other.machine());
        assertThat(one.severity()).isEqualTo(other.severity());
    }

    /** Ten chances of which just the share promised comes true leave no error; by hand. */
    @Test
    void binsAddUp() {
        List<StudyRow> rows = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            Map<Action, Double> chances = new EnumMap<>(Action.class);
            for (Action action : Action.values()) {
                chances.put(action, 0.0);
            }
            chances.put(Action.RENEW_BELT, 0.7);
            chances.put(Action.FREE_BRAKE, 0.3);
            Action truth = i < 7 ? Action.RENEW_BELT : Action.FREE_BRAKE;
            rows.add(new StudyRow(
                    i, "x", 0.5, 3, chances, List.of(truth), List.of(), 99, Optional.empty(), Optional.empty()));
        }
        StudySummary summary = StudySummary.of(rows);
        assertThat(summary.right()).isCloseTo(0.7, within(1e-12));
        assertThat(summary.promised()).isCloseTo(0.7, within(1e-12));
        assertThat(summary.calibrationError()).isCloseTo(0, within(1e-12));
        assertThat(summary.surprise()).isCloseTo(Math.log(2), within(1e-12));
    }
}
