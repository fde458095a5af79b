package swashlight.drive.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.LoopParameter;
import swashlight.drive.description.MakeUpParameter;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Quantity;
import swashlight.drive.description.TypicalDrive;
import swashlight.drive.steady.LedgerItem;
import swashlight.drive.steady.SteadyAnswer;
import swashlight.drive.steady.SteadyDrive;
import swashlight.drive.steady.SteadyPoint;

/** What flows through valves and orifices while a drive runs is, on the whole, what the steady view's ledger has for them. */
final class PathFlowsTest {
    private static final double NEAR =
            0.1; // share: ports, which the steady view leaves out, move pressures by some hundredths
    private static final double SMALL = 3e-8; // m³/s

    @ParameterizedTest
    @CsvSource({
        // bypass area, lift, pulled; bleed; relief; charge pump; stroke; wheels
        "20e-6, 0,    0.02, 0,      0,    0,    0.5,  DRIVEN, BYPASS_FLOW",
        "0,     1e-4, 0.3,  0,      0,    0,    0.5,  DRIVEN, LIFTED_BLOCK_FLOW",
        "0,     0,    0,    0.8e-3, 0,    0,    0.5,  DRIVEN, BLEED_A_FLOW",
        "0,     0,    0,    0.8e-3, 0,    0,    -0.5, DRIVEN, BLEED_B_FLOW",
        "0,     0,    0,    0,      3e6,  0,    0.4,  HELD,   RELIEF_FLOW",
        "0,     0,    0,    0,      3e6,  0,    -0.4, HELD,   RELIEF_FLOW",
        "0,     0,    0,    0,      0,    2e-6, 0.5,  DRIVEN, CHARGE_RELIEF_FLOW",
        "0,     0,    0,    0,      0,    0,    0.5,  DRIVEN, CHECK_B_FLOW",
        "0,     0,    0,    0,      0,    0,    -0.5, DRIVEN, CHECK_A_FLOW",
    })
    void areThoseOfTheLedger(
            double area,
            double lift,
            double pulled,
            double bleed,
            double relief,
            double charge,
            double stroke,
            String wheels,
            MotionChannel telling) {
        Map<Parameter, Quantity> known = new HashMap<>();
        known.put(LoopParameter.BYPASS_AREA, Quantity.given(area));
        known.put(LoopParameter.BYPASS_LIFT, Quantity.given(lift));
        known.put(LoopParameter.BLEED_A, Quantity.given(bleed));
        known.put(LoopParameter.BLEED_B, Quantity.given(bleed));
        known.put(LoopParameter.RELIEF_A, Quantity.given(relief));
        known.put(LoopParameter.RELIEF_B, Quantity.given(relief));
        known.put(MakeUpParameter.CHARGE_DISPLACEMENT, Quantity.given(charge));
        known.put(MakeUpParameter.CHARGE_RELIEF, Quantity.given(1.2e6));
        DriveDescription drive = TypicalDrive.complete("paths", true, known);
        MotionDuty duty = MotionDuty.driving(Timeline.constant(stroke), Math.copySign(0.05, stroke), 333.15)
                .change()
                .bypass(Timeline.constant(pulled))
                .footing(MotionDuty.Footing.valueOf(wheels.equals("HELD") ? "HELD" : "GROUND"))
                .build();
        MotionRun run = new MovingDrive(drive).start(duty, MotionStart.SETTLED, MotionRun.USUAL_TOLERANCE);
        assertThat(run.advance(0.3)).isTrue();
        Map<MotionChannel, Double> mean = new HashMap<>();
        double[] last = {run.time()};
        double begun = run.time();
        assertThat(run.advance(0.7, at -> {
                    for (MotionChannel channel : ITEMS.keySet()) {
                        mean.merge(channel, (at.time() - last[0]) * at.value(channel) / (0.7 - begun), Double::sum);
                    }
                    last[0] = at.time();
                }))
                .isTrue();
        SteadyPoint steady = ((SteadyAnswer.Converged) new SteadyDrive(drive)
                        .answer(duty.change()
                                .oilTemperature(run.value(MotionChannel.OIL_TEMPERATURE))
                                .build()
                                .settledAt(0)))
                .point();
        ITEMS.forEach((channel, item) -> {
            double there = item.applyAsDouble(steady);
            assertThat(mean.get(channel)).as(channel.name()).isCloseTo(there, within(NEAR * Math.abs(there) + SMALL));
        });
        assertThat(Math.abs(ITEMS.get(telling).applyAsDouble(steady)))
                .as("told by " + telling)
                .isGreaterThan(10 * SMALL);
    }

    private static final Map<MotionChannel, ToDoubleFunction<SteadyPoint>> ITEMS = Map.of(
            MotionChannel.CHECK_A_FLOW, point -> point.intoA(LedgerItem.CHECK_A),
            MotionChannel.CHECK_B_FLOW, point -> point.intoB(LedgerItem.CHECK_B),
            MotionChannel.BLEED_A_FLOW, point -> point.intoA(LedgerItem.BLEED_A),
            MotionChannel.BLEED_B_FLOW, point -> point.intoB(LedgerItem.BLEED_B),
            MotionChannel.BYPASS_FLOW, point -> point.intoB(LedgerItem.BYPASS),
            MotionChannel.LIFTED_BLOCK_FLOW,
                    point -> -point.intoA(LedgerItem.LIFTED_BLOCK) - point.intoB(LedgerItem.LIFTED_BLOCK),
            MotionChannel.RELIEF_FLOW, point -> point.intoB(LedgerItem.RELIEF),
            MotionChannel.CHARGE_RELIEF_FLOW, point -> -point.intoGallery(LedgerItem.CHARGE_RELIEF));
}
