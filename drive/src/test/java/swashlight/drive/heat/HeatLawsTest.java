package swashlight.drive.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Laws of heat on random cases; jqwik prints the fixed seed with any failure. */
final class HeatLawsTest {
    private static final String SEED = "20261125";
    private static final FilmAir AIR = new FilmAir(18e-6, 25e-6, 0.028, 0.71, 1 / 320.0);

    @Property(seed = SEED)
    void warmerWallsGiveOffMoreAKelvin(
            @ForAll @Scale(14) @DoubleRange(min = 1, max = 120) double difference,
            @ForAll @Scale(14) @DoubleRange(min = 0.05, max = 1) double height) {
        assertThat(FreeConvection.film(AIR, height, difference * 1.05))
                .isGreaterThan(FreeConvection.film(AIR, height, difference));
        assertThat(FreeConvection.inAir(FreeConvection.UPRIGHT, height, difference))
                .isGreaterThan(FreeConvection.inAir(FreeConvection.LYING_CYLINDER, height, difference));
    }

    /** The short form for air and the full one describe the same wall: within 20 % in the laminar range. */
    @Property(seed = SEED)
    void shortAndFullFormStayTogether(
            @ForAll @Scale(14) @DoubleRange(min = 20, max = 100) double difference,
            @ForAll @Scale(14) @DoubleRange(min = 0.1, max = 0.4) double height) {
        assertThat(FreeConvection.inAir(FreeConvection.UPRIGHT, height, difference))
                .isCloseTo(FreeConvection.film(AIR, height, difference), withinPercentage(20));
    }

    @Property(seed = SEED)
    void radiationIsTheDifferenceOfFourthPowers(
            @ForAll @Scale(14) @DoubleRange(min = 250, max = 330) double surroundings,
            @ForAll @Scale(14) @DoubleRange(min = 1, max = 120) double warmer) {
        double surface = surroundings + warmer;
        double direct = 0.9 * 5.670374419e-8 * (Math.pow(surface, 4) - Math.pow(surroundings, 4));
        assertThat(Radiation.film(0.9, surface, surroundings) * warmer).isCloseTo(direct, withinPercentage(1e-7));
        assertThat(Radiation.film(0.9, surface, surroundings)).isEqualTo(Radiation.film(0.9, surroundings, surface));
    }

    /** The oil that flows carries off exactly the power that was throttled. */
    @Property(seed = SEED)
    void throttledPowerWarmsTheOil(
            @ForAll @Scale(14) @DoubleRange(min = 1e-6, max = 1e-3) double flow,
            @ForAll @Scale(14) @DoubleRange(min = 1e5, max = 3e7) double pressure) {
        double carried = flow * 870 * 2000 * ThrottleHeat.rise(pressure, 870, 2000);
        assertThat(carried).isCloseTo(ThrottleHeat.power(flow, pressure), within(1e-9 * carried));
    }

    /** Against the plain slow way: step the energy balance. */
    @Property(seed = SEED, tries = 50)
    void aLumpFollowsItsEnergyBalance(
            @ForAll @Scale(14) @DoubleRange(min = -20, max = 80) double start,
            @ForAll @Scale(14) @DoubleRange(min = 0, max = 800) double heating,
            @ForAll @Scale(14) @DoubleRange(min = 1, max = 20) double conductance) {
        HeatLump lump = new HeatLump(6000, conductance);
        int steps = 20_000;
        double time = 1800;
        double rise = start;
        for (int i = 0; i < steps; i++) {
            double half = rise + time / steps / 2 * (heating - conductance * rise) / 6000;
            rise += time / steps * (heating - conductance * half) / 6000;
        }
        assertThat(lump.rise(start, heating, time)).isCloseTo(rise, within(1e-5));
        assertThat(lump.rise(start, heating, 1e9)).isCloseTo(lump.restingRise(heating), within(1e-9));
    }
}
