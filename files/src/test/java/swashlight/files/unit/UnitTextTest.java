package swashlight.files.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import swashlight.drive.description.Dimension;

/** How people write numbers with units. Expected values: by definition of the units (SI brochure, NIST SP 811). */
final class UnitTextTest {
    private static final long SEED = 20261125;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    7.1 cm3/rev     | DISPLACEMENT     | 7.1e-6
                    7.1 cm³/rev     | DISPLACEMENT     | 7.1e-6
                    7.1cc           | DISPLACEMENT     | 7.1e-6
                    7.1 cm^3 / rev  | DISPLACEMENT     | 7.1e-6
                    3000 RPM        | ROTATION         | 314.1592653589793
                    3000 rev/min    | ROTATION         | 314.1592653589793
                    3000 min⁻¹      | ROTATION         | 314.1592653589793
                    12 in           | LENGTH           | 0.3048
                    12"             | LENGTH           | 0.3048
                    15 µm           | LENGTH           | 15e-6
                    15 μm           | LENGTH           | 15e-6
                    15 um           | LENGTH           | 15e-6
                    1e-5 m          | LENGTH           | 1e-5
                    −5 deg          | ANGLE            | -0.08726646259971647
                    5°              | ANGLE            | 0.08726646259971647
                    46 cSt          | VISCOSITY        | 46e-6
                    46 mm²/s        | VISCOSITY        | 46e-6
                    870 kg/m3       | DENSITY          | 870
                    0.87 g/cm³      | DENSITY          | 870
                    26 N·m          | TORQUE           | 26
                    26 N m          | TORQUE           | 26
                    26Nm            | TORQUE           | 26
                    26 N*m          | TORQUE           | 26
                    80 °C           | TEMPERATURE      | 353.15
                    80 C            | TEMPERATURE      | 353.15
                    293.15 K        | TEMPERATURE      | 293.15
                    55 %            | NUMBER           | 0.55
                    28              | NUMBER           | 28
                    28:1            | NUMBER           | 28
                    2 min           | TIME             | 120
                    7.2 km/h        | SPEED            | 2
                    6 L/min         | FLOW             | 1e-4
                    0.6 L/(min·bar) | FLOW_PER_PRESSURE| 1e-10
                    0.6 L/min/bar   | FLOW_PER_PRESSURE| 1e-10
                    17 1/GPa        | PER_PRESSURE     | 1.7e-8
                    """)
    void isRead(String text, Dimension dimension, double si) {
        assertThat(understood(text, dimension).value()).isEqualTo(si);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    7,1 cm3/rev | DISPLACEMENT | decimal-comma
                    1,500 rpm   | ROTATION     | decimal-comma
                    3 000 rpm   | ROTATION     | thousands-gap
                    3000        | ROTATION     | no-unit
                    300         | MASS         | no-unit
                    12 bar      | LENGTH       | wrong-dimension
                    12 furlong  | LENGTH       | unknown-unit
                    12 Mm       | LENGTH       | unknown-unit
                    12 mpa      | PRESSURE     | unknown-unit
                    twelve mm   | LENGTH       | not-a-number
                    0x10 mm     | LENGTH       | unknown-unit
                    NaN m       | LENGTH       | not-a-number
                    1e9999 m    | LENGTH       | not-a-number
                    0.9 ± 5 %   | NUMBER       | mixed-spread
                    10 %        | ANGLE        | wrong-dimension
                    12 kg       | FORCE        | wrong-dimension
                    """)
    void isRefused(String text, Dimension dimension, String key) {
        assertThat(UnitText.read(text, dimension))
                .isInstanceOfSatisfying(
                        UnitAnswer.Refused.class,
                        refused -> assertThat(refused.key()).isEqualTo(key));
    }

    @Test
    void aBareNumberIsToldWhichUnitsAreRight() {
        UnitAnswer.Refused refused = (UnitAnswer.Refused) UnitText.read("300", Dimension.MASS);
        assertThat(refused.right()).contains("kg").contains("lb");
    }

    @Test
    void aGradeIsTheAngleOfItsTangent() {
        UnitAnswer.Understood grade = (UnitAnswer.Understood) UnitText.readSlope("10 %");
        assertThat(grade.value()).isCloseTo(0.09966865249116204, within(1e-16)); // atan 0.1, series
        assertThat(((UnitAnswer.Understood) UnitText.readSlope("100 %")).value())
                .isEqualTo(Math.PI / 4);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    80 ± 3 °C    | TEMPERATURE | 353.15 | 3
                    80 °C ± 3 K  | TEMPERATURE | 353.15 | 3
                    50 °F +/- 9 °F | TEMPERATURE | 283.15 | 5
                    10 % ± 20 %  | NUMBER      | 0.1    | 0.2
                    12 mm ± 5 %  | LENGTH      | 0.012  | 6e-4
                    12 ± 1 mm    | LENGTH      | 0.012  | 1e-3
                    12 mm ± 1    | LENGTH      | 0.012  | 1e-3
                    """)
    void aSpreadIsADifference(String text, Dimension dimension, double si, double spread) {
        UnitAnswer.Understood value = understood(text, dimension);
        assertThat(value.value()).isEqualTo(si);
        assertThat(value.spread().orElseThrow()).isCloseTo(spread, within(1e-15));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    70 mm    | LENGTH   | 1e-6 | 1.5e-4 | 70 µm
                    0.3 kPa  | PRESSURE | 5e4  | 1e6    | 0.3 MPa
                    0.87 kg/m3 | DENSITY | 700 | 1200   | 0.87 g/cm3
                    3 rpm    | ROTATION | 60   | 600    | 3E+3 rpm
                    17 rad   | ANGLE    | 0.05 | 0.5    | 17 deg
                    """)
    void aSlipOfAThousandIsSeen(String text, Dimension dimension, double low, double high, String meant) {
        Optional<String> suggestion = Suggestion.of(understood(text, dimension), low, high);
        assertThat(suggestion).contains(meant.replace("3E+3", "3000"));
    }

    /** Law: what is written for files reads back as the same double, in both systems, whatever its size. */
    @ParameterizedTest
    @EnumSource(Dimension.class)
    void whatIsWrittenReadsBackToTheLastBit(Dimension dimension) {
        Random random = new Random(SEED + dimension.ordinal());
        for (int i = 0; i < 500; i++) {
            double si = (random.nextDouble() - 0.3) * Math.pow(10, random.nextInt(24) - 12);
            double spread = Math.abs(si) * random.nextDouble();
            for (UnitSystem system : UnitSystem.values()) {
                String text = system.exact(si, dimension);
                assertThat(understood(text, dimension).value()).as(text).isEqualTo(si);
                String difference = system.exactDifference(spread, si, dimension);
                UnitAnswer answer = UnitText.readDifference(difference, dimension);
                assertThat(((UnitAnswer.Understood) answer).value())
                        .as(difference)
                        .isEqualTo(spread);
            }
        }
    }

    /** Law: a label, its typographic form and every case-insensitive spelling mean the same unit. */
    @ParameterizedTest
    @EnumSource(Dimension.class)
    void symbolsAreReadLikeLabels(Dimension dimension) {
        for (Unit unit : UnitTable.of(dimension)) {
            assertThat(UnitTable.find(dimension, unit.symbol())).contains(unit);
            assertThat(UnitTable.find(dimension, " " + unit.label() + " ")).contains(unit);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    7.1e-6      | DISPLACEMENT | 7.1 cm³/rev | 0.4333 in³/rev
                    314.1592654 | ROTATION     | 3000 rpm    | 3000 rpm
                    353.15      | TEMPERATURE  | 80 °C       | 176 °F
                    2e7         | PRESSURE     | 200 bar     | 2901 psi
                    15e-6       | LENGTH       | 15 µm       | 0.0005906 in
                    26          | TORQUE       | 26 N·m      | 19.18 ft·lbf
                    1e-4        | FLOW         | 6 L/min     | 1.585 gpm
                    """)
    void isShownInBothSystems(double si, Dimension dimension, String metric, String customary) {
        assertThat(UnitSystem.SI.show(si, dimension)).isEqualTo(metric);
        assertThat(UnitSystem.US.show(si, dimension)).isEqualTo(customary);
    }

    @Test
    void aDifferenceOfTemperatureIsShownAsOne() {
        assertThat(UnitSystem.SI.showDifference(3, Dimension.TEMPERATURE)).isEqualTo("3 K");
        assertThat(UnitSystem.US.showDifference(5, Dimension.TEMPERATURE)).isEqualTo("9 °F");
    }

    private static UnitAnswer.Understood understood(String text, Dimension dimension) {
        UnitAnswer answer = UnitText.read(text, dimension);
        assertThat(answer).as(text).isInstanceOf(UnitAnswer.Understood.class);
        return (UnitAnswer.Understood) answer;
    }
}
