package swashlight.files.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import swashlight.checks.CheckBook;
import swashlight.checks.CheckRow;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.MakeUpParameter;
import swashlight.drive.description.OilParameter;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.steady.DriveEfficiency;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.SteadyDrive;
import swashlight.files.drive.DriveFiles;

/** Checks: the demo drives, completed with what is typical, against what is printed of such drives; source in each row. */
final class TypicalValuesTest {
    static Stream<DriveDescription> drives() {
        return DemoShelf.drives().stream().map(DriveFiles::demo);
    }

    /** Best overall efficiency of the whole transmission with warm oil, over loads up to a slope of 25 degrees. */
    @ParameterizedTest
    @MethodSource("drives")
    void transmitsAsWellAsMeasuredOnes(DriveDescription drive) {
        row("efficiency", "typical-transmission/teststand").assertAgrees(best(drive, 1));
        double half = best(drive, 0.5);
        assertThat(half).isLessThan(best(drive, 1));
        assertThat(half)
                .isBetween(row("efficiency", "measured-transmission/oida-0.5").expected() - 0.05, 0.75);
    }

    @Test
    void theChargePumpIsOfOrdinarySize() {
        DriveDescription loader = DriveFiles.demo("small-loader");
        double main = loader.value(UnitParameter.pump(UnitProperty.DISPLACEMENT));
        row("circuit", "typical-charge-displacement/trade")
                .assertAgrees(loader.value(MakeUpParameter.CHARGE_DISPLACEMENT) / main);
        row("circuit", "typical-charge-relief/trade").assertAgrees(loader.value(MakeUpParameter.CHARGE_RELIEF));
    }

    @ParameterizedTest
    @MethodSource("drives")
    void theOilIsAnOil(DriveDescription drive) {
        row("oil", "typical-density/mineral").assertAgrees(drive.value(OilParameter.DENSITY15));
    }

    private static double best(DriveDescription description, double stroke) {
        SteadyDrive drive = new SteadyDrive(description);
        return DoubleStream.iterate(1, slope -> slope <= 25, slope -> slope + 2)
                .mapToObj(slope -> drive.answer(Duty.driving(stroke, 273.15 + 70, Math.toRadians(slope))))
                .flatMap(answer -> DriveEfficiency.of(answer.point()).stream())
                .mapToDouble(DriveEfficiency::overall)
                .max()
                .orElseThrow();
    }

    private static CheckRow row(String theme, String id) {
        return CheckBook.read(theme).row(id).orElseThrow();
    }
}
