package swashlight.files.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.data.Offset.offset;

import java.io.StringReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swashlight.drive.oil.Oil;
import swashlight.drive.unit.Efficiency;
import swashlight.files.document.FileComplaint;
import swashlight.files.document.InputFault;
import swashlight.findings.losses.BenchRun;

final class BenchTableTest {
    private static final Oil OIL = Oil.mineral(46e-6, 6.8e-6);

    /** Worked examples as one-row tables in their books' own units, read and answered by the route a bench table takes. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // Esposito, Fluid Power with Applications, Ex. 5-8 (4.1) and Ex. 7-6 (4.2), exact values recomputed.
                "PUMP|81.93532|speed [rpm],pressure [psi],flow [gpm],torque [in.lbf],temperature [°F]|1000,1000,20,900,122|0.92400|0.88419|5e-6",
                "MOTOR|164|speed [rpm],pressure [bar],flow [m3/s],torque [N.m],temperature [°C]|2000,70,0.006,170,50|0.91111|0.93044|5e-6",
                // UTeM tutorial 2, questions 10 and 12 (C5, C6).
                "PUMP|8|speed [1/min],pressure [bar],flow [L/min],torque [N.m],temperature [K]|1420,80,10,11.4,323|0.8803|0.8935|5e-5",
                "PUMP|100|speed [rpm],pressure [MPa],flow [cm3/s],torque [Nm],temperature [°C]|1200,12,1750,250,50|0.8750|0.7639|5e-5"
            })
    void workedEfficiencies(
            BenchRun.Kind kind,
            double cubicCentimetres,
            String header,
            String row,
            double volumetric,
            double hydromechanical,
            double digits) {
        BenchRun run = BenchTableFile.read("example.csv", new StringReader(header + "\n" + row + "\n"), kind, OIL);
        Efficiency found =
                run.efficiency(run.points().get(0), cubicCentimetres * 1e-6).orElseThrow();
        assertThat(found.volumetric()).isCloseTo(volumetric, offset(digits));
        assertThat(found.hydromechanical()).isCloseTo(hydromechanical, offset(digits));
    }

    @Test
    void portsMayStandForTheDifferenceAndCommentsArePassedOver() {
        String text =
                "# invented\nspeed [rpm],inlet pressure [bar],outlet pressure [bar],flow [L/min],temperature [°F],share [%],remark\n"
                        + "1500,2,102,30,104,50,\"a, b\"\n";
        BenchRun run = BenchTableFile.read("invented.csv", new StringReader(text), BenchRun.Kind.PUMP, OIL);
        assertThat(run.points().get(0).pressureDifference()).isCloseTo(100e5, offset(1e-3));
        assertThat(run.points().get(0).temperature()).isCloseTo(313.15, offset(1e-9));
        assertThat(run.points().get(0).share()).isEqualTo(0.5);
        assertThat(run.points().get(0).torque()).isEmpty();
    }

    @Test
    void everyFaultIsNamedWithItsPlace() {
        String text =
                "speed [rpm],pressure [bar],flow [L/min],temperature [°C]\n1500,100,30,50\n-3,hundred,30,50\n1500,100\n";
        InputFault fault = catchThrowableOfType(
                InputFault.class,
                () -> BenchTableFile.read("bad.csv", new StringReader(text), BenchRun.Kind.PUMP, OIL));
        assertThat(fault.complaints())
                .extracting(FileComplaint::key)
                .containsExactly("not-a-number", "out-of-range", "short-row", "short-row");
        assertThat(fault.complaints().get(0).line()).isEqualTo(3);
        assertThat(fault.getMessage()).contains("bad.csv, line 3, column 1, pressure [bar]: \"hundred\"");
    }

    @Test
    void unitsAndColumnsAreAskedFor() {
        assertThatThrownBy(() -> BenchTableFile.read(
                        "bad.csv", new StringReader("speed [knots],flow [L/min]\n1,2\n"), BenchRun.Kind.PUMP, OIL))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("rpm")
                .hasMessageContaining("temperature")
                .hasMessageContaining("pressure");
        assertThatThrownBy(() -> BenchTableFile.read("empty.csv", new StringReader(""), BenchRun.Kind.PUMP, OIL))
                .isInstanceOf(InputFault.class);
    }
}
