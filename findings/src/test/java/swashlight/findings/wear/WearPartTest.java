package swashlight.findings.wear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** How well gauges tell what the drive makes of a part, by hand. */
class WearPartTest {
    private static double known(String key, double worn, double sound) {
        return WearPart.find(key).orElseThrow().known(worn, sound);
    }

    /** Play 4.5 µm and 2 µm of bias, halved: √(20.25 + 4)/2 = 2.462 µm on the radial clearance, however worn. */
    @Test
    void playIsHalved() {
        assertThat(known("pump-piston-play", 20e-6, 12e-6)).isCloseTo(2.4622e-6, within(1e-10));
        assertThat(known("motor-worst-piston", 60e-6, 12e-6)).isCloseTo(2.4622e-6, within(1e-10));
    }

    /** 40 µm out of flat grow the film by 20 µm: ½√(3² + 4² + 1²) = 2.55 of the edge, 0.15 · 40 = 6 of the shape. */
    @Test
    void flatnessBringsItsShape() {
        double expected = Math.sqrt(0.25 * (9 + 16 + 1) + 36) * 1e-6;
        assertThat(known("pump-flatness", 26e-6, 6e-6)).isCloseTo(expected, within(1e-10));
    }

    /** 100 µm deep leak as 80 µm flat: 0.8 √(4² + 5² + 2²) of the needle, 0.1 · 100 of the shape. */
    @Test
    void scoresBringTheirShape() {
        double expected = Math.sqrt(0.64 * (16 + 25 + 4) + 100) * 1e-6;
        assertThat(known("motor-face-score", 80e-6, 0)).isCloseTo(expected, within(1e-10));
    }

    /** A tenth of the test, a quarter of the shape: √(0.01 + 0.0625) = 0.269 of a leak far above the test's own 2 mL/s a thousandth. */
    @Test
    void aSeatIsKnownToAQuarter() {
        double area = 1e-6;
        assertThat(known("make-up-valve-a", area, 0) / area).isCloseTo(0.2693, within(1e-3));
    }
}
