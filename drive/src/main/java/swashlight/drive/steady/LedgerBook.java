package swashlight.drive.steady;

import static swashlight.drive.steady.Balance.A;
import static swashlight.drive.steady.Balance.B;
import static swashlight.drive.steady.Balance.G;

import java.util.Arrays;
import swashlight.drive.description.LoopParameter;
import swashlight.drive.gap.Orifice;
import swashlight.drive.gap.ThroatedGap;

/**
 * Books every flow and every watt of a solved situation by the gap or part that takes it.
 *
 * <pre>
 *   power lost on a path i → j          q (w_i − w_j)          w flow work, J/m³
 *   chamber opened from p_1 to p_2      V [(p_2 − p_1) − ρ_1 (w_2 − w_1)]    compression that is not won back
 * </pre>
 *
 * Each loss has its own formula; that the book adds up is therefore a check and not a definition. Source: first law for open systems, own
 * derivation. Flow m³/s at atmospheric pressure, positive into the side; power W, positive when taken.
 */
final class LedgerBook {
    private static final int ITEMS = LedgerItem.values().length;
    private static final double TWO_PI = 2 * Math.PI;

    final double[] intoA = new double[ITEMS];
    final double[] intoB = new double[ITEMS];
    final double[] intoGallery = new double[ITEMS];
    final double[] power = new double[ITEMS];
    private final double[] work = new double[3];
    private double caseWork;
    private Balance balance;

    /** Books the hydraulic and frictional items of a solved balance. */
    void open(Balance solved) {
        balance = solved;
        Arrays.fill(intoA, 0);
        Arrays.fill(intoB, 0);
        Arrays.fill(intoGallery, 0);
        Arrays.fill(power, 0);
        for (int side = A; side <= G; side++) {
            work[side] = balance.oil.flowWork(balance.pressure[side]);
        }
        caseWork = balance.oil.flowWork(balance.casePressure);
        unit(balance.pump, balance.pumpSpeed, LedgerItem.PUMP_CARRY);
        unit(balance.motor, balance.motorSpeed, LedgerItem.MOTOR_CARRY);
        sharpPaths();
        makeUp();
        friction(balance.pump, balance.pumpSpeed, LedgerItem.PUMP_FRICTION);
        friction(balance.motor, balance.motorSpeed, LedgerItem.MOTOR_FRICTION);
    }

    void take(LedgerItem item, double watts) {
        power[item.ordinal()] += watts;
    }

    /** Items of a unit follow its carry in the same order for pump and motor. */
    private void unit(UnitLaw unit, double speed, LedgerItem carry) {
        int first = carry.ordinal();
        double rate = Math.abs(speed) / TWO_PI * unit.strokers;
        double out = speed >= 0 ? unit.volumeZero : unit.volumePi;
        double back = speed >= 0 ? unit.volumePi : unit.volumeZero;
        double geometric = rate * (out - back);
        double real = rate * (out * balance.density[B] - back * balance.density[A]);
        side(first, geometric, -geometric, 0);
        double rise = balance.pressure[A] - balance.pressure[B];
        double workRise = work[A] - work[B];
        double opened = out * (rise - balance.density[B] * workRise) + back * (balance.density[A] * workRise - rise);
        side(first + 1, real - geometric, geometric - real, rate * opened);
        double mu = balance.viscosity;
        leak(first + 2, unit.pistonConductance / mu, unit.pistonConductance / mu);
        leak(first + 3, unit.badPistonConductance / mu, unit.badPistonConductance / mu);
        leak(first + 4, unit.faceConductance / mu, unit.faceConductance / mu);
        leak(
                first + 5,
                (unit.caseScoreConductance + unit.sideAConductance) / mu,
                (unit.caseScoreConductance + unit.sideBConductance) / mu);
        if (unit.shoes > 0) {
            toCase(first + 6, A, unit.shoes * throated(unit.shoeConductance / mu, unit.shoeMouth, A));
            toCase(first + 6, B, unit.shoes * throated(unit.shoeConductance / mu, unit.shoeMouth, B));
        }
        double across = balance.gapPressure[A] - balance.gapPressure[B];
        cross(first + 7, unit.bridgeConductance / mu * across);
        cross(first + 8, unit.bridgeScoreConductance / mu * across);
    }

    private void leak(int item, double conductanceA, double conductanceB) {
        toCase(item, A, conductanceA * (balance.gapPressure[A] - balance.caseGapPressure));
        toCase(item, B, conductanceB * (balance.gapPressure[B] - balance.caseGapPressure));
    }

