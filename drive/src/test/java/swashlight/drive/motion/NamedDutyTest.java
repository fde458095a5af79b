package swashlight.drive.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.TypicalDrive;

/** Laws of the named duties: each runs to its end on a usual drive, keeps its oil, and shows what its name says. */
final class NamedDutyTest {
    private static final DriveDescription DRIVE = TypicalDrive.complete("any", true, Map.of());

    @ParameterizedTest
    @EnumSource
    void runsToItsEndAndKeepsItsOil(NamedDuty named) {
        MotionRun run = run(named, 1);
        assertThat(run.failed()).isFalse();
        assertThat(run.time()).isCloseTo(named.plan().duration(), within(1e-9));
        assertThat(Math.abs(run.oilDrift())).isLessThan(1e-9);
        assertThat(NamedDuty.find(named.key())).contains(named);
    }

    @Test
    void showsWhatItsNameSays() {
        assertThat(ground(NamedDuty.LAUNCH, 0)).isZero();
        assertThat(ground(NamedDuty.LAUNCH, 1)).isGreaterThan(0.5);
        assertThat(ground(NamedDuty.REVERSE, 0)).isGreaterThan(0.5);
        assertThat(ground(NamedDuty.REVERSE, 1)).isLessThan(-0.5);
        assertThat(run(NamedDuty.HILL, 1).value(MotionChannel.PRESSURE_A))
                .isGreaterThan(2 * run(NamedDuty.HILL, 0).value(MotionChannel.PRESSURE_A));
        assertThat(ground(NamedDuty.HOLD, 1)).as("it creeps back").isBetween(-0.2, 0.0);
        assertThat(run(NamedDuty.BYPASS_PUSH, 1).value(MotionChannel.PUSH_FORCE))
                .as("with the bypass let go the drive brakes")
                .isGreaterThan(1.5 * run(NamedDuty.BYPASS_PUSH, 0.55).value(MotionChannel.PUSH_FORCE));
        assertThat(ground(NamedDuty.COLD_START, 1)).isGreaterThan(0.3);
    }

    private static double ground(NamedDuty named, double share) {
        return run(named, share).value(MotionChannel.GROUND_SPEED);
    }

    private static MotionRun run(NamedDuty named, double share) {
        MotionPlan plan = named.plan();
        MotionRun run = new MovingDrive(DRIVE).start(plan.duty(), plan.start(), MotionRun.USUAL_TOLERANCE);
        run.advance(share * plan.duration());
        return run;
    }
}
