package swashlight.drive.steady;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.InputParameter;
import swashlight.drive.description.LoopParameter;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;

/**
 * Law: with sides A and B exchanged, and stroke, slope and push turned round, every answer is the mirror of what it was, for random drives,
 * faults and duties.
 */
final class MirrorTest {
    private static final long SEED = 20261127;
    private static final double SAME = 1e-9; // 1

    private static final Map<Parameter, Parameter> SIDES = Map.ofEntries(
            Map.entry(LoopParameter.VOLUME_A, LoopParameter.VOLUME_B),
            Map.entry(LoopParameter.CHECK_A_LEAK, LoopParameter.CHECK_B_LEAK),
            Map.entry(LoopParameter.CHECK_A_LIFT, LoopParameter.CHECK_B_LIFT),
            Map.entry(LoopParameter.CHECK_A_REACH, LoopParameter.CHECK_B_REACH),
            Map.entry(LoopParameter.BLEED_A, LoopParameter.BLEED_B),
            Map.entry(LoopParameter.RELIEF_A, LoopParameter.RELIEF_B),
            Map.entry(LoopParameter.CRACK_A, LoopParameter.CRACK_B),
            Map.entry(InputParameter.CONTROL_FORWARD_SHARE, InputParameter.CONTROL_REVERSE_SHARE),
            Map.entry(
                    UnitParameter.pump(UnitProperty.SIDE_A_SCORE_WIDTH),
                    UnitParameter.pump(UnitProperty.SIDE_B_SCORE_WIDTH)),
            Map.entry(
                    UnitParameter.pump(UnitProperty.SIDE_A_SCORE_DEPTH),
                    UnitParameter.pump(UnitProperty.SIDE_B_SCORE_DEPTH)),
            Map.entry(
                    UnitParameter.motor(UnitProperty.SIDE_A_SCORE_WIDTH),
                    UnitParameter.motor(UnitProperty.SIDE_B_SCORE_WIDTH)),
            Map.entry(
                    UnitParameter.motor(UnitProperty.SIDE_A_SCORE_DEPTH),
                    UnitParameter.motor(UnitProperty.SIDE_B_SCORE_DEPTH)));

    private final SteadySolver left = new SteadySolver();
    private final SteadySolver right = new SteadySolver();
    private final SteadyPoint here = new SteadyPoint();
    private final SteadyPoint there = new SteadyPoint();
    private String story = "";

    @Test
    void exchangedSidesMirrorEveryAnswer() {
        RandomCases cases = new RandomCases(SEED);
        int settled = 0;
        for (int i = 0; i < 10_000; i++) {
            RandomCases.Case next = i % 2 == 0 ? cases.ordinary() : cases.unusual();
            scoreByLot(next.vector(), cases);
            story = "seed " + SEED + ", " + next;
            left.load(next.vector());
            right.load(mirrored(next.vector()));
            boolean one = left.solve(next.duty());
            boolean other = right.solve(mirrored(next.duty()));
            assertThat(other).as(story).isEqualTo(one);
            if (one) {
                here.fill(left);
                there.fill(right);
                compare();
                settled++;
            }
        }
        assertThat(settled).isGreaterThan(9_900);
    }

    private static void scoreByLot(double[] vector, RandomCases cases) {
        for (UnitProperty depth :
                new UnitProperty[] {UnitProperty.SIDE_A_SCORE_DEPTH, UnitProperty.SIDE_B_SCORE_DEPTH}) {
            RandomCases.set(vector, UnitParameter.pump(depth), 3e-5 * cases.random.nextDouble());
            RandomCases.set(vector, UnitParameter.motor(depth), 3e-5 * cases.random.nextDouble());
        }
    }

    private void compare() {
        double scale = Math.abs(here.pressureA()) + Math.abs(here.pressureB());
        same(here.pressureA(), there.pressureB(), scale);
        same(here.pressureB(), there.pressureA(), scale);
        same(here.galleryPressure(), there.galleryPressure(), scale);
        same(here.fillA(), there.fillB(), 1);
        same(here.pumpSpeed(), there.pumpSpeed(), 100);
        same(here.pumpTorque(), there.pumpTorque(), 10);
        same(here.motorSpeed(), -there.motorSpeed(), 100);
        same(here.groundSpeed(), -there.groundSpeed(), 1);
        same(here.axleTorque(), -there.axleTorque(), 100);
        same(here.pushForce(), -there.pushForce(), 1000);
        for (LedgerItem item : LedgerItem.values()) {
            same(here.intoA(item), there.intoB(mirrored(item)), 1e-4);
            same(here.intoGallery(item), there.intoGallery(mirrored(item)), 1e-4);
            same(here.power(item), there.power(mirrored(item)), 1000);
        }
    }

    private void same(double one, double other, double scale) {
        assertThat(other)
                .as(story)
                .isBetween(one - SAME * (scale + Math.abs(one)), one + SAME * (scale + Math.abs(one)));
    }

    private static double[] mirrored(double[] vector) {
        double[] turned = vector.clone();
        SIDES.forEach((a, b) -> {
            turned[a.index()] = vector[b.index()];
            turned[b.index()] = vector[a.index()];
        });
        turned[InputParameter.CONTROL_NEUTRAL_OFFSET.index()] *= -1;
        return turned;
    }

    private static Duty mirrored(Duty duty) {
        Duty turned = duty.withStroke(-duty.stroke());
        if (duty.wheels() instanceof WheelState.Ground ground) {
            return turned.with(new WheelState.Ground(-ground.slope(), ground.pull()));
        }
        if (duty.wheels() instanceof WheelState.Pushed push) {
            return turned.with(new WheelState.Pushed(-push.speed(), -push.slope()));
        }
        return turned;
    }

    private static LedgerItem mirrored(LedgerItem item) {
        return switch (item) {
            case CRACK_A -> LedgerItem.CRACK_B;
            case CRACK_B -> LedgerItem.CRACK_A;
            case CHECK_A -> LedgerItem.CHECK_B;
            case CHECK_B -> LedgerItem.CHECK_A;
            case BLEED_A -> LedgerItem.BLEED_B;
            case BLEED_B -> LedgerItem.BLEED_A;
            default -> item;
        };
    }
}
