package swashlight.drive.oil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Laws of the oil on random cases; jqwik prints the fixed seed with any failure. */
final class OilLawsTest {
    private static final String SEED = "20261125";

    @Property(seed = SEED)
    void anOilThatThinsLessHasTheHigherIndex(
            @ForAll @Scale(14) @DoubleRange(min = 2e-6, max = 1e-4) double warm,
            @ForAll @Scale(14) @DoubleRange(min = 3, max = 15) double ratio) {
        double stiff = ViscosityIndex.of(warm * ratio, warm);
        double soft = ViscosityIndex.of(warm * ratio * 1.01, warm);
        assertThat(soft).isLessThan(stiff);
    }

    @Property(seed = SEED)
    void bothProceduresMeetAtIndexHundred(@ForAll @Scale(14) @DoubleRange(min = 2e-6, max = 1e-4) double warm) {
        double high = ViscosityIndex.highReference(warm);
        assertThat(ViscosityIndex.of(high, warm)).isCloseTo(100, within(1e-9));
        assertThat(ViscosityIndex.of(high * (1 - 1e-9), warm)).isCloseTo(100, within(1e-3));
        assertThat(ViscosityIndex.of(ViscosityIndex.lowReference(warm), warm)).isCloseTo(0, within(1e-9));
    }

    /** The quadratic pieces of L and H join: the standard's table is smooth to about 0.1 %. */
    @Test
    void thePiecesOfLAndHJoin() {
        for (double y : new double[] {3.8, 4.4, 5, 6.4, 7, 7.7, 9, 12, 15, 18, 22, 28, 40, 55, 70}) {
            double below = y * (1 - 1e-12) * 1e-6;
            assertThat(ViscosityIndex.lowReference(y * 1e-6))
                    .isCloseTo(ViscosityIndex.lowReference(below), withinPercentage(0.15));
            assertThat(ViscosityIndex.highReference(y * 1e-6))
                    .isCloseTo(ViscosityIndex.highReference(below), withinPercentage(0.15));
        }
        assertThatThrownBy(() -> ViscosityIndex.of(5e-6, 1.9e-6)).hasMessageContaining("2 mm²/s");
    }

    @Property(seed = SEED)
    void warmerOilIsThinnerAndLighter(
            @ForAll @Scale(14) @DoubleRange(min = 820, max = 1000) double density,
            @ForAll @Scale(14) @DoubleRange(min = 260, max = 400) double t) {
        ApiDensity api = new ApiDensity(density);
        assertThat(api.at(t + 1)).isLessThan(api.at(t));
        WaltherLine line = WaltherLine.through(313.15, 46e-6, 373.15, 6.8e-6);
        assertThat(line.kinematicViscosity(t + 1)).isLessThan(line.kinematicViscosity(t));
    }

    /** The two density laws describe the same oil: within 0.7 % from 0 to 100 °C (0.65 % at 100, 0.23 % at 60) when they agree at 15 °C. */
    @Property(seed = SEED)
    void linearAndPetroleumDensityStayTogether(@ForAll @Scale(14) @DoubleRange(min = 273.15, max = 373.15) double t) {
        ApiDensity api = new ApiDensity(870);
        Oil oil = new Oil(46e-6, 6.8e-6, 1, api.at(288.15), 7e-4, 1.7e-8, 1.5e9, 9, 0, 0, 1.4, 0);
        assertThat(oil.density(t)).isCloseTo(api.at(t), withinPercentage(0.7));
    }

    @Property(seed = SEED)
    void gasSoftensAndNeverStiffens(
            @ForAll @Scale(14) @DoubleRange(min = 0, max = 0.2) double share,
            @ForAll @Scale(14) @DoubleRange(min = 1e5, max = 4e7) double pressure,
            @ForAll @Scale(14) @DoubleRange(min = 1, max = 1.4) double exponent) {
        double pure = new EffectiveModulus(0, exponent, 1.5e9, 0).at(pressure);
        double mixed = new EffectiveModulus(share, exponent, 1.5e9, 0).at(pressure);
        double walled = new EffectiveModulus(share, exponent, 1.5e9, 1e-10).at(pressure);
        assertThat(pure).isCloseTo(1.5e9, withinPercentage(1e-9));
        assertThat(mixed).isLessThanOrEqualTo(pure);
        assertThat(walled).isLessThan(mixed);
    }

