package swashlight.files.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.fault.Faults;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.Event;
import swashlight.drive.steady.SteadyAnswer;
import swashlight.drive.steady.SteadyDrive;
import swashlight.drive.steady.SteadyPoint;
import swashlight.files.drive.DriveFiles;
import swashlight.files.machine.CaseFiles;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.reading.Setup;

/** The demo drives behave like machines of their kind, and the demo cases tell of the machine they were computed from. */
final class DemoCasesTest {
    private static final double ODD = 4; // standard deviations: one in 16 000

    static Stream<String> cases() {
        return DemoShelf.cases().stream();
    }

    static Stream<String> allCases() {
        return Stream.concat(cases(), DemoShelf.afterwards().stream());
    }

    /** A reading and how far it is from what the true machine would give, in standard deviations. */
    record Distance(String label, double deviations) {}

    @ParameterizedTest
    @MethodSource("allCases")
    void readingsAreThoseOfTheTrueMachine(String name) {
        MachineCase machineCase = CaseFiles.demo(name);
        Truth truth = Truth.of(name);
        List<Distance> distances = distances(machineCase, truth.machine(machineCase.drive()));
        assertThat(distances)
                .filteredOn(distance -> !truth.wrong().contains(distance.label()))
                .allSatisfy(distance ->
                        assertThat(distance.deviations()).as(distance.label()).isLessThan(ODD));
        assertThat(distances)
                .filteredOn(distance -> truth.wrong().contains(distance.label()))
                .allSatisfy(distance ->
                        assertThat(distance.deviations()).as(distance.label()).isGreaterThan(2 * ODD));
        assertThat(machineCase.readings()).extracting(Reading::label).containsAll(truth.wrong());
    }

    /** What is broken shows: some reading is far from what the machine's papers promise. One case is too poor for that. */
    @ParameterizedTest
    @MethodSource("cases")
    void whatIsWrongCanBeSeen(String name) {
        MachineCase machineCase = CaseFiles.demo(name);
        double furthest = distances(machineCase, machineCase.drive()).stream()
                .mapToDouble(Distance::deviations)
                .max()
                .orElseThrow();
        if (name.equals("rider-too-little-known")) {
            assertThat(furthest).isLessThan(2);
        } else {
            assertThat(furthest).isGreaterThan(ODD);
        }
    }

    @ParameterizedTest
    @MethodSource("allCases")
    void everythingIsInventedAndSaysSo(String name) {
        MachineCase machineCase = CaseFiles.demo(name);
        assertThat(machineCase.invented()).isTrue();
        assertThat(machineCase.drive().invented()).isTrue();
        assertThat(machineCase.complaint()).isNotBlank();
        Set<String> labels = new HashSet<>();
        assertThat(machineCase.readings()).allMatch(reading -> labels.add(reading.label()));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theCaseDoesNotTellItsCause(String name) {
        String text = DemoShelf.machineCase(name).text();
        assertThat(Faults.all()).noneMatch(fault -> text.contains(fault.key()));
    }

    @Test
    void togetherTheyShowManyPlacesAndKinds() {
        Set<Object> places = cases().flatMap(name -> Truth.of(name).rows().stream())
                .flatMap(row -> Faults.find(row.get("what")).stream())
                .map(fault -> (Object) fault.place())
                .collect(Collectors.toSet());
        assertThat(places).hasSizeGreaterThanOrEqualTo(7);
        Set<ReadingKind> kinds = cases().flatMap(name -> CaseFiles.demo(name).readings().stream())
                .map(Reading::kind)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(ReadingKind.class)));
        assertThat(kinds).hasSizeGreaterThanOrEqualTo(10);
    }

    /** Speed on level ground, km/h: common practice for each class of machine. */
    @ParameterizedTest
    @ValueSource(strings = {"light-rider 6 9", "zero-turn-side 10 18", "small-loader 6 15"})
    void drivesRunAtTheSpeedOfTheirClass(String row) {
        String[] parts = row.split(" ");
        SteadyPoint level = point(parts[0], 20, 0);
        assertThat(level.groundSpeed() * 3.6).isBetween(Double.parseDouble(parts[1]), Double.parseDouble(parts[2]));
        SteadyPoint climb = point(parts[0], 70, 10);
        assertThat(climb.pressureA()).isBetween(25e5, 140e5);
        assertThat(climb.groundSpeed()).isBetween(0.85 * level.groundSpeed(), level.groundSpeed());
        for (double slope : new double[] {0, 5, 10, 15}) {
            assertThat(point(parts[0], 20, slope).events())
                    .doesNotContain(
                            Event.ENGINE_STALLS,
                            Event.BELT_SLIPS,
                            Event.SIDE_A_STARVES,
                            Event.SIDE_B_STARVES,
                            Event.RELIEF_OPENS,
                            Event.WHEELS_SPIN);
        }
    }

    private static SteadyPoint point(String drive, double celsius, double degrees) {
        DriveDescription description = DriveFiles.demo(drive);
        SteadyAnswer answer =
                new SteadyDrive(description).answer(Duty.driving(1, 273.15 + celsius, Math.toRadians(degrees)));
        assertThat(answer).isInstanceOf(SteadyAnswer.Converged.class);
        return answer.point();
    }

    private static List<Distance> distances(MachineCase machineCase, DriveDescription machine) {
        Witness witness = new Witness(machine);
        return machineCase.readings().stream()
                .map(reading -> new Distance(reading.label(), distance(witness, reading)))
                .toList();
    }

    /** Error of the instrument and of the stated conditions together. */
    private static double distance(Witness witness, Reading reading) {
        Setup setup = reading.setup();
        double expected = witness.reads(reading.kind(), setup);
        double hotter = witness.reads(reading.kind(), DemoConditions.hotter(setup)) - expected;
        double steeper = witness.reads(reading.kind(), DemoConditions.steeper(setup)) - expected;
        double error = reading.standardError();
        return Math.abs(reading.value() - expected) / Math.sqrt(error * error + hotter * hotter + steeper * steeper);
    }
}
