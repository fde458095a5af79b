package swashlight.drive.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** Laws of soil and gears on random cases; jqwik prints the fixed seed with any failure. */
final class MachineLawsTest {
    private static final String SEED = "20261125";

    @Property(seed = SEED)
    void moreSlipPullsMoreAndFirmerGroundRollsEasier(
            @ForAll @Scale(14) @DoubleRange(min = 10, max = 100) double mobility,
            @ForAll @Scale(14) @DoubleRange(min = 0, max = 0.5) double slip) {
        SoilTraction soil = new SoilTraction(mobility);
        SoilTraction firmer = new SoilTraction(mobility * 1.05);
        assertThat(soil.gross(slip + 0.01)).isGreaterThan(soil.gross(slip));
        assertThat(firmer.rolling(slip)).isLessThan(soil.rolling(slip));
        assertThat(firmer.net(slip)).isGreaterThan(soil.net(slip));
        assertThat(soil.efficiency(slip)).isLessThan(1 - slip + 1e-12);
    }

    @Property(seed = SEED)
    void aWheelThatDoesNotSlipPullsOnlyTheConstant(
            @ForAll @Scale(14) @DoubleRange(min = 10, max = 100) double mobility) {
        assertThat(new SoilTraction(mobility).gross(0)).isCloseTo(0.04, within(1e-15));
        assertThat(new SoilTraction(mobility).net(0)).isCloseTo(-1 / mobility, within(1e-15));
    }

    @Property(seed = SEED)
    void heavierSinksDeeper(@ForAll @Scale(14) @DoubleRange(min = 500, max = 2e4) double load) {
        SoilTyre tyre = new SoilTyre(0.2, 0.6, 0.2);
        assertThat(tyre.mobility(9e5, load * 1.01)).isLessThan(tyre.mobility(9e5, load));
        assertThat(tyre.mobility(9e5, load)).isCloseTo(2 * tyre.mobility(9e5, 2 * load), within(1e-9));
    }

    @Property(seed = SEED)
    void moreTeethLoseLess(
            @ForAll @IntRange(min = 9, max = 40) int teeth,
            @ForAll @Scale(14) @DoubleRange(min = 1, max = 6) double ratio) {
        ToothLoss few = new ToothLoss(teeth, ratio, 0.8, 0.8);
        ToothLoss more = new ToothLoss(teeth + 1, ratio, 0.8, 0.8);
        assertThat(more.factor(0)).isLessThan(few.factor(0));
        assertThat(few.factor(0.3)).isGreaterThan(few.factor(0));
        assertThat(few.efficiency(0, 0)).isEqualTo(1);
    }

    @Property(seed = SEED)
    void meshesOneAfterAnotherMultiply(
            @ForAll @Scale(14) @DoubleRange(min = 0.9, max = 1) double mesh,
            @ForAll @IntRange(min = 0, max = 6) int meshes) {
        assertThat(ToothLoss.train(mesh, meshes)).isCloseTo(Math.pow(mesh, meshes), within(1e-12));
    }
}
