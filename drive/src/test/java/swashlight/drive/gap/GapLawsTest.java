package swashlight.drive.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Laws of gaps on random cases; jqwik prints the fixed seed with any failure. */
final class GapLawsTest {
    private static final String SEED = "20261125";

    @Property(seed = SEED)
    void moreClearanceNeverMeansLessLeak(
            @ForAll @Scale(14) @DoubleRange(min = 1e-6, max = 1e-4) double clearance,
            @ForAll @Scale(14) @DoubleRange(min = 0, max = 0.99) double eccentricity,
            @ForAll @Scale(14) @DoubleRange(min = 1.0001, max = 2) double wider) {
        double tight = new AnnularGap(0.015, clearance, eccentricity, 0.02).conductance();
        assertThat(new AnnularGap(0.015, clearance * wider, eccentricity, 0.02).conductance())
                .isGreaterThan(tight);
        assertThat(new AnnularGap(0.015, clearance, eccentricity + 0.01, 0.02).conductance())
                .isGreaterThan(tight);
        assertThat(new AnnularGap(0.015, clearance, eccentricity, 0.02 * wider).conductance())
                .isLessThan(tight);
    }

    @Property(seed = SEED)
    void pressureTheOtherWayMeansLeakTheOtherWay(
            @ForAll @Scale(14) @DoubleRange(min = 0, max = 4e7) double pressure,
            @ForAll @Scale(14) @DoubleRange(min = 1e-8, max = 1e-4) double area) {
        AnnularGap gap = new AnnularGap(0.015, 1e-5, 0.5, 0.02);
        assertThat(gap.leakage(-pressure, 0.02)).isEqualTo(-gap.leakage(pressure, 0.02));
        assertThat(Orifice.flow(area, -pressure, 870)).isEqualTo(-Orifice.flow(area, pressure, 870));
        assertThat(Orifice.flow(area, pressure * 1.01 + 1, 870)).isGreaterThan(Orifice.flow(area, pressure, 870));
    }

    /** Narrow lands: the exact ring tends to the thin-land form π (d1 + d2) h³/(12 (d1 − d2)) (Rabie 2009, eq. 2.24). */
    @Property(seed = SEED)
    void aNarrowLandIsAStrip(@ForAll @Scale(14) @DoubleRange(min = 1.0005, max = 1.05) double ratio) {
        double r1 = 0.010;
        double r3 = 2 * r1 * ratio;
        double exact = new FaceGap(1e-5, Math.PI / 2, r1, r1 * ratio, r3, r3 * ratio).conductance();
        double strip = Math.PI / 2 * 1e-15 / 12 * 2 * (ratio + 1) / (2 * (ratio - 1));
        assertThat(exact).isCloseTo(strip, withinPercentage(0.02));
        assertThat(exact).isLessThan(strip);
    }

    @Property(seed = SEED)
    void aScoreCarriesLessThanTheThinLawAndMoreWhenDeeper(
            @ForAll @Scale(14) @DoubleRange(min = 1e-4, max = 5e-3) double width,
            @ForAll @Scale(14) @DoubleRange(min = 1e-6, max = 1e-3) double depth) {
        for (boolean triangular : new boolean[] {true, false}) {
            Score score = new Score(width, depth, 0.003, triangular);
            assertThat(score.conductance()).isBetween(0.0, score.thinConductance());
            assertThat(new Score(width, depth * 1.01, 0.003, triangular).conductance())
                    .isGreaterThan(score.conductance());
            assertThat(new Score(width * 1.01, depth, 0.003, triangular).conductance())
                    .isGreaterThan(score.conductance());
        }
    }

    /** A rectangle does not know which side is its width. */
    @Property(seed = SEED)
    void aRectangularScoreOnItsSideCarriesTheSame(
            @ForAll @Scale(14) @DoubleRange(min = 1e-5, max = 1e-3) double one,
            @ForAll @Scale(14) @DoubleRange(min = 1e-5, max = 1e-3) double other) {
        assertThat(new Score(one, other, 0.003, false).conductance())
                .isCloseTo(new Score(other, one, 0.003, false).conductance(), withinPercentage(1e-9));
    }

    /** A triangle fits into its rectangle. */
    @Property(seed = SEED)
    void aTriangularScoreCarriesLessThanTheRectangleAroundIt(
            @ForAll @Scale(14) @DoubleRange(min = 1e-5, max = 1e-3) double width,
            @ForAll @Scale(14) @DoubleRange(min = 1e-5, max = 1e-3) double depth) {
        assertThat(new Score(width, depth, 0.003, true).conductance())
                .isLessThan(new Score(width, depth, 0.003, false).conductance());
    }

    @Test
    void noScoreNoLeak() {
        assertThat(new Score(0, 1e-4, 0.003, false).conductance()).isZero();
        assertThat(new Score(1e-3, 0, 0.003, true).conductance()).isZero();
        for (ScoreShape shape : ScoreShape.values()) {
            assertThat(shape.share(0)).isEqualTo(1);
            assertThat(shape.share(1e-6)).isCloseTo(1, within(1e-6));
            assertThat(shape.share(1 - 1e-9)).isCloseTo(shape.share(1 + 1e-9), within(1e-7));
        }
    }
}