    private void sharpPaths() {
        double[] v = balance.vector;
        double rho = balance.oilDensity;
        double upA = balance.pressure[A] - balance.casePressure;
        double upB = balance.pressure[B] - balance.casePressure;
        double across = balance.pressure[A] - balance.pressure[B];
        toCase(LedgerItem.CRACK_A.ordinal(), A, Orifice.flow(v[LoopParameter.CRACK_A.index()], upA, rho));
        toCase(LedgerItem.CRACK_B.ordinal(), B, Orifice.flow(v[LoopParameter.CRACK_B.index()], upB, rho));
        cross(LedgerItem.CRACK_AB.ordinal(), Orifice.flow(v[LoopParameter.CRACK_AB.index()], across, rho));
        toCase(LedgerItem.FORCED_OPEN.ordinal(), A, balance.givingFlow(A));
        toCase(LedgerItem.FORCED_OPEN.ordinal(), B, balance.givingFlow(B));
        double valve = balance.bypassOpening * v[LoopParameter.BYPASS_AREA.index()];
        cross(LedgerItem.BYPASS.ordinal(), Orifice.flow(valve, across, rho));
        double lift = balance.lift();
        if (lift > 0) {
            double conductance = balance.liftConductance(lift) / balance.viscosity;
            double mouth = balance.motor.liftEdge * lift;
            toCase(LedgerItem.LIFTED_BLOCK.ordinal(), A, throated(conductance, mouth, A));
            toCase(LedgerItem.LIFTED_BLOCK.ordinal(), B, throated(conductance, mouth, B));
        }
        double gain = v[LoopParameter.RELIEF_SLOPE.index()];
        double settingA = v[LoopParameter.RELIEF_A.index()];
        double settingB = v[LoopParameter.RELIEF_B.index()];
        double fromA = settingA > 0 ? gain * Balance.ramp(across - settingA, settingA) : 0;
        double fromB = settingB > 0 ? gain * Balance.ramp(-across - settingB, settingB) : 0;
        cross(LedgerItem.RELIEF.ordinal(), fromA - fromB);
    }

    private void makeUp() {
        check(A, LedgerItem.CHECK_A, LedgerItem.BLEED_A, intoA);
        check(B, LedgerItem.CHECK_B, LedgerItem.BLEED_B, intoB);
        double filter = balance.makeUp.filterFlow();
        intoGallery[LedgerItem.FILTER.ordinal()] = filter;
        power[LedgerItem.FILTER.ordinal()] = filter * (caseWork - work[G]);
        intoGallery[LedgerItem.CHARGE_PUMP.ordinal()] = balance.makeUp.chargeFlow();
        double relieved = balance.makeUp.reliefFlow();
        intoGallery[LedgerItem.CHARGE_RELIEF.ordinal()] = -relieved;
        power[LedgerItem.CHARGE_RELIEF.ordinal()] = relieved * (work[G] - caseWork);
    }

    private void check(int to, LedgerItem valve, LedgerItem bleed, double[] into) {
        double all = balance.makeUp.checkFlow(to);
        double bled = Orifice.flow(
                balance.makeUp.bleedArea(to), balance.pressure[G] - balance.pressure[to], balance.oilDensity);
        into[valve.ordinal()] = all - bled;
        into[bleed.ordinal()] = bled;
        intoGallery[valve.ordinal()] = bled - all;
        intoGallery[bleed.ordinal()] = -bled;
        power[valve.ordinal()] = (all - bled) * (work[G] - work[to]);
        power[bleed.ordinal()] = bled * (work[G] - work[to]);
    }

    private void friction(UnitLaw unit, double speed, LedgerItem first) {
        double sum = Math.max(0, balance.pressure[A] + balance.pressure[B] - 2 * balance.casePressure);
        power[first.ordinal()] = Math.abs(speed) * unit.frictionPerPressure * sum;
        power[first.ordinal() + 1] = unit.drag * balance.viscosity * speed * speed;
        power[first.ordinal() + 2] = unit.churn * balance.oilDensity * speed * speed * Math.abs(speed);
    }

    private double throated(double conductance, double mouth, int from) {
        return ThroatedGap.flow(conductance, mouth, balance.pressure[from] - balance.casePressure, balance.oilDensity);
    }

    private void side(int item, double toA, double toB, double watts) {
        intoA[item] += toA;
        intoB[item] += toB;
        power[item] += watts;
    }

    private void toCase(int item, int from, double flow) {
        side(item, from == A ? -flow : 0, from == B ? -flow : 0, flow * (work[from] - caseWork));
    }

    private void cross(int item, double flow) {
        side(item, -flow, flow, flow * (work[A] - work[B]));
    }
}
