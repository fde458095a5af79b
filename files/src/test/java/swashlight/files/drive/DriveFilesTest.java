package swashlight.files.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.OilParameter;
import swashlight.drive.description.Origin;
import swashlight.drive.description.OutputParameter;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.files.document.FileComplaint;
import swashlight.files.document.InputFault;
import swashlight.files.document.Source;
import swashlight.files.document.Syntax;
import swashlight.files.unit.UnitSystem;

/** Drives in files. */
final class DriveFilesTest {
    private static final long SEED = 7;

    @Test
    void aNameplateIsCompleted() {
        DriveDescription drive = DriveFiles.demo("light-rider");
        assertThat(drive.invented()).isTrue();
        Quantity displacement = drive.quantity(UnitParameter.pump(UnitProperty.DISPLACEMENT));
        assertThat(displacement).isEqualTo(Quantity.given(7.1e-6));
        assertThat(drive.quantity(OutputParameter.MACHINE_MASS)).isEqualTo(Quantity.given(300, 12));
        Quantity viscosity = drive.quantity(OilParameter.VISCOSITY40);
        assertThat(viscosity.origin()).isEqualTo(Origin.TYPICAL);
        assertThat(viscosity.spread()).isPositive();
        assertThat(DriveLevel.of(drive)).isEqualTo(DriveLevel.NAMEPLATE);
    }

    @ParameterizedTest
    @EnumSource(Syntax.class)
    void aWrittenDriveReadsBackToTheLastBit(Syntax syntax) {
        Random random = new Random(SEED);
        for (int i = 0; i < 20; i++) {
            DriveFile file = shaken(DriveFiles.demo("light-rider"), random);
            for (UnitSystem system : UnitSystem.values()) {
                String text = DriveFiles.write(file, syntax, system);
                DriveFile back =
                        DriveFiles.open(Source.of("back." + syntax.name().toLowerCase(java.util.Locale.ROOT), text));
                assertThat(back).isEqualTo(file);
            }
        }
    }

