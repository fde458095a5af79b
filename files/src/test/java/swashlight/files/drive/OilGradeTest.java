package swashlight.files.drive;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import swashlight.drive.oil.EngineOilGrade;
import swashlight.drive.oil.ViscosityGrade;

/** Check: the typical oil of a grade is one of that grade: SAE J300 (January 2015) and ISO 3448:1992, as checked in drive.oil. */
final class OilGradeTest {
    static Stream<OilGrade> grades() {
        return OilGrade.all().stream();
    }

    @ParameterizedTest
    @MethodSource("grades")
    void liesWithinItsStandard(OilGrade grade) {
        if (grade.name().startsWith("SAE ")) {
            EngineOilGrade limits =
                    EngineOilGrade.read(grade.name().substring(4)).orElseThrow();
            assertThat(grade.viscosity100())
                    .isBetween(
                            limits.leastViscosity100(),
                            Math.nextDown(limits.boundViscosity100().orElseThrow()));
        } else {
            int number = Integer.parseInt(grade.name().substring("ISO VG ".length()));
            ViscosityGrade limits = ViscosityGrade.of(number).orElseThrow();
            assertThat(grade.viscosity40()).isBetween(limits.lowest(), limits.highest());
            assertThat(grade.spread40() * Math.sqrt(3) * grade.viscosity40())
                    .isCloseTo(
                            limits.highest() - limits.midpoint(), org.assertj.core.api.Assertions.withinPercentage(1));
        }
    }

    /** Viscosity index after ASTM D2270 (from memory of common data sheets): mineral 85 to 110, multigrade up to 200. */
    @ParameterizedTest
    @MethodSource("grades")
    void thinsWithHeatAsOilsDo(OilGrade grade) {
        double index = swashlight.drive.oil.ViscosityIndex.of(grade.viscosity40(), grade.viscosity100());
        boolean multigrade = grade.name().contains("W-");
        assertThat(index).isBetween(multigrade ? 115.0 : 80.0, multigrade ? 200.0 : 115.0);
    }
}
