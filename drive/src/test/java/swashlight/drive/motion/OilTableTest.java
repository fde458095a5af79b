package swashlight.drive.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swashlight.drive.oil.Oil;
import swashlight.drive.oil.OilAt;

/** The table against the laws it stands for, from the cavity pressure to 100 MPa. */
final class OilTableTest {
    private static final double FASTEST = 1e8; // Pa
    private static final double STRIDE = 1.0037; // ratio of neighbouring pressures, no multiple of a cell

    private static Oil oil(double air, double water) {
        Oil plain = Oil.mineral(165e-6, 18.5e-6);
        return new Oil(
                plain.viscosity40(),
                plain.viscosity100(),
                1,
                plain.density15(),
                plain.thermalExpansion(),
                plain.pressureViscosity(),
                plain.bulkModulus40(),
                plain.bulkModulusSlope(),
                plain.bulkModulusFade(),
                air,
                plain.airExponent(),
                water);
    }

    /** Widest where viscosity begins to be held, a corner in the law. Free air and water (shares), temperature in K. */
    @ParameterizedTest
    @CsvSource({"0, 0, 313", "0.005, 0, 333", "0.02, 0, 263", "0.1, 0, 353", "0.25, 0, 313", "0.01, 0.01, 353"})
    void meetsTheLaws(double air, double water, double temperature) {
        OilAt laws = oil(air, water).at(temperature);
        OilTable table = new OilTable(laws);
        double[] law = new double[4];
        for (double p = laws.cavityPressure(); p < FASTEST; p *= STRIDE) {
            laws.evaluate(p, law, 0);
            table.at(p);
            assertThat(table.density).as("density at %s Pa", p).isCloseTo(law[0], within(2e-7 * law[0]));
            assertThat(table.densitySlope).as("its slope at %s Pa", p).isCloseTo(law[1], within(2e-4 * law[1]));
            assertThat(table.gapPressure).as("gap pressure at %s Pa", p).isCloseTo(law[2], within(1e-2 + 5e-7 * p));
            assertThat(table.gapSlope).as("its slope at %s Pa", p).isCloseTo(law[3], within(2e-4));
        }
    }

    /** Below the cavity pressure oil is missing in proportion: none is left at the empty pressure, and nothing jumps on the way. */
    @ParameterizedTest
    @CsvSource({"0, 0, 313", "0.005, 0, 333", "0.01, 0.01, 353"})
    void anEmptySpaceHoldsNothing(double air, double water, double temperature) {
        OilTable table = new OilTable(oil(air, water).at(temperature));
        table.at(table.cavityPressure);
        double full = table.density;
        double gap = table.gapPressure;
        table.at(table.cavityPressure * (1 - 1e-9));
        assertThat(table.density).isCloseTo(full, within(1e-7 * full));
        assertThat(table.gapPressure).isCloseTo(gap, within(1e-2));
        table.at((table.cavityPressure + table.emptyPressure) / 2);
        assertThat(table.density).isCloseTo(full / 2, within(1e-9));
        table.at(table.emptyPressure);
        assertThat(table.density).isCloseTo(0, within(1e-12));
    }
}