    /** Every value moved a little with awkward digits, origins mixed, remarks with awkward letters. */
    private static DriveFile shaken(DriveDescription drive, Random random) {
        Map<Parameter, Quantity> changes = new HashMap<>();
        for (Parameter parameter : Parameters.all()) {
            Quantity before = drive.quantity(parameter);
            boolean free = parameter.key().matches("(oil|loop|makeUp|heat|machine|brake)\\..*");
            double value = free ? before.value() * (1 + 1e-3 * random.nextDouble()) : before.value();
            Origin origin = Origin.values()[random.nextInt(3)];
            double spread = random.nextBoolean() ? 0 : Math.abs(value) * random.nextDouble();
            changes.put(parameter, new Quantity(Math.min(parameter.high(), value), spread, origin));
        }
        Map<Parameter, String> notes = Map.of(
                OilParameter.WATER, "quote \" and \\ and : # {a}, [b]\nnew line\ttab \u0007 é ‘ ’ \u2028 🙂",
                OutputParameter.MACHINE_MASS, " spaces ");
        return new DriveFile(drive.with(changes).named("na: me # \"x\""), "about\n  this", notes);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    pump: {boreClearance: 70 mm}              | out-of-range   | 1 | pump.boreClearance  | Did you mean 70 µm?
                    pump: {boreClearnce: 70 µm}               | unknown-key    | 1 | pump.boreClearnce   | did you mean boreClearance?
                    displacement: 7.1 cm3/rev                 | unknown-key    | 1 | displacement        | pump.displacement or motor.displacement
                    pump: {mass: 300 kg}                      | unknown-key    | 1 | pump.mass           | machine.mass
                    pump: {displacement: 7.1}                 | no-unit        | 1 | pump.displacement   | cm3/rev
                    pump: {displacement: 7.1 mm}              | wrong-dimension| 1 | pump.displacement   | cm3/rev
                    pump: {displacement: '7,1 cm3/rev'}       | decimal-comma  | 1 | pump.displacement   | 7.1
                    pump: {displacement: [1, 2]}              | not-a-value    | 1 | pump.displacement   | same line
                    pump: 7                                   | not-keys       | 1 | pump                | key: value
                    oil: {grade: SAE 20W-60}                  | unknown-word   | 1 | oil.grade           | did you mean SAE 20W-50?
                    oil: {viscosity40: 10 cSt, viscosity100: 20 cSt} | viscosity-rises | 1 | oil.viscosity100 | between
                    pump: {pistonCount: 5.5}                  | whole-number   | 1 | pump.pistonCount    | 5
                    pump: {displacement: 9 cm3/rev, pistonCount: 5, pistonDiameter: 16 mm, pitchRadius: 21.5 mm, fullSwashAngle: 9.24 deg} | displacement-geometry | 1 | pump.displacement | leave out one of them
                    format: 99                                | unknown-format | 1 | format              | format 1
                    kind: case                                | wrong-kind     | 1 | kind                | drive
                    level: engineering                        | level-lacks    | 1 | level               | pump.pistonCount
                    oil: {water: {spread: 1}}                 | missing        | 1 | oil.water.value     | value
                    oil: {density15: {value: 870 kg/m3, spread: -1 kg/m3}} | bad-spread | 1 | oil.density15.spread | positive
                    oil: {density15: 870 ± 900000000 kg/m3}   | bad-spread     | 1 | oil.density15       | positive
                    pump: &a {displacement: 7 cm3/rev}        | yaml-trick     | 1 |                     | write the value out
                    pump: {displacement: 7 cm3/rev            | not-yaml       | 1 |                     |
                    just words                                | not-keys       | 1 |                     | key: value
                    name: x                                   | says-nothing   | 1 |                     | pump.displacement
                    """)
    void aFaultSaysWhatWhereGivenAndRight(String text, String key, int line, String field, String right) {
        String yaml = key.equals("level-lacks") ? text + "\noil: {water: 0}" : text;
        FileComplaint complaint = complaints(yaml).stream()
                .filter(found -> found.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + key + " in " + complaints(yaml)));
        assertThat(complaint.file()).isEqualTo("drive.yaml");
        assertThat(complaint.line()).isEqualTo(line);
        assertThat(complaint.field()).isEqualTo(field == null ? "" : field);
        assertThat(complaint.right()).contains(right == null ? "" : right);
        assertThat(complaint.wrong()).isNotBlank();
    }

    @Test
    void allFaultsAreGatheredInTheOrderOfTheirLines() {
        List<FileComplaint> complaints = complaints("""
                oil:
                  viscosity40: 165
                pump:
                  displacement: 7,1 cm3/rev
                  boreClearance: 70 mm
                  pistons: 5
                wheels:
                  rollingRadius: 0.24 m
                  rollingRadius: 0.25 m
                """);
        assertThat(complaints).extracting(FileComplaint::line).containsExactly(9);
        complaints = complaints("""
                oil:
                  viscosity40: 165
                pump:
                  displacement: 7,1 cm3/rev
                  boreClearance: 70 mm
                  pistons: 5
                """);
        assertThat(complaints)
                .extracting(FileComplaint::key)
                .containsExactly("no-unit", "decimal-comma", "out-of-range", "unknown-key");
        assertThat(complaints).extracting(FileComplaint::line).containsExactly(2, 4, 5, 6);
        assertThat(complaints).extracting(FileComplaint::column).containsExactly(16, 17, 18, 3);
    }

    @Test
    void theMessageReadsAsAsked() {
        assertThat(complaints("motor:\n  boreClearance: 70 mm\n").get(0).text())
                .isEqualTo("drive.yaml, line 2, column 18, motor.boreClearance: \"70 mm\": this is more than 150 µm; "
                        + "a value between 1 µm and 150 µm is right. Did you mean 70 µm?");
    }

    private static List<FileComplaint> complaints(String yaml) {
        return catchThrowableOfType(InputFault.class, () -> DriveFiles.open(Source.of("drive.yaml", yaml)))
                .complaints();
    }
}
