package swashlight.drive.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.Dimension;
import swashlight.drive.motion.MotionChannel;
import swashlight.drive.motion.MotionDuty;
import swashlight.drive.motion.MotionRun;
import swashlight.drive.motion.MotionStart;
import swashlight.drive.motion.MotionWatcher;
import swashlight.drive.motion.MovingDrive;
import swashlight.drive.motion.Timeline;

/** Law: means over whole cycles are those of closed forms, whatever the steps. */
final class CycleMeterTest {
    private static final double SPEED = 300; // rad/s
    private static final double TURN = 2 * Math.PI; // rad
    private static final Signal TIME = Signal.computed("time", Dimension.TIME, "time", MotionRun::time);
    private static final Signal SWING = Signal.computed(
            "swing",
            Dimension.NUMBER,
            "3 + 2 sin 7θ",
            run -> 3 + 2 * Math.sin(7 * run.value(MotionChannel.PUMP_ANGLE)));

    /** Closed form: mean (t₁ + t₂)/2, root mean square T/√12, exactly, as time is straight between steps. */
    @Test
    void whatIsStraightIsExact() {
        MotionRun run = Turning.at(SPEED, 0.05);
        CycleMeter meter = new CycleMeter(run, List.of(TIME), Pace.PUMP_SHAFT, TURN);
        run.advance(0.2, meter);
        Cycles cycles = meter.cycles();
        double period = TURN / SPEED; // s
        assertThat(cycles.count()).isEqualTo((int) (0.2 / period));
        for (int c = 0; c < cycles.count(); c++) {
            CycleMean one = cycles.one(0, c);
            assertThat(one.end()).isCloseTo((c + 1) * period, within(1e-12));
            assertThat(one.mean()).isCloseTo((c + 0.5) * period, within(1e-12));
            assertThat(one.rms()).isCloseTo(period / Math.sqrt(12), within(1e-12));
            assertThat(one.ripple()).isCloseTo(period, within(1e-12));
        }
        CycleMean three = cycles.last(0, 3);
        assertThat(three.rms()).isCloseTo(3 * period / Math.sqrt(12), within(1e-12));
        assertThat(three.end() - three.begin()).isCloseTo(3 * period, within(1e-12));
    }

    /** Closed form: 3 + 2 sin 7θ has mean 3, root mean square √2 and reach 4; chords of steps of at most 1° take off (7°)²/12 at most. */
    @Test
    void aSwingHasItsMeanAndItsSize() {
        MotionRun run = Turning.at(SPEED, 0.05);
        CycleMeter turns = new CycleMeter(run, List.of(SWING), Pace.PUMP_SHAFT, TURN);
        CycleMeter passes = new CycleMeter(run, List.of(SWING), Pace.PUMP_SHAFT, TURN / 7);
        run.advance(0.1, MotionWatcher.all(turns, passes));
        double chord = Math.pow(Math.toRadians(7), 2) / 12;
        for (Cycles cycles : List.of(turns.cycles(), passes.cycles())) {
            assertThat(cycles.count()).isGreaterThan(3);
            CycleMean all = cycles.last(0, Integer.MAX_VALUE);
            assertThat(all.mean()).isCloseTo(3, within(1e-3 * chord * 12));
            assertThat(all.rms()).isCloseTo(Math.sqrt(2), within(Math.sqrt(2) * chord));
            assertThat(all.ripple()).isCloseTo(4, within(4 * chord));
        }
    }

    /** Law: the cycles of passes put together are the cycles of turns. */
    @Test
    void passesAddUpToTurns() {
        MotionRun run = Turning.at(SPEED, 0.1);
        List<Signal> signals = Signal.all(MotionChannel.PRESSURE_A, MotionChannel.OUTPUT_TORQUE);
        CycleMeter turns = new CycleMeter(run, signals, Pace.PUMP_SHAFT, TURN);
        CycleMeter passes = new CycleMeter(run, signals, Pace.PUMP_SHAFT, TURN / 7);
        run.advance(0.1, MotionWatcher.all(turns, passes));
        for (int signal = 0; signal < 2; signal++) {
            CycleMean turn = turns.cycles().one(signal, 1);
            CycleMean seven = passes.cycles().over(signal, 7, 14);
            assertThat(seven.mean()).isCloseTo(turn.mean(), within(1e-9 * Math.abs(turn.mean())));
            assertThat(seven.rms()).isCloseTo(turn.rms(), within(1e-6 * turn.rms()));
            assertThat(seven.ripple()).isCloseTo(turn.ripple(), within(1e-6 * turn.ripple()));
        }
    }

    /** A shaft that turns back goes on counting its way; a shaft that stands closes no cycle. */
    @Test
    void waysCountAndNotAngles() {
        MotionDuty back = MotionDuty.driving(
                Timeline.through(new double[] {0, 0.2, 0.6}, new double[] {0.6, 0.6, -0.6}), 0, 333.15);
        MotionRun run = new MovingDrive(Turning.DRIVE).start(back, MotionStart.SETTLED, MotionRun.USUAL_TOLERANCE);
        CycleMeter meter = new CycleMeter(run, List.of(TIME), Pace.MOTOR_SHAFT, TURN);
        double[] way = {0, run.value(MotionChannel.MOTOR_ANGLE)};
        run.advance(1.5, MotionWatcher.all(meter, at -> {
            way[0] += Math.abs(at.value(MotionChannel.MOTOR_ANGLE) - way[1]);
            way[1] = at.value(MotionChannel.MOTOR_ANGLE);
        }));
        assertThat(meter.cycles().count()).isEqualTo((int) (way[0] / TURN));
        assertThat(way[1]).as("it has turned back").isLessThan(way[0] - TURN);
    }

    @Test
    void noCycleIsNoMean() {
        MotionRun run = Turning.at(SPEED, 0);
        CycleMeter meter = new CycleMeter(run, List.of(TIME), Pace.PUMP_SHAFT, TURN);
        assertThatThrownBy(() -> meter.cycles().last(0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new CycleMeter(run, List.of(TIME), Pace.TIME, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
