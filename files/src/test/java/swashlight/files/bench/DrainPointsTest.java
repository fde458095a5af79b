package swashlight.files.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import swashlight.findings.drain.DeliveryFit;
import swashlight.findings.drain.DrainAssumptions;
import swashlight.findings.drain.DrainFinding;
import swashlight.findings.drain.DrainFit;
import swashlight.findings.drain.DrainPoint;
import swashlight.findings.fit.Estimate;

/** Real readings: Rojek and Blachnik 2024, doi 10.3390/app14167183; read in place, never copied. */
final class DrainPointsTest {
    private static final String FILE = "data/piston-pump/drain-points.csv";

    private final DrainPointsFile.Content content = DrainPointsFile.read(SharedData.file(FILE));
    private final DrainFinding finding = DrainFit.of(content.turning(), DrainAssumptions.usual());

    @Test
    void theFileIsReadAsItsSourceSays() {
        // 69 rows, each state with one row of the stopped pump; three unbroken runs; delivery zero −0.54 L/min
        // (SOURCE.md).
        assertThat(content.turning()).hasSize(67);
        assertThat(content.deliveryZeros()).hasSize(2);
        assertThat(content.deliveryZeros().get(0) * 6e4).isCloseTo(-0.54, offset(0.01));
        assertThat(content.turning().get(66).run()).isEqualTo(2);
    }

    /** Peer: the same censored likelihood climbed by SciPy 1.17 (BFGS), recomputed 2026-11. */
    @Test
    void theLawAgreesWithAPeersClimb() {
        assertThat(finding.outcome().converged()).isTrue();
        assertThat(value("pressure-exponent")).isCloseTo(1.120, offset(0.002));
        assertThat(value("viscosity-exponent")).isCloseTo(0.745, offset(0.002));
        assertThat(value("leak-ratio-failure1")).isCloseTo(2.113, offset(0.005));
        assertThat(value("leak")).isCloseTo(Math.exp(-0.129), offset(0.002));
    }

    @Test
    void theDamagedPlateLeaksMoreBeyondDoubt() {
        Estimate ratio = finding.estimate("leak-ratio-failure1").orElseThrow();
        assertThat(ratio.low()).isGreaterThan(1.5);
        assertThat(ratio.high()).isLessThan(3);
        // Same drain temperature to 1 K apart only in viscosity: read off the rows at 102.9 and 104.2 bar, 0.742 and
        // 1.909 L/min,
        // the viscosity of 43.6 and 50.2 °C (grade 46, ratio 1.31) taking 0.745 of the power: about 2.1.
        assertThat(ratio.holds(1.909 / 0.742 * Math.pow(102.7 / 104.0, 1.0) / Math.pow(1.31, 0.745)))
                .isTrue();
    }

    @Test
    void theIntervalsAreHonestAboutWhatTwoTemperaturesCanSay() {
        Estimate viscosity = finding.estimate("viscosity-exponent").orElseThrow();
        assertThat(viscosity.low()).isGreaterThan(0.2);
        assertThat(viscosity.high() - viscosity.low())
                .as("two temperature groups only")
                .isGreaterThan(0.3);
        Estimate pressure = finding.estimate("pressure-exponent").orElseThrow();
        assertThat(pressure.low()).as("leaks a little faster than pressure").isGreaterThan(1);
        assertThat(pressure.high()).isLessThan(1.3);
    }

    /** No dead-band row may contradict the law: where it reads near nothing, the law must lie below the start. */
    @Test
    void theLawLiesBelowTheStartWhereTheMeterStands() {
        double leak = value("leak");
        for (DrainPoint point : content.turning()) {
            double shown = point.drainFlow() * 6e4;
            if (shown < 0.05 && "healthy".equals(point.state())) {
                // The healthy ramp starts at 43.6 °C, where grade 46 is 1.34 times as thick as at 50 °C.
                double expected = leak * Math.pow(point.pressureDifference() / 1e7, value("pressure-exponent")) / 1.2;
                assertThat(expected).isLessThan(0.68);
            }
        }
    }

    /** 45 cm³/rev at 1485 rpm (SOURCE.md) is 66.8 L/min: the delivered flow carried back to no pressure must meet it. */
    @Test
    void deliveredFlowLeadsBackToTheDisplacement() {
        List<Estimate> ramp = DeliveryFit.of(content.turning(), 0, DrainAssumptions.usual());
        Estimate atNothing = ramp.get(0);
        assertThat(atNothing.holds(45e-3 * 1485)).as(atNothing.line()).isTrue();
        assertThat(ramp.get(1).low()).as("delivered flow falls with pressure").isGreaterThan(1);
        assertThat(ramp.get(3).low()).as("more is lost than the drain carries").isGreaterThan(0.3);
    }

    private double value(String key) {
        return finding.estimate(key).orElseThrow().value();
    }
}
