package swashlight.drive.steady;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import swashlight.drive.description.InputParameter;
import swashlight.drive.description.LoopParameter;
import swashlight.drive.description.MakeUpParameter;
import swashlight.drive.description.OutputParameter;
import swashlight.drive.oil.Oil;

/** Laws: what every technician knows a drive does in each ordinary situation. Facts of mechanics; no number of our own is expected. */
final class SituationsTest {
    private static final double WARM = Oil.CELSIUS_ZERO + 60; // K
    private static final double COLD = Oil.CELSIUS_ZERO - 10; // K
    private static final double SLOPE = Math.toRadians(8); // rad
    private static final double BAR = 1e5; // Pa

    private final Rig rig = Rig.typical();
    private final double weight = rig.get(OutputParameter.MACHINE_MASS) * LoadLaw.GRAVITY; // N

    @Test
    void uphillForwardSideADrivesAndTheWorkGoesIntoTheClimb() {
        SteadyPoint point = rig.at(Duty.driving(1, WARM, SLOPE));
        assertThat(point.groundSpeed()).isPositive();
        assertThat(point.pressureA()).isGreaterThan(point.pressureB() + 5 * BAR);
        assertThat(point.groundForce())
                .isCloseTo(weight * (Math.sin(SLOPE) + rolling() * Math.cos(SLOPE)), withinPercentage(1e-9));
        assertThat(point.power(LedgerItem.GRADE))
                .isCloseTo(weight * Math.sin(SLOPE) * point.groundSpeed(), withinPercentage(1e-9));
        assertThat(point.events()).isEmpty();
    }

    @Test
    void reverseIsDrivenBySideBAndReachesLess() {
        SteadyPoint forward = rig.at(Duty.driving(1, WARM, 0));
        SteadyPoint reverse = rig.at(Duty.driving(-1, WARM, 0));
        assertThat(reverse.pressureB()).isGreaterThan(reverse.pressureA() + 5 * BAR);
        double reach = rig.get(InputParameter.CONTROL_REVERSE_SHARE);
        assertThat(-reverse.groundSpeed() / forward.groundSpeed()).isCloseTo(reach, withinPercentage(3));
    }

    @Test
    void partStrokeGivesLessSpeedForTheSamePressure() {
        SteadyPoint full = rig.at(Duty.driving(1, WARM, SLOPE));
        SteadyPoint half = rig.at(Duty.driving(0.5, WARM, SLOPE));
        assertThat(half.groundSpeed()).isBetween(0.4 * full.groundSpeed(), 0.55 * full.groundSpeed());
        assertThat(half.pressureA()).isCloseTo(full.pressureA(), withinPercentage(10));
        assertThat(half.pumpTorque()).isLessThan(0.65 * full.pumpTorque());
    }

    @Test
    void neutralOnTheLevelStands() {
        SteadyPoint point = rig.at(Duty.driving(0, WARM, 0));
        assertThat(point.events()).containsExactly(Event.STANDS);
        assertThat(point.groundSpeed()).isZero();
        assertThat(point.makeUpFlow()).isCloseTo(0, within(1e-12));
        assertThat(point.pumpTorque()).isPositive();
    }

    @Test
    void neutralSetOffCreepsThatWay() {
        Rig off = rig.with(InputParameter.CONTROL_NEUTRAL_OFFSET, 0.015);
        assertThat(off.at(Duty.driving(0, WARM, 0)).groundSpeed()).isPositive();
        assertThat(rig.with(InputParameter.CONTROL_NEUTRAL_OFFSET, -0.015)
                        .at(Duty.driving(0, WARM, 0))
                        .groundSpeed())
                .isNegative();
        Rig bled = off.with(LoopParameter.BLEED_A, 2e-3).with(LoopParameter.BLEED_B, 2e-3);
        assertThat(bled.at(Duty.driving(0, WARM, 0)).events()).contains(Event.STANDS);
    }

    @Test
    void downhillTheHighSideChangesOverAndTheEngineIsSpedUp() {
        SteadyPoint point = rig.at(Duty.driving(0.6, WARM, -SLOPE));
        assertThat(point.groundSpeed()).isPositive();
        assertThat(point.pressureB()).isGreaterThan(point.pressureA() + 5 * BAR);
        assertThat(point.events()).contains(Event.MOTOR_PUMPS);
        assertThat(point.power(LedgerItem.GRADE)).isNegative();
        assertThat(point.engineSpeed()).isGreaterThan(rig.get(InputParameter.ENGINE_NO_LOAD_SPEED));
    }

