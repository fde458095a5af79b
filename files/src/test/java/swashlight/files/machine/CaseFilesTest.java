package swashlight.files.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.InputState;
import swashlight.drive.steady.WheelState;
import swashlight.files.demo.DemoShelf;
import swashlight.files.document.FileComplaint;
import swashlight.files.document.InputFault;
import swashlight.files.document.Source;
import swashlight.files.document.Syntax;
import swashlight.files.unit.UnitSystem;
import swashlight.findings.reading.Look;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.reading.Setup;

/** Machine cases and duties in files. */
final class CaseFilesTest {
    private static final String HEAD = "drive: demo:light-rider\nreadings:\n";

    @Test
    void readingsInheritTheUsualConditions() {
        MachineCase found = open("""
                drive: demo:light-rider
                usual: {direction: forward, oilTemperature: 80 ± 3 °C, slope: 10 %, throttle: 90 %}
                readings:
                  - runTime: 11.2 ± 0.2 s
                    distance: 20 m
                  - label: back
                    runTime: 20 s
                    error: 3 %
                    direction: reverse
                    slope: -10 %
                  - rollTime: 9 s
                    direction: reverse
                  - partDimension: 31 µm
                    part: pump.boreClearance
                seen: [oilDark]
                notSeen: [oilFoamy]
                """);
        Reading first = found.readings().get(0);
        assertThat(first.kind()).isEqualTo(ReadingKind.RUN_TIME);
        assertThat(first.value()).isEqualTo(11.2);
        assertThat(first.standardError()).isCloseTo(0.2, within(1e-15));
        assertThat(first.label()).isEqualTo("runTime 1");
        Setup setup = first.setup();
        assertThat(setup.stroke()).hasValue(1);
        assertThat(setup.throttle()).hasValue(0.9);
        assertThat(setup.oilTemperature()).hasValue(353.15);
        assertThat(setup.temperatureError()).hasValue(3);
        assertThat(setup.slope().orElseThrow()).isCloseTo(0.09966865, within(1e-8)); // atan 0.1
        assertThat(setup.distance()).hasValue(20);
        Reading back = found.readings().get(1);
        assertThat(back.setup().stroke()).hasValue(-1);
        assertThat(back.standardError()).isCloseTo(0.6, within(1e-12));
        assertThat(back.setup().distance()).isEqualTo(OptionalDouble.empty());
        assertThat(found.readings().get(2).setup().backwards()).isTrue();
        assertThat(found.readings().get(2).setup().stroke()).isEmpty();
        assertThat(found.readings().get(3).value()).isEqualTo(31e-6);
        assertThat(found.seen()).containsExactly(Look.OIL_DARK);
        assertThat(found.notSeen()).containsExactly(Look.OIL_FOAMY);
    }

