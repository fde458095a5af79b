package swashlight.findings.drain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import swashlight.drive.oil.Oil;

/**
 * The truth is known here: invented pumps of the shape of the real test (a ramp up and down, a hot hold, a short ramp of a
 * damaged state), with errors that repeat from row to row, read through a meter with a dead band.
 */
final class DrainCoverageTest {
    private static final long SEED = 20261125;
    private static final int PUMPS = 300;
    private static final double LITRE_PER_MINUTE = 1e-3 / 60;

    private static final double LEAK = 0.88;
    private static final double EXPONENT = 1.12;
    private static final double VISCOSITY_EXPONENT = 0.75;
    private static final double RATIO = 2.1;
    private static final double EXPONENT_CHANGE = -0.2;

    private final Random random = new Random(SEED);
    private final DrainAssumptions certain = DrainAssumptions.usual().certain();

    @Test
    void ninetyFiveIntervalsInAHundredHoldTheTruth() {
        int[] held = new int[4];
        for (int pump = 0; pump < PUMPS; pump++) {
            DrainFinding finding = DrainFit.of(pump(0.7, 0.012), certain);
            assertThat(finding.outcome().converged())
                    .as("seed " + SEED + " pump " + pump)
                    .isTrue();
            held[0] += holds(finding, "leak", LEAK);
            held[1] += holds(finding, "pressure-exponent", EXPONENT);
            held[2] += holds(finding, "viscosity-exponent", VISCOSITY_EXPONENT);
            held[3] += holds(finding, "leak-ratio-damaged", RATIO);
        }
        for (int count : held) {
            // 95 % of 300 is 285 with a standard deviation of 3.8; rows worth few readings make it lean to caution.
            assertThat(count).as("held of " + PUMPS + ", seed " + SEED).isBetween(273, 299);
        }
    }

    @Test
    void withoutScatterTheLawIsGivenBack() {
        DrainFinding finding = DrainFit.of(pump(0, 1e-4), certain);
        assertThat(finding.estimate("leak").orElseThrow().value()).isCloseTo(LEAK, offset(1e-3));
        assertThat(finding.estimate("pressure-exponent").orElseThrow().value()).isCloseTo(EXPONENT, offset(1e-3));
        assertThat(finding.estimate("viscosity-exponent").orElseThrow().value())
                .isCloseTo(VISCOSITY_EXPONENT, offset(1e-3));
        assertThat(finding.estimate("leak-ratio-damaged").orElseThrow().value()).isCloseTo(RATIO, offset(2e-3));
        assertThat(finding.estimate("exponent-change-damaged").orElseThrow().value())
                .isCloseTo(EXPONENT_CHANGE, offset(3e-3));
    }

    /** A dead band read as zeros bends the law; the censored likelihood does not feel it. */
    @Test
    void takingTheDeadBandForReadingsWouldBeWrong() {
        List<DrainPoint> points = pump(0, 0.01);
        DrainAssumptions blind = certain.startingAt(0.001 * LITRE_PER_MINUTE);
        double naive = DrainFit.of(points, blind)
                .estimate("pressure-exponent")
                .orElseThrow()
                .value();
        double ours = DrainFit.of(points, certain)
                .estimate("pressure-exponent")
                .orElseThrow()
                .value();
        assertThat(ours).isCloseTo(EXPONENT, offset(0.05));
        assertThat(naive).isGreaterThan(EXPONENT + 0.5);
    }

    @Test
    void outsideAssumptionsWidenTheIntervals() {
        List<DrainPoint> points = pump(0.7, 0.012);
        DrainFinding narrow = DrainFit.of(points, certain);
        DrainFinding wide = DrainFit.of(points, DrainAssumptions.usual());
        for (String key : List.of("leak", "viscosity-exponent", "leak-ratio-damaged")) {
            double before = narrow.estimate(key).orElseThrow().high()
                    - narrow.estimate(key).orElseThrow().low();
            double after = wide.estimate(key).orElseThrow().high()
                    - wide.estimate(key).orElseThrow().low();
            assertThat(after).as(key).isGreaterThan(before);
        }
        assertThat(wide.text()).contains("confounded").doesNotContain("NaN");
    }

    private static int holds(DrainFinding finding, String key, double truth) {
        return finding.estimate(key).orElseThrow().holds(truth) ? 1 : 0;
    }

    private List<DrainPoint> pump(double correlation, double scatter) {
        List<DrainPoint> points = new ArrayList<>();
        ramp(points, "healthy", 0, new double[] {40, 218, 140}, 41, 44, correlation, scatter);
        ramp(points, "healthy", 1, new double[] {235, 235, 231}, 9, 57, correlation, scatter);
        ramp(points, "damaged", 2, new double[] {23, 65, 110}, 17, 50, correlation, scatter);
        return points;
    }

    private void ramp(
            List<DrainPoint> points,
            String state,
            int run,
            double[] bars,
            int rows,
            double celsius,
            double correlation,
            double scatter) {
        double error = scatter * random.nextGaussian();
        for (int i = 0; i < rows; i++) {
            double way = 2.0 * i / (rows - 1);
            double bar = way < 1 ? bars[0] + way * (bars[1] - bars[0]) : bars[1] + (way - 1) * (bars[2] - bars[1]);
            double kelvin = Oil.CELSIUS_ZERO + celsius + 0.5 * way;
            double flow = leak(state, bar, kelvin) * Math.exp(error);
            double shown = flow < 0.63 ? 0.01 : flow;
            points.add(new DrainPoint(
                    state, run, bar * 1e5, kelvin, kelvin - 15, shown * LITRE_PER_MINUTE, 64 * LITRE_PER_MINUTE));
            error = correlation * error + scatter * Math.sqrt(1 - correlation * correlation) * random.nextGaussian();
        }
    }

    private double leak(String state, double bar, double kelvin) {
        Oil oil = certain.oil();
        double reference = certain.referenceTemperature();
        double thinning = oil.kinematicViscosity(reference)
                * oil.density(reference)
                / (oil.kinematicViscosity(kelvin) * oil.density(kelvin));
        double healthy = LEAK * Math.pow(bar / 100, EXPONENT) * Math.pow(thinning, VISCOSITY_EXPONENT);
        return "healthy".equals(state) ? healthy : healthy * RATIO * Math.pow(bar / 100, EXPONENT_CHANGE);
    }
}
