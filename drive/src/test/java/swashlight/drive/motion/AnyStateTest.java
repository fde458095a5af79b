package swashlight.drive.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.fault.Fault;
import swashlight.drive.fault.Faults;

/** Laws of runs that begin anywhere, and of random ones. */
final class AnyStateTest {
    private static final DriveDescription DRIVE = TypicalDrive.complete("any", true, Map.of());
    private static final MotionDuty FULL = MotionDuty.driving(Timeline.constant(1), 0.05, 333.15);

    /** A run that is taken up from its own state goes on as the one that was left alone. */
    @Test
    void aRunTakenUpGoesOn() {
        MotionRun alone = new MovingDrive(DRIVE).start(FULL, MotionStart.AT_REST, 1e-4);
        alone.advance(0.05);
        MotionRun taken = new MovingDrive(DRIVE).start(FULL, MotionState.of(alone), 1e-4);
        for (MotionChannel channel : MotionState.CHANNELS) {
            assertThat(taken.value(channel)).as(channel.name()).isEqualTo(alone.value(channel));
        }
        alone.advance(0.15);
        taken.advance(0.1);
        for (MotionChannel channel :
                List.of(MotionChannel.PUMP_SPEED, MotionChannel.MOTOR_SPEED, MotionChannel.GROUND_SPEED)) {
            double there = alone.value(channel);
            assertThat(taken.value(channel)).as(channel.name()).isCloseTo(there, within(0.01 * Math.abs(there)));
        }
    }

    /** A fault that comes while it moves: the bypass opens and the machine slows down. */
    @Test
    void aFaultMayComeOnTheWay() {
        MotionRun sound = new MovingDrive(DRIVE).start(FULL, MotionStart.SETTLED, MotionRun.USUAL_TOLERANCE);
        sound.advance(0.2);
        Fault open = Faults.find("bypass-left-open").orElseThrow();
        MotionRun sick = new MovingDrive(open.on(DRIVE, open.usual()))
                .start(FULL, MotionState.of(sound), MotionRun.USUAL_TOLERANCE);
        double before = sick.value(MotionChannel.GROUND_SPEED);
        assertThat(before).isGreaterThan(1);
        sick.advance(1);
        assertThat(sick.value(MotionChannel.GROUND_SPEED)).isLessThan(0.7 * before);
    }

    @Test
    void whatIsNoStateIsRefused() {
        MotionState state = MotionState.standing(101_325);
        assertThatThrownBy(() -> state.with(MotionChannel.PUMP_TORQUE, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> state.with(MotionChannel.PRESSURE_A, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThat(state.with(MotionChannel.PRESSURE_A, 2e7).value(MotionChannel.PRESSURE_A))
                .isEqualTo(2e7);
    }

    /** Law: from random states with random faults at their worst, a run reaches its end, stays finite and keeps its oil; seeds given. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void anyStateWithAnyFaultRunsOn(long seed) {
        Random random = new Random(seed);
        Fault fault = Faults.all().get(random.nextInt(Faults.all().size()));
        MotionState state = MotionState.standing(101_325)
                .with(MotionChannel.PRESSURE_A, 5e4 + 3e7 * random.nextDouble())
                .with(MotionChannel.PRESSURE_B, 5e4 + 3e7 * random.nextDouble())
                .with(MotionChannel.SWASH_ANGLE, 0.5 * (random.nextDouble() - 0.5))
                .with(MotionChannel.PUMP_ANGLE, 10 * random.nextDouble())
                .with(MotionChannel.ENGINE_SPEED, 200 + 200 * random.nextDouble())
                .with(MotionChannel.PUMP_SPEED, 400 * random.nextDouble())
                .with(MotionChannel.MOTOR_SPEED, 400 * (random.nextDouble() - 0.5))
                .with(MotionChannel.GROUND_SPEED, 3 * (random.nextDouble() - 0.5));
        MotionDuty duty = fault.on(
                MotionDuty.driving(Timeline.constant(2 * random.nextDouble() - 1), random.nextDouble() - 0.5, 300),
                fault.most());
        MotionRun run = new MovingDrive(fault.on(DRIVE, fault.most())).start(duty, state, 1e-2);
        assertThat(run.advance(0.5)).as(fault.key()).isTrue();
        for (MotionChannel channel : MotionChannel.values()) {
            assertThat(run.value(channel)).as(channel.name()).isFinite();
        }
        assertThat(Math.abs(run.oilDrift())).isLessThan(1e-9);
        assertThat(run.value(MotionChannel.LOWEST_CHAMBER)).isPositive();
    }
}
