package swashlight.drive.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Place;
import swashlight.drive.description.TypicalDrive;

/** Laws of a run that somebody steers while it goes: other controls on the way, and steps by shaft angle. */
final class HandOnTheLeverTest {
    private static final DriveDescription DRIVE = TypicalDrive.complete("any", true, Map.of());
    private static final MotionDuty HALF = MotionDuty.driving(Timeline.constant(0.5), 0.05, 333.15);

    private static MotionRun begun() {
        MotionRun run = new MovingDrive(DRIVE).start(HALF, MotionStart.SETTLED, MotionRun.USUAL_TOLERANCE);
        run.advance(0.05);
        return run;
    }

    @Test
    void theSameControlsChangeNothing() {
        MotionRun alone = begun();
        MotionRun steered = begun();
        steered.redirect(HALF);
        alone.advance(0.08);
        steered.advance(0.08);
        for (MotionChannel channel : MotionChannel.values()) {
            assertThat(steered.value(channel)).as(channel.name()).isEqualTo(alone.value(channel));
        }
    }

    /** Taking the lever back on the way is the same as having planned to. */
    @Test
    void aMoveOnTheWayIsAMovePlanned() {
        Timeline back = Timeline.through(new double[] {0, 0.05, 0.1}, new double[] {0.5, 0.5, 0.1});
        MotionDuty plan = HALF.change().stroke(back).build();
        MotionRun planned = new MovingDrive(DRIVE).start(plan, MotionStart.SETTLED, MotionRun.USUAL_TOLERANCE);
        MotionRun steered = begun();
        steered.redirect(plan);
        planned.advance(0.2);
        steered.advance(0.2);
        double speed = planned.value(MotionChannel.GROUND_SPEED);
        assertThat(steered.value(MotionChannel.GROUND_SPEED)).isCloseTo(speed, within(1e-4 * speed));
        assertThat(steered.value(MotionChannel.SWASH_ANGLE))
                .isCloseTo(planned.value(MotionChannel.SWASH_ANGLE), within(1e-9));
        assertThat(steered.value(MotionChannel.SWASH_ANGLE)).isLessThan(0.5 * begun().value(MotionChannel.SWASH_ANGLE));
    }

    @Test
    void aShaftTurnsByTheAngleAsked() {
        MotionRun run = begun();
        for (Place place : Place.values()) {
            MotionChannel shaft = place == Place.PUMP ? MotionChannel.PUMP_ANGLE : MotionChannel.MOTOR_ANGLE;
            double from = run.value(shaft);
            assertThat(run.turn(place, Math.toRadians(1), 1)).isTrue();
            assertThat(run.value(shaft) - from).isCloseTo(Math.toRadians(1), within(1e-7));
        }
    }

    @Test
    void aShaftThatStandsStopsAtTheTimeGiven() {
        MotionDuty still = HALF.change().footing(MotionDuty.Footing.HELD).build();
        MotionRun run = new MovingDrive(DRIVE).start(still, MotionStart.AT_REST, MotionRun.USUAL_TOLERANCE);
        assertThat(run.turn(Place.MOTOR, 1, 0.01)).isTrue();
        assertThat(run.time()).isCloseTo(0.01, within(1e-9));
        assertThat(run.value(MotionChannel.MOTOR_ANGLE)).isEqualTo(0);
    }

    /** What a chamber takes from the ports and loses is what its two ports give and what leaks. */
    @Test
    void portsAddUp() {
        MotionRun run = begun();
        for (Place place : Place.values()) {
            Chambers chambers = run.chambers(place);
            for (int k = 0; k < chambers.count(); k++) {
                assertThat(chambers.fromSideA(k) + chambers.fromSideB(k)).isEqualTo(chambers.portFlow(k));
                if (chambers.zone(k) == PortZone.SIDE_A) {
                    assertThat(chambers.fromSideB(k)).isEqualTo(0);
                }
                assertThat(chambers.leak(k) * (chambers.pressure(k) - 101_325)).isGreaterThanOrEqualTo(0);
            }
        }
    }
}