    @Test
    void engineOffItRollsDownSlowlyAndTheSideFollowsTheDirection() {
        SteadyPoint back = rig.at(Duty.rollDown(WARM, SLOPE));
        SteadyPoint ahead = rig.at(Duty.rollDown(WARM, -SLOPE));
        assertThat(back.groundSpeed()).isNegative();
        assertThat(back.pressureA()).isGreaterThan(back.pressureB() + 5 * BAR);
        assertThat(ahead.groundSpeed()).isCloseTo(-back.groundSpeed(), withinPercentage(1e-6));
        assertThat(ahead.pressureB()).isGreaterThan(ahead.pressureA() + 5 * BAR);
        assertThat(back.events()).contains(Event.MOTOR_PUMPS);
        assertThat(back.pumpSpeed()).isZero();
        SteadyPoint hot = rig.at(Duty.rollDown(WARM + 40, SLOPE));
        assertThat(-hot.groundSpeed()).isGreaterThan(-back.groundSpeed());
        SteadyPoint braked = rig.at(Duty.rollDown(WARM, SLOPE).withBrake(1));
        assertThat(braked.events()).contains(Event.STANDS);
    }

    @Test
    void heldWheelsWithoutReliefOverloadTheEngineOrTheOil() {
        Duty held = Duty.driving(0.3, WARM, 0).with(new WheelState.Held());
        SteadyPoint point = rig.at(held);
        assertThat(point.motorSpeed()).isZero();
        assertThat(point.events()).contains(Event.EXTREME_PRESSURE);
        assertThat(-point.power(LedgerItem.ENGINE)).isCloseTo(point.heat() + belt(point), withinPercentage(1e-6));
        assertThat(rig.at(held.withStroke(1)).events()).contains(Event.ENGINE_STALLS);
    }

    @Test
    void heldWheelsWithReliefStayNearItsSetting() {
        Rig relieved = rig.with(LoopParameter.RELIEF_A, 150 * BAR).with(LoopParameter.RELIEF_B, 150 * BAR);
        SteadyPoint point = relieved.at(Duty.driving(0.3, WARM, 0).with(new WheelState.Held()));
        double difference = point.pressureA() - point.pressureB();
        double over = point.intoB(LedgerItem.RELIEF) / rig.get(LoopParameter.RELIEF_SLOPE);
        assertThat(point.events()).containsExactly(Event.RELIEF_OPENS);
        assertThat(difference).isBetween(150 * BAR, 150 * BAR + over + 0.05 * 150 * BAR);
        assertThat(point.power(LedgerItem.RELIEF)).isGreaterThan(0.5 * point.heat());
    }

    @Test
    void bypassOpenItIsPushedWithLittleMoreThanItsRollingResistance() {
        Duty pushed = Duty.rollDown(WARM, 0).with(new WheelState.Pushed(0.5, 0));
        SteadyPoint open = rig.at(pushed.withBypass(1));
        SteadyPoint shut = rig.at(pushed);
        assertThat(open.pushForce()).isBetween(rolling() * weight, 2 * rolling() * weight);
        assertThat(open.events()).doesNotContain(Event.WHEELS_SKID);
        assertThat(shut.events()).contains(Event.WHEELS_SKID);
        assertThat(shut.pushForce()).isGreaterThan(10 * open.pushForce());
        double rim = shut.axleSpeed() * rig.get(OutputParameter.WHEELS_ROLLING_RADIUS);
        assertThat(rim).isBetween(0.0, 0.5 * shut.groundSpeed());
    }

    @Test
    void bypassOpenItDoesNotDrive() {
        SteadyPoint open = rig.at(Duty.driving(1, WARM, SLOPE).withBypass(1));
        assertThat(open.groundSpeed()).isNegative();
        assertThat(open.pressureA())
                .isLessThan(rig.at(Duty.driving(1, WARM, SLOPE)).pressureA() / 2);
        Rig lifting = rig.with(LoopParameter.BYPASS_AREA, 0).with(LoopParameter.BYPASS_LIFT, 0.5e-3);
        assertThat(lifting.at(Duty.driving(1, WARM, 0).withBypass(1)).groundSpeed())
                .isZero();
        assertThat(lifting.at(Duty.driving(1, WARM, 0)).groundSpeed()).isPositive();
    }

    @Test
    void coldWithABlockedFilterTheLowSideStarvesAndTheDriveFades() {
        Duty climb = Duty.driving(1, COLD, SLOPE);
        SteadyPoint clean = rig.at(climb);
        SteadyPoint blocked = rig.with("filter-blocked", 60).at(climb);
        assertThat(clean.events()).doesNotContain(Event.SIDE_B_STARVES);
        assertThat(blocked.events()).contains(Event.SIDE_B_STARVES);
        assertThat(blocked.fillB()).isBetween(0.1, 0.999);
        assertThat(blocked.groundSpeed()).isLessThan(0.9 * clean.groundSpeed());
        assertThat(rig.with("filter-blocked", 60)
                        .at(climb.withOilTemperature(WARM))
                        .fillB())
                .isEqualTo(1);
    }

