package swashlight.drive.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.InputParameter;
import swashlight.drive.description.Origin;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.steady.InputState;

/** Laws of an engine that is turned off, or parted from the drive, while it turns. */
final class TurnedOffTest {
    private static final DriveDescription DRIVE = TypicalDrive.complete("any", true, Map.of());
    private static final MotionDuty DRIVING = MotionDuty.driving(Timeline.constant(0.5), 0, 333.15);
    private static final MotionDuty OFF = DRIVING.with(new InputState.Off());

    private static MotionRun begun() {
        MotionRun run = new MovingDrive(DRIVE).start(DRIVING, MotionStart.SETTLED, MotionRun.USUAL_TOLERANCE);
        run.advance(0.05);
        return run;
    }

    /** Newton for engine and input shaft together, the belt carrying between them: J_e Δω_e + k J_p Δω_p = −∫ (drag + k T_input) dt. */
    @Test
    void whatTurnsIsSlowedByItsTorques() {
        MotionRun run = new MovingDrive(DRIVE).start(OFF, MotionState.of(begun()), MotionRun.USUAL_TOLERANCE);
        double ratio = DRIVE.value(InputParameter.BELT_SPEED_RATIO);
        double engineInertia = DRIVE.value(InputParameter.ENGINE_INERTIA);
        double pumpInertia = DRIVE.value(UnitParameter.pump(UnitProperty.INERTIA));
        double drag = Shafts.MOTORED_SHARE * DRIVE.value(InputParameter.ENGINE_PEAK_TORQUE)
                + DRIVE.value(InputParameter.ENGINE_OTHER_TORQUE);
        double engine = run.value(MotionChannel.ENGINE_SPEED);
        double pump = run.value(MotionChannel.PUMP_SPEED);
        double taken = 0; // N·m·s
        int parts = 4000;
        double span = 0.4; // s
        for (int part = 1; part <= parts; part++) {
            double before = run.value(MotionChannel.INPUT_TORQUE);
            assertThat(run.advance(span * part / parts)).isTrue();
            taken += 0.5 * (before + run.value(MotionChannel.INPUT_TORQUE)) * span / parts;
        }
        double lost = engineInertia * (engine - run.value(MotionChannel.ENGINE_SPEED))
                + ratio * pumpInertia * (pump - run.value(MotionChannel.PUMP_SPEED));
        assertThat(lost).isCloseTo(drag * span + ratio * taken, within(0.02 * lost));
        assertThat(run.value(MotionChannel.ENGINE_SPEED)).isLessThan(0.95 * engine);
    }

    @Test
    void itComesToRestAndStays() {
        MotionRun run = new MovingDrive(DRIVE).start(OFF, MotionState.of(begun()), MotionRun.USUAL_TOLERANCE);
        assertThat(run.advance(20)).isTrue();
        assertThat(run.value(MotionChannel.ENGINE_SPEED)).isZero();
        assertThat(run.value(MotionChannel.PUMP_SPEED)).isZero();
        assertThat(run.value(MotionChannel.GROUND_SPEED)).isCloseTo(0, within(0.01));
        MotionRun on = new MovingDrive(DRIVE).start(DRIVING, MotionState.of(run), MotionRun.USUAL_TOLERANCE);
        assertThat(on.advance(0.1)).isTrue();
        assertThat(on.value(MotionChannel.ENGINE_SPEED)).isZero();
    }

    @Test
    void aShearedKeyLeavesTheShaftStanding() {
        DriveDescription sheared = DRIVE.with(InputParameter.BELT_KEYED, new Quantity(0, 0, Origin.GIVEN));
        MotionRun run = new MovingDrive(sheared).start(DRIVING, MotionState.of(begun()), MotionRun.USUAL_TOLERANCE);
        assertThat(run.advance(0.2)).isTrue();
        assertThat(run.value(MotionChannel.PUMP_SPEED)).isZero();
    }
}
