package swashlight.drive.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.hipparchus.complex.Complex;
import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swashlight.drive.description.Dimension;
import swashlight.drive.description.Place;
import swashlight.drive.motion.MotionChannel;
import swashlight.drive.motion.MotionRun;

/** Checks of the transform against Hipparchus, and of orders against swings of known size. */
final class OrdersTest {
    private static final double SPEED = 314; // rad/s

    /** Check against Hipparchus' transform, another program; seed 4. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 4, 64, 4096})
    void theTransformIsThatOfHipparchus(int count) {
        Random random = new Random(4);
        double[] real = random.doubles(count, -1, 1).toArray();
        double[] imaginary = random.doubles(count, -1, 1).toArray();
        Complex[] theirs = new Complex[count];
        for (int n = 0; n < count; n++) {
            theirs[n] = new Complex(real[n], imaginary[n]);
        }
        theirs = new FastFourierTransformer(DftNormalization.STANDARD).transform(theirs, TransformType.FORWARD);
        Fourier.transform(real, imaginary);
        for (int k = 0; k < count; k++) {
            assertThat(real[k]).isCloseTo(theirs[k].getReal(), within(1e-12 * count));
            assertThat(imaginary[k]).isCloseTo(theirs[k].getImaginary(), within(1e-12 * count));
        }
        assertThatThrownBy(() -> Fourier.transform(new double[3], new double[3]))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Closed form: 5 + 3 cos 7θ + 0.2 sin 14θ + 0.05 cos 100θ. */
    @Test
    void swingsHaveTheirSizeAtTheirOrder() {
        Signal swing = Signal.computed("swing", Dimension.NUMBER, "known swings", run -> {
            double angle = run.value(MotionChannel.PUMP_ANGLE);
            return 5 + 3 * Math.cos(7 * angle) + 0.2 * Math.sin(14 * angle) + 0.05 * Math.cos(100 * angle);
        });
        OrderSpectrum spectrum = spectrum(swing);
        assertThat(spectrum.revolutions()).isEqualTo(8);
        double[] lines = spectrum.amplitudes(0);
        assertThat(lines[0]).isCloseTo(5, within(1e-3));
        assertThat(lines[7 * 8]).isCloseTo(3, within(1e-4));
        assertThat(lines[14 * 8]).isCloseTo(0.2, within(1e-4));
        assertThat(lines[100 * 8])
                .as("one step in 3.6 a swing: the cubic loses some")
                .isCloseTo(0.05, within(0.01));
        assertThat(lines[10 * 8]).isLessThan(1e-4);
        assertThat(spectrum.at(0, 7)).isCloseTo(lines[7 * 8], within(1e-9));
    }

    /** Closed form: a swing at an order that is no whole line has its full size there. */
    @Test
    void anOrderBetweenTheLinesIsFound() {
        double order = 4.3721;
        Signal swing = Signal.computed("swing", Dimension.NUMBER, "one swing", run -> {
            return 2 * Math.sin(order * run.value(MotionChannel.PUMP_ANGLE));
        });
        assertThat(spectrum(swing).at(0, order)).isCloseTo(2, within(2e-3));
    }

    /** Closed form: seven pistons pass seven times a turn, the motor's as often as its shaft turns; seven times 314 rad/s is 349.8 Hz. */
    @Test
    void pistonPassesAreNamed() {
        OrderSpectrum spectrum = spectrum(Signal.of(MotionChannel.PRESSURE_A));
        OrderSpectrum.Named pump = spectrum.named().get(0);
        OrderSpectrum.Named motor = spectrum.named().get(1);
        assertThat(pump.place()).isEqualTo(Place.PUMP);
        MotionRun fresh = Turning.at(SPEED, 0.1);
        int pistons = fresh.chambers(Place.PUMP).count();
        int others = fresh.chambers(Place.MOTOR).count();
        assertThat(pump.order()).isCloseTo(pistons, within(1e-6));
        assertThat(pump.frequency()).isCloseTo(pistons * SPEED / (2 * Math.PI), within(1e-3));
        double ratio = fresh.value(MotionChannel.MOTOR_SPEED) / SPEED;
        assertThat(motor.order()).isCloseTo(others * ratio, within(0.05 * others * ratio));
        double[] lines = spectrum.amplitudes(0);
        double loudest = 0;
        int where = 0;
        for (int k = 8; k < lines.length; k++) {
            if (lines[k] > loudest) {
                loudest = lines[k];
                where = k;
            }
        }
        double heard = where * spectrum.step();
        assertThat(spectrum.named().stream().anyMatch(named -> Math.abs(named.order() - heard) < 0.2))
                .as("the loudest order, " + heard + ", is a piston pass or a multiple of one")
                .isTrue();
    }

    @Test
    void withoutTwoTurnsThereAreNoOrders() {
        MotionRun run = Turning.at(SPEED, 0.1);
        OrderMeter meter = new OrderMeter(run, List.of(Signal.of(MotionChannel.PRESSURE_A)), Pace.PUMP_SHAFT, 8);
        run.advance(1.9 * 2 * Math.PI / SPEED, meter);
        assertThat(meter.spectrum()).isEmpty();
        run.advance(2.2 * 2 * Math.PI / SPEED, meter);
        assertThat(meter.spectrum().orElseThrow().revolutions()).isEqualTo(2);
    }

    private static OrderSpectrum spectrum(Signal signal) {
        MotionRun run = Turning.at(SPEED, 0.1);
        run.advance(0.05);
        OrderMeter meter = new OrderMeter(run, List.of(signal), Pace.PUMP_SHAFT, 8);
        run.advance(0.3, meter);
        return meter.spectrum().orElseThrow();
    }
}