    @Test
    void aChargePumpHoldsTheLowSideNearItsSetting() {
        double setting = 7 * BAR;
        Rig charged =
                rig.with(MakeUpParameter.CHARGE_DISPLACEMENT, 1.2e-6).with(MakeUpParameter.CHARGE_RELIEF, setting);
        for (double stroke : new double[] {0, 1, -1}) {
            SteadyPoint point = charged.at(Duty.driving(stroke, WARM, 0));
            double low = Math.min(point.pressureA(), point.pressureB()) - Oil.ATMOSPHERE;
            assertThat(low).as("stroke " + stroke).isBetween(0.9 * setting, 1.15 * setting);
            assertThat(point.intoGallery(LedgerItem.FILTER)).isZero();
        }
        SteadyPoint off = charged.at(Duty.rollDown(WARM, SLOPE));
        assertThat(off.intoGallery(LedgerItem.FILTER))
                .as("drawn past the standing pump")
                .isPositive();
        assertThat(off.intoGallery(LedgerItem.CHARGE_PUMP)).isZero();
        SteadyPoint starved = charged.with("filter-blocked", 5000).at(Duty.driving(1, WARM, SLOPE));
        double nominal = 1.2e-6 * starved.pumpSpeed() / (2 * Math.PI);
        assertThat(starved.intoGallery(LedgerItem.CHARGE_PUMP)).isLessThan(0.5 * nominal);
    }

    @Test
    void anOverloadedBeltLetsGoWhileTheEngineRunsOn() {
        SteadyPoint weak = rig.with(InputParameter.BELT_CAPACITY, 5).at(Duty.driving(1, WARM, 2 * SLOPE));
        assertThat(weak.events()).contains(Event.BELT_SLIPS, Event.STANDS);
        assertThat(weak.pumpTorque()).isCloseTo(5, withinPercentage(1));
        assertThat(weak.engineSpeed()).isGreaterThan(0.95 * rig.get(InputParameter.ENGINE_NO_LOAD_SPEED));
        assertThat(belt(weak)).isGreaterThan(0.9 * 5 * weak.engineSpeed());
        SteadyPoint gone = rig.with(InputParameter.BELT_CAPACITY, 0.2).at(Duty.driving(1, WARM, SLOPE));
        assertThat(gone.groundSpeed()).isNegative();
        assertThat(gone.beltSlip()).isEqualTo(1);
    }

    @Test
    void aWeakEngineLugsAndThenStalls() {
        double noLoad = rig.get(InputParameter.ENGINE_NO_LOAD_SPEED);
        SteadyPoint lugs = rig.with(InputParameter.ENGINE_STRENGTH, 0.2).at(Duty.driving(1, WARM, 1.75 * SLOPE));
        assertThat(lugs.engineSpeed()).isBetween(0.4 * noLoad, 0.8 * noLoad);
        SteadyPoint stalls = rig.with(InputParameter.ENGINE_STRENGTH, 0.1).at(Duty.driving(1, WARM, 1.75 * SLOPE));
        assertThat(stalls.events()).contains(Event.ENGINE_STALLS, Event.MOTOR_PUMPS);
        assertThat(stalls.groundSpeed()).isNegative();
    }

    @Test
    void aShearedKeyPassesNothing() {
        SteadyPoint input = rig.with("input-key-sheared", 0).at(Duty.driving(1, WARM, 0));
        assertThat(input.events()).containsExactly(Event.STANDS);
        assertThat(input.pumpTorque()).isCloseTo(0, within(1e-9));
        SteadyPoint axle = rig.with("axle-key-sheared", 0).at(Duty.driving(1, WARM, SLOPE));
        assertThat(axle.motorSpeed()).isPositive();
        assertThat(axle.groundSpeed()).isZero();
        assertThat(axle.groundForce()).isZero();
    }

    @Test
    void againstAWallTheWheelsSpinAtTheGripOfTheGround() {
        SteadyPoint point = rig.at(Duty.driving(1, WARM, 0).with(new WheelState.Ground(0, 5000)));
        double grip = rig.get(OutputParameter.WHEELS_TRACTION) * rig.get(OutputParameter.WHEELS_LOAD_SHARE) * weight;
        assertThat(point.events()).contains(Event.WHEELS_SPIN);
        assertThat(point.groundForce()).isCloseTo(grip, withinPercentage(1e-9));
        assertThat(point.groundSpeed()).isZero();
        assertThat(point.power(LedgerItem.WHEEL_SLIP))
                .isCloseTo(
                        grip * point.axleSpeed() * rig.get(OutputParameter.WHEELS_ROLLING_RADIUS),
                        withinPercentage(1e-9));
    }

    @Test
    void breakawayHoldsWhatRunningFrictionWouldNot() {
        Rig dry = rig.with("motor-thrust-worn", 0.08);
        int held = 0;
        for (int i = 0; i < 100; i++) {
            double offset = i * 5e-5; // rad
            Duty neutral = Duty.driving(0, WARM, 0);
            Rig creeping = dry.with(InputParameter.CONTROL_NEUTRAL_OFFSET, offset);
            double rolling = creeping.at(neutral).groundSpeed();
            double parked = creeping.at(neutral.startingFromRest()).groundSpeed();
            assertThat(parked).isIn(0.0, rolling);
            held += parked == 0 && rolling > 0 ? 1 : 0;
        }
        assertThat(held).isPositive();
    }

    private double rolling() {
        return rig.get(OutputParameter.WHEELS_ROLLING_RESISTANCE);
    }

    private static double belt(SteadyPoint point) {
        return point.power(LedgerItem.BELT);
    }
}