    @Test
    void aDriveMayStandInTheCaseOrBesideIt(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("mine.yaml"), "name: mine\npump: {displacement: 8 cm3/rev}\n");
        Files.writeString(folder.resolve("case.yaml"), "drive: mine.yaml\n");
        assertThat(CaseFiles.read(folder.resolve("case.yaml")).drive().name()).isEqualTo("mine");
        MachineCase inline = open("drive:\n  name: yours\n  pump: {displacement: 8 cm3/rev}\n");
        assertThat(inline.drive().name()).isEqualTo("yours");
        Files.writeString(folder.resolve("bad.yaml"), "pump: {displacement: 8}\n");
        Files.writeString(folder.resolve("case2.yaml"), "drive: bad.yaml\nreadings: 3\n");
        InputFault fault = catchThrowableOfType(InputFault.class, () -> CaseFiles.read(folder.resolve("case2.yaml")));
        assertThat(fault.complaints())
                .extracting(FileComplaint::key)
                .containsExactlyInAnyOrder("no-unit", "not-a-list");
        assertThat(fault.complaints()).anyMatch(complaint -> complaint.file().endsWith("bad.yaml"));
    }

    @ParameterizedTest
    @EnumSource(Syntax.class)
    void aWrittenCaseReadsBackToTheLastBit(Syntax syntax) {
        for (String name : DemoShelf.cases()) {
            CaseFile file = CaseFiles.open(DemoShelf.machineCase(name));
            for (UnitSystem system : UnitSystem.values()) {
                String text = CaseFiles.write(file, syntax, system);
                String ending = syntax == Syntax.JSON ? ".json" : ".yaml";
                assertThat(CaseFiles.open(Source.of(name + ending, text))).isEqualTo(file);
            }
        }
    }

    /** By hand: 3100 − 25 rpm; √(9.3² + 4²) of the tachometer's usual 0.3 % at 3100 rpm and of its bias; 353 − 2 K; error kept. */
    @Test
    void biasIsTakenOffAndItsDoubtAddsToTheError() {
        MachineCase found = open(HEAD + """
                  - {inputSpeed: 3100 rpm, bias: 25 ± 4 rpm}
                  - {warmTemperature: 80 °C, since: 30 min, bias: 2 ± 1 K, error: 2 K}
                  - {pushForce: 120 N, error: 9 N, bias: -6 N}
                """);
        double rpm = Math.PI / 30;
        assertThat(found.readings().get(0).value()).isCloseTo(3075 * rpm, within(1e-9));
        assertThat(found.readings().get(0).standardError() / rpm)
                .isCloseTo(Math.sqrt(9.3 * 9.3 + 16 + Math.pow(0.3 / rpm, 2)), within(1e-6));
        assertThat(found.readings().get(1).value()).isCloseTo(351.15, within(1e-9));
        assertThat(found.readings().get(1).standardError()).isCloseTo(Math.sqrt(5), within(1e-12));
        assertThat(found.readings().get(2).value()).isCloseTo(126, within(1e-12));
        assertThat(found.readings().get(2).error()).hasValue(9);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    - {runTime: 9 s, bias: 9 s}            | out-of-range  | readings[1].bias          | too much
                    - {runTime: 9 s, bias: 3 rpm}          | wrong-dimension | readings[1].bias        | s, min
                    - runTim: 9 s                          | no-kind       | readings[1]               | runTime
                    - runTim: 9 s                          | unknown-key   | readings[1].runTim        | did you mean runTime?
                    - {runTime: 9 s, axleSpeed: 70 rpm}    | two-kinds     | readings[1]               | new item
                    - runTime: 9                           | no-unit       | readings[1].runTime       | s, min
                    - runTime: 9 s bis 10 s                | unknown-unit  | readings[1].runTime       | s, min
                    - {runTime: 9 s, slope: 80 deg}        | out-of-range  | readings[1].slope         | 40.11 deg
                    - {runTime: 9 s, oilTemperature: 80 F, error: 0 s} | bad-spread | readings[1].runTime | standard deviation
                    - {runTime: 9 ± 1 s, error: 1 s}       | twice         | readings[1].error         | one of the two
                    - {runTime: 9 s, direction: up}        | unknown-word  | readings[1].direction     | forward
                    - {runTime: 9 s, stroke: -50 %, direction: forward} | contradiction | readings[1].direction | leave
                    - {runTime: 9 s, lifted: true, held: true} | contradiction | readings[1].held       | leave
                    - partDimension: 9 µm                  | missing       | readings[1].partDimension | part:
                    - {partDimension: 9 µm, part: pump.boreClearnce} | unknown-part | readings[1].part | pump.boreClearance?
                    - {partDimension: 9 bar, part: pump.boreClearance} | wrong-dimension | readings[1].partDimension | µm
                    - {highPressure: 200 kPa, error: 5 m}  | wrong-dimension | readings[1].error       | bar
                    - 7                                    | not-keys      | readings[1]               | runTime
                    """)
    void aFaultyReadingSaysWhatWhereGivenAndRight(String item, String key, String field, String right) {
        List<FileComplaint> complaints = complaints(HEAD + "  " + item + "\n");
        assertThat(complaints).as(complaints.toString()).anySatisfy(complaint -> {
            assertThat(complaint.key()).isEqualTo(key);
            assertThat(complaint.line()).isEqualTo(3);
            assertThat(complaint.field()).isEqualTo(field);
            assertThat(complaint.right()).contains(right);
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    name: x                        | missing       | drive
                    drive: demo:light-ridr         | not-found     | drive
                    drive: other.yaml              | no-file-here  | drive
                    drive: /etc/passwd             | no-file-here  | drive
                    drive: [1]                     | not-a-value   | drive
                    seen: [oilDarc]                | unknown-word  | seen[1].look
                    seen: oilDark                  | not-a-list    | seen
                    usual: {slope: 10}             | no-unit       | usual.slope
                    usual: {runTime: 10 s}         | unknown-key   | usual.runTime
                    """)
    void aFaultyCaseSaysWhere(String line, String key, String field) {
        assertThat(complaints(line + "\n")).anySatisfy(complaint -> {
            assertThat(complaint.key()).isEqualTo(key);
            assertThat(complaint.field()).isEqualTo(field);
        });
    }

    @Test
    void aFaultInTheUsualConditionsIsToldOnce() {
        List<FileComplaint> complaints = complaints("""
                drive: demo:light-rider
                usual: {slope: 10}
                readings:
                  - runTime: 9 s
                  - runTime: 10 s
                """);
        assertThat(complaints).hasSize(1);
    }

    @Test
    void aDutyIsRead() {
        Duty duty = DutyFiles.open(Source.of("duty.yaml", """
                format: 1
                kind: duty
                throttle: 80 %
                stroke: 50 %
                direction: reverse
                oilTemperature: 20 °C
                slope: -5 deg
                pull: 200 N
                """));
        assertThat(duty.input()).isEqualTo(new InputState.Running(0.8));
        assertThat(duty.stroke()).isEqualTo(-0.5);
        assertThat(duty.oilTemperature()).isEqualTo(293.15);
        assertThat(duty.wheels()).isEqualTo(new WheelState.Ground(Math.toRadians(-5), 200));
        Duty bench = DutyFiles.open(Source.of("duty.json", "{\"inputSpeed\": \"3000 rpm\", \"wheels\": \"lifted\"}"));
        assertThat(bench.input()).isEqualTo(new InputState.Fixed(3000 * Math.PI / 30));
        assertThat(bench.wheels()).isEqualTo(new WheelState.Lifted());
        InputFault fault = catchThrowableOfType(
                InputFault.class,
                () -> DutyFiles.open(
                        Source.of("duty.yaml", "engine: off\nthrottle: 80 %\nwheels: held\nslope: 3 deg\n")));
        assertThat(fault.complaints()).extracting(FileComplaint::key).containsExactly("contradiction", "contradiction");
    }

    private static MachineCase open(String yaml) {
        return CaseFiles.open(Source.of("case.yaml", yaml)).machineCase();
    }

    private static List<FileComplaint> complaints(String yaml) {
        return catchThrowableOfType(InputFault.class, () -> open(yaml)).complaints();
    }
}