    /** Two ways to state the same air: share at one atmosphere in the drive's law, share at the pressure at hand in the other. */
    @Property(seed = SEED)
    void shareNowAndShareAtOneAtmosphereTellTheSameStory(
            @ForAll @Scale(14) @DoubleRange(min = 0.001, max = 0.05) double freeAir,
            @ForAll @Scale(14) @DoubleRange(min = 1e5, max = 3e7) double pressure) {
        Oil oil = new Oil(46e-6, 6.8e-6, 1, 870, 7e-4, 1.7e-8, 1.4e9, 9, 0, freeAir, 1.4, 0);
        OilAt at = oil.at(Oil.COOL_REFERENCE);
        double air = freeAir * Math.pow(Oil.ATMOSPHERE / pressure, 1 / 1.4);
        double now = air / at.relativeVolume(pressure);
        double liquid = 1.4e9 + 9 * pressure;
        assertThat(at.bulkModulus(pressure))
                .isCloseTo(new EffectiveModulus(now, 1.4, liquid, 0).at(pressure), withinPercentage(1e-9));
    }

    /** What the solver reads at once is what the laws say one by one, and its slopes are theirs; also above the limit of Barus' law. */
    @Property(seed = SEED)
    void allAtOnceIsEachByItself(
            @ForAll @Scale(14) @DoubleRange(min = 1e3, max = 9e7) double pressure,
            @ForAll @Scale(14) @DoubleRange(min = 0, max = 3e-8) double thickening) {
        Oil oil = new Oil(165e-6, 18.5e-6, 1, 870, 7e-4, thickening, 1.5e9, 9, 3.5e-3, 0.005, 1.4, 0);
        OilAt at = oil.at(Oil.COOL_REFERENCE);
        double[] values = new double[4];
        at.evaluate(pressure, values, 0);
        assertThat(values[0]).isCloseTo(1 / at.relativeVolume(pressure), withinPercentage(1e-12));
        assertThat(values[1]).isCloseTo(values[0] / at.bulkModulus(pressure), withinPercentage(1e-10));
        assertThat(values[2]).isCloseTo(at.gapPressure(pressure), within(1e-3));
        double step = 1e-4 * pressure;
        double rise = at.gapPressure(pressure + step) - at.gapPressure(pressure - step);
        assertThat(values[3]).isCloseTo(rise / (2 * step), withinPercentage(0.2));
    }

    @Property(seed = SEED)
    void aGradeHoldsItsOwnMidpointAndBandsDoNotOverlap(
            @ForAll @Scale(14) @DoubleRange(min = 1e-6, max = 2e-3) double viscosity) {
        ViscosityGrade.holding(viscosity).ifPresent(grade -> {
            assertThat(ViscosityGrade.holding(grade.midpoint())).contains(grade);
            assertThat(viscosity).isBetween(grade.lowest(), grade.highest());
        });
    }

    @Test
    void hotBandsOfTheOlderGradesTouch() {
        SummerGrade[] grades = {SummerGrade.S20, SummerGrade.S30, SummerGrade.S40, SummerGrade.S50, SummerGrade.S60};
        for (int i = 1; i < grades.length; i++) {
            assertThat(grades[i].leastViscosity100()).isEqualTo(grades[i - 1].boundViscosity100());
        }
    }

    @Test
    void aGradeIsReadAsWrittenOrNotAtAll() {
        for (String good : new String[] {"10W", "30", "10W-30", "0W-8"}) {
            assertThat(EngineOilGrade.read(good)).as(good).isPresent();
        }
        for (String bad : new String[] {"", "-", "10W-", "-30", "30-10W", "10w-30", "46", "10W-30-50"}) {
            assertThat(EngineOilGrade.read(bad)).as(bad).isEmpty();
        }
    }
}
