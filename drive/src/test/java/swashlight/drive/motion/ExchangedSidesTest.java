package swashlight.drive.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.InputParameter;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.TypicalDrive;

/**
 * Law: with both sides alike on level ground, reverse is forward in a mirror. The pump begins half a turn on: its plate tilts the other way,
 * so that the same piston is then where it was.
 */
final class ExchangedSidesTest {
    private static final DriveDescription DRIVE = TypicalDrive.complete("any", true, Map.of())
            .with(Map.of(
                    InputParameter.CONTROL_REVERSE_SHARE, Quantity.given(1),
                    InputParameter.CONTROL_FORWARD_SHARE, Quantity.given(1),
                    InputParameter.CONTROL_NEUTRAL_OFFSET, Quantity.given(0)));
    private static final double SHARE = 1e-7; // of each quantity's size: rounding that a second of shocks makes grow

    private static MotionRun after(double stroke, double pumpAngle, double time) {
        Timeline way = Timeline.through(new double[] {0, 0.1}, new double[] {0, stroke});
        MotionState begin = MotionState.standing(101_325)
                .with(MotionChannel.PUMP_ANGLE, pumpAngle)
                .with(MotionChannel.ENGINE_SPEED, 320)
                .with(MotionChannel.PUMP_SPEED, 300);
        MotionRun run = new MovingDrive(DRIVE).start(MotionDuty.driving(way, 0, 333.15), begin, 1e-3);
        assertThat(run.advance(time)).isTrue();
        return run;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.11, 0.4})
    void reverseIsForwardInAMirror(double time) {
        MotionRun forward = after(0.8, 0, time);
        MotionRun reverse = after(-0.8, Math.PI, time);
        same(forward, MotionChannel.PRESSURE_A, reverse, MotionChannel.PRESSURE_B, 1);
        same(forward, MotionChannel.PRESSURE_B, reverse, MotionChannel.PRESSURE_A, 1);
        for (MotionChannel kept : new MotionChannel[] {
            MotionChannel.GALLERY_PRESSURE,
            MotionChannel.ENGINE_SPEED,
            MotionChannel.PUMP_SPEED,
            MotionChannel.PUMP_TORQUE,
            MotionChannel.MAKE_UP_FLOW,
            MotionChannel.LOWEST_CHAMBER,
            MotionChannel.OIL_TEMPERATURE
        }) {
            same(forward, kept, reverse, kept, 1);
        }
        for (MotionChannel turned : new MotionChannel[] {
            MotionChannel.SWASH_ANGLE,
            MotionChannel.MOTOR_SPEED,
            MotionChannel.MOTOR_ANGLE,
            MotionChannel.MOTOR_TORQUE,
            MotionChannel.GROUND_SPEED,
            MotionChannel.GROUND_FORCE,
            MotionChannel.SWASH_MOMENT
        }) {
            same(forward, turned, reverse, turned, -1);
        }
        assertThat(forward.steps()).isEqualTo(reverse.steps());
    }

    private static void same(MotionRun one, MotionChannel there, MotionRun other, MotionChannel here, double sign) {
        double value = one.value(there);
        assertThat(sign * other.value(here)).as(there.name()).isCloseTo(value, within(SHARE * Math.abs(value) + 1e-12));
    }
}
