package swashlight.findings.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import swashlight.findings.fit.NormalLaw;
import swashlight.findings.reading.ReadingKind;

/** Bands against the normal law: good repairs at ten thousand even steps of N(5, 1). */
class BandTest {
    private static double[] normal() {
        double[] good = new double[10_000];
        for (int i = 0; i < good.length; i++) {
            good[i] = 5 + NormalLaw.quantile((i + 0.5) / good.length);
        }
        return good;
    }

    /** 2.326: normal quantile of 0.99 (tables). */
    @Test
    void oneGoodRepairInAHundredLiesBeyond() {
        Band band = Band.of(ReadingKind.GROUND_SPEED, normal());
        assertThat(band.low()).isCloseTo(5 - 2.326, within(2e-3));
        assertThat(band.high()).isCloseTo(5 + 2.326, within(2e-3));
        assertThat(band.middle()).isCloseTo(5, within(1e-6));
    }

    /** 1.2816: normal quantile of 0.9 (tables); a fast machine is no worse, a fast roll is. */
    @Test
    void nineToOneDecides() {
        double error = 0.5;
        double edge = 5 - 2.326;
        Band speed = Band.of(ReadingKind.RUN_TIME, normal());
        assertThat(speed.verdict(edge + 1.29 * error, error)).isEqualTo(ProofVerdict.PASS);
        assertThat(speed.verdict(edge + 1.27 * error, error)).isEqualTo(ProofVerdict.CANNOT_TELL);
        assertThat(speed.verdict(edge - 1.27 * error, error)).isEqualTo(ProofVerdict.CANNOT_TELL);
        assertThat(speed.verdict(edge - 1.29 * error, error)).isEqualTo(ProofVerdict.FAIL);
        assertThat(speed.verdict(20, error)).isEqualTo(ProofVerdict.PASS);
        assertThat(Band.of(ReadingKind.ROLL_TIME, normal()).verdict(20, error)).isEqualTo(ProofVerdict.FAIL);
        assertThat(Band.of(ReadingKind.CREEP_SPEED, normal()).verdict(-9, error))
                .isEqualTo(ProofVerdict.FAIL);
        assertThat(Band.of(ReadingKind.CREEP_SPEED, normal()).verdict(20, error))
                .isEqualTo(ProofVerdict.FAIL);
    }

    /** A machine that really lies at the edge of failing fails every other time; so do as many as Φ says elsewhere. */
    @Test
    void failingIsWhatTheVerdictDoes() {
        Band band = Band.of(ReadingKind.GROUND_SPEED, normal());
        double edge = 5 - 2.326 - 1.2816 * 0.7;
        assertThat(band.failing(edge, 0.3, 0.7)).isCloseTo(0.5, within(5e-3));
        assertThat(band.failing(edge - 0.3, 0.3, 0.7)).isCloseTo(NormalLaw.below(1), within(5e-3));
        assertThat(band.failing(edge + 0.6, 0.3, 0.7)).isCloseTo(NormalLaw.below(-2), within(5e-3));
    }

    /** Middle and spread of differences that are normal; one jump among many does not move them. */
    @Test
    void aShiftIsNotMovedByOneJump() {
        double[] from = new double[10_000];
        double[] to = normal();
        Shift shift = Shift.between(from, to);
        assertThat(shift.middle()).isCloseTo(5, within(1e-6));
        assertThat(shift.spread()).isCloseTo(1, within(1e-3));
        to[3] = 1e6;
        assertThat(Shift.between(from, to).middle()).isCloseTo(5, within(1e-3));
        assertThat(Shift.between(from, to).spread()).isCloseTo(1, within(2e-3));
    }
}
