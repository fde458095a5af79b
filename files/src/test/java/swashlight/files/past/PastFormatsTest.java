package swashlight.files.past;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.LoopParameter;
import swashlight.drive.description.OilParameter;
import swashlight.drive.description.Origin;
import swashlight.drive.description.OutputParameter;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.InputState;
import swashlight.files.document.Source;
import swashlight.files.drive.DriveFile;
import swashlight.files.drive.DriveFiles;
import swashlight.files.drive.DriveLevel;
import swashlight.files.machine.CaseFiles;
import swashlight.files.machine.DutyFiles;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.ReadingKind;

/** One sample of every past format opens for ever and says what it said. SI values: by definition of the units (NIST SP 811). */
final class PastFormatsTest {
    private static final Path PAST = Path.of("src", "test", "resources", "past", "format-1");

    @Test
    void anEngineeringDriveOfFormat1Opens() {
        DriveFile file = DriveFiles.open(Source.read(PAST.resolve("drive.yaml")));
        assertThat(file.level()).isEqualTo(DriveLevel.ENGINEERING);
        assertThat(file.about()).isEqualTo("Two lines,\nsecond line.");
        assertThat(file.notes()).containsEntry(OilParameter.VISCOSITY100, "measured, once");
        Quantity viscosity = file.drive().quantity(OilParameter.VISCOSITY100);
        assertThat(viscosity.value()).isEqualTo(14.5e-6);
        assertThat(viscosity.spread()).isCloseTo(0.58e-6, within(1e-18));
        assertThat(viscosity.origin()).isEqualTo(Origin.FITTED);
        assertThat(file.drive().quantity(OilParameter.VISCOSITY40).origin()).isEqualTo(Origin.TYPICAL);
        assertThat(file.drive().value(UnitParameter.pump(UnitProperty.DISPLACEMENT)))
                .isCloseTo(7.0464e-6, within(1e-10)); // 0.43 · 1.638706e-5 m³
        assertThat(file.drive().value(LoopParameter.RELIEF_A)).isCloseTo(20684272, within(1.0));
        assertThat(file.drive().value(OutputParameter.GEARS_RATIO)).isEqualTo(28);
        assertThat(file.drive().value(OutputParameter.MACHINE_MASS)).isCloseTo(299.371, within(1e-3));
    }

    @Test
    void aNameplateOfFormat1Opens() {
        DriveFile file = DriveFiles.open(Source.read(PAST.resolve("drive.json")));
        assertThat(file.level()).isEqualTo(DriveLevel.NAMEPLATE);
        assertThat(file.drive().value(UnitParameter.pump(UnitProperty.DISPLACEMENT)))
                .isEqualTo(7.1e-6);
        assertThat(file.drive().quantity(OutputParameter.MACHINE_MASS)).isEqualTo(Quantity.given(300, 12));
    }

    @Test
    void aCaseOfFormat1Opens() {
        MachineCase past = CaseFiles.read(PAST.resolve("case.yaml"));
        assertThat(past.readings()).hasSize(9);
        assertThat(past.readings().get(0).setup().distance().orElseThrow()).isEqualTo(18.288); // 60 ft
        assertThat(past.readings().get(0).setup().temperatureError().orElseThrow())
                .isCloseTo(25 / 9.0, within(1e-15)); // 5 °F
        assertThat(past.readings().get(1).value()).isCloseTo(1.78816, within(1e-12)); // 4 mph
        assertThat(past.readings().get(1).setup().stroke()).hasValue(-0.5);
        assertThat(past.readings().get(2).kind()).isEqualTo(ReadingKind.AXLE_SPEED);
        assertThat(past.readings().get(2).setup().inputSpeed()).hasValue(3000 * Math.PI / 30);
        assertThat(past.readings().get(8).kind()).isEqualTo(ReadingKind.PART_DIMENSION);
        assertThat(past.seen()).hasSize(2);
    }

    @Test
    void aDutyOfFormat1Opens() {
        Duty past = DutyFiles.read(PAST.resolve("duty.yaml"));
        assertThat(past.input()).isEqualTo(new InputState.Running(0.8));
        assertThat(past.stroke()).isEqualTo(-0.5);
        assertThat(past.oilTemperature()).isCloseTo(310.9278, within(1e-4)); // 100 °F
        assertThat(past.ambientPressure()).isCloseTo(96526.6, within(0.1)); // 14 psi
    }
}
