package swashlight.drive.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.LoopParameter;
import swashlight.drive.description.OilParameter;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Place;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.steady.InputState;
import swashlight.drive.unit.FlowRipple;

/**
 * Limit: oil that hardly yields, sharp ports, a loop short-circuited through a wide bypass. Then the pump's flow is geometry alone:
 *
 * <pre>
 *   Q = A R tan α ω cos ψ / (2 sin(π/2N))     ψ from −π/2N to π/2N between two pistons at their dead centres, N odd
 * </pre>
 *
 * Source: sum of N sines, as in Ivantysyn and Ivantysynova 2001 (from memory); ripple in per cent: the sum sampled numerically, four
 * decimals.
 */
final class RigidOilTest {
    private static final double SPEED = 20; // rad/s
    private static final double TURN = 5e-4; // rad a step
    private static final double TIGHT = 2e-6; // m
    private static final double RAMP = 0.005; // rad, the least allowed

    private static DriveDescription drive(int pistons) {
        Map<Parameter, Quantity> known = new HashMap<>();
        for (Place place : Place.values()) {
            known.put(new UnitParameter(place, UnitProperty.PISTON_COUNT), Quantity.given(pistons));
            known.put(new UnitParameter(place, UnitProperty.PORT_OVERLAP), Quantity.given(0));
            known.put(new UnitParameter(place, UnitProperty.PORT_RAMP), Quantity.given(RAMP));
            known.put(new UnitParameter(place, UnitProperty.GROOVE_AREA), Quantity.given(0));
            known.put(new UnitParameter(place, UnitProperty.BORE_CLEARANCE), Quantity.given(TIGHT));
        }
        known.put(OilParameter.FREE_AIR, Quantity.given(0));
        known.put(OilParameter.BULK_MODULUS40, Quantity.given(3e9));
        known.put(LoopParameter.BYPASS_AREA, Quantity.given(1e-3));
        return TypicalDrive.complete("rigid", true, known);
    }

    /** Pistons and ripple (max − min)/mean in per cent. */
    @ParameterizedTest
    @CsvSource({"5, 4.9758", "7, 2.5284", "9, 1.5270", "11, 1.0213", "13, 0.7309"})
    void theFlowOfRigidOilIsGeometryAlone(int pistons, double percent) {
        MotionDuty duty = MotionDuty.driving(Timeline.constant(1), 0, 313.15)
                .with(new InputState.Fixed(SPEED))
                .with(MotionDuty.Footing.HELD)
                .change()
                .bypass(Timeline.constant(1))
                .build();
        DriveDescription drive = drive(pistons);
        MotionRun run = new MovingDrive(drive).start(duty, MotionStart.AT_REST, 1e-6);
        run.advance(0.5 / SPEED);
        double diameter = drive.value(UnitParameter.pump(UnitProperty.PISTON_DIAMETER));
        double reach = Math.PI / 4 * diameter * diameter * drive.value(UnitParameter.pump(UnitProperty.PITCH_RADIUS));
        double scale = reach * Math.tan(run.value(MotionChannel.SWASH_ANGLE)) * SPEED;
        double most = 0;
        double worst = 0;
        double period = Math.PI / pistons;
        for (double turned = 0; turned < 2.2 * period; turned += TURN) {
            run.step(TURN / SPEED);
            double angle = run.value(MotionChannel.PUMP_ANGLE) - TURN / 2; // the flow is the mean of the step
            double into = angle - period * Math.floor(angle / period); // from one dead centre to the next
            if (into > RAMP && into < period - RAMP) {
                double law = Math.cos(into - period / 2) / (2 * Math.sin(period / 2));
                double flow = run.value(MotionChannel.PUMP_FLOW) / scale;
                worst = Math.max(worst, Math.abs(flow / law - 1));
                most = Math.max(most, flow);
            }
        }
        assertThat(worst).isLessThan(1e-6);
        FlowRipple ripple = new FlowRipple(pistons);
        assertThat(most).isCloseTo(ripple.greatestSum(), within(1e-6 * most));
        assertThat(100 * ripple.overMean()).isCloseTo(percent, within(5e-5));
    }
}
