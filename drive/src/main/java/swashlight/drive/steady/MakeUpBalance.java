package swashlight.drive.steady;

import static swashlight.drive.steady.Balance.A;
import static swashlight.drive.steady.Balance.B;
import static swashlight.drive.steady.Balance.G;
import static swashlight.drive.steady.Balance.INPUT;
import static swashlight.drive.steady.Balance.SIZE;
import static swashlight.drive.steady.Balance.TWO_PI;

import swashlight.drive.description.LoopParameter;
import swashlight.drive.description.MakeUpParameter;
import swashlight.drive.gap.Orifice;

/**
 * How lost oil comes back, and its slopes: the gallery row of {@link Balance}.
 *
 * <pre>
 *   filter          q = G (p_case − p_g)                    without a charge pump; either way
 *                   q = G ramp(p_case − p_g)                beside a charge pump, through a non-return valve: never back
 *   charge pump     q = q_c (1 + (q_c/q_f)⁸)^(−1/8)         q_c = V_c ω/2π ≥ 0, and no more than the filter lets through:
 *                   q_f = G (p_case − p_cavity)             a pump turned backwards delivers nothing
 *   charge relief   q = g ramp(p_g − p_case − p_set)
 *   check valve     q = C_d (a_seat + a_bleed + a lift(x)) √(2/ρ) …   x = (Δp − crack)/span, lift = x² (3 − 2x) within its stops
 * </pre>
 *
 * Source: definitions; the joint of charge pump and filter is a smooth lesser-of-two (own form). Workspace: flow m³/s, slope
 * m³/(s·Pa).
 */
final class MakeUpBalance {
    private static final double ONE_WAY = 2e4; // Pa: scale of the non-return valve's soft start (own estimate)

    private final Balance balance;
    private double filterGiven; // flow through filter and charge pump at most, m³/s
    private double charge; // m³/rev
    private double share; // of what the charge pump could carry, 1
    private double shareSlope; // dq/dq_c, 1
    private double workAtCase; // flow work of the oil at case pressure, J/m³
    private double work; // what the charge pump adds to the oil, J/m³

    MakeUpBalance(Balance balance) {
        this.balance = balance;
    }

    /** Takes over what does not change while solving. */
    void conditions() {
        charge = balance.vector[MakeUpParameter.CHARGE_DISPLACEMENT.index()];
        filterGiven = balance.filterConductance * (balance.casePressure - balance.cavityPressure);
        workAtCase = charge > 0 ? balance.oil.flowWork(balance.casePressure) : 0;
    }

    /** Adds the make-up flows and their slopes to the balances. */
    void add() {
        double filter = filterFlow();
        balance.add(G, filter, Math.abs(filter));
        balance.slope[G * SIZE + G] -= filterSlope() * balance.pressureSlope[G];
        if (charge > 0) {
            chargePump();
        }
        check(A);
        check(B);
    }

    private void chargePump() {
        starve();
        work = balance.galleryWork - workAtCase;
        double delivered = chargeFlow();
        balance.add(G, delivered, Math.abs(delivered));
        double relieved = reliefFlow();
        balance.add(G, -relieved, relieved);
        double[] slope = balance.slope;
        slope[G * SIZE + G] -=
                reliefGain() * Balance.rampSlope(reliefOver(), reliefSetting()) * balance.pressureSlope[G];
        if (balance.engineDrives && balance.pumpSpeed > 0) {
            slope[G * SIZE + INPUT] += charge / TWO_PI * shareSlope * balance.engine.shaftSlope;
        }
    }

    /** Sets how much of its stroke the charge pump fills behind the filter. */
    private void starve() {
        double ratio = charge * Math.max(0, balance.pumpSpeed) / (TWO_PI * filterGiven);
        double square = ratio * ratio;
        double eighth = square * square * square * square;
        if (1 + eighth == 1) {
            share = 1;
            shareSlope = 1;
            return;
        }
        share = 1 / Math.sqrt(Math.sqrt(Math.sqrt(1 + eighth)));
        shareSlope = share / (1 + eighth);
    }

    /** Flow the charge pump could deliver at an input speed (rad/s), m³/s. */
    double chargeSupply(double shaft) {
        return Math.min(filterGiven, charge / TWO_PI * Math.max(0, shaft));
    }

    /** Flow that make-up can give at most at an input speed (rad/s), m³/s. */
    double supply(double shaft) {
        double past = balance.casePressure - balance.cavityPressure;
        return charge > 0 ? chargeSupply(shaft) + balance.filterConductance * Balance.ramp(past, ONE_WAY) : filterGiven;
    }

    /** Flow of the filter into the gallery past the charge pump, m³/s. */
    double filterFlow() {
        double drop = balance.casePressure - balance.pressure[G];
        return balance.filterConductance * (charge > 0 ? Balance.ramp(drop, ONE_WAY) : drop);
    }

    private double filterSlope() {
        double drop = balance.casePressure - balance.pressure[G];
        return balance.filterConductance * (charge > 0 ? Balance.rampSlope(drop, ONE_WAY) : 1);
    }

    /** Flow the charge pump delivers, m³/s. */
    double chargeFlow() {
        return charge > 0 ? charge / TWO_PI * Math.max(0, balance.pumpSpeed) * share : 0;
    }

    /** Torque the charge pump takes, N·m. */
    double chargeTorque() {
        if (!(charge > 0) || balance.pumpSpeed < 0) {
            return 0;
        }
        return charge / TWO_PI * share * work;
    }

    /** Slopes of the charge pump's torque by gallery pressure (m³) and belt load (1), taken off the input row. */
    void takeChargeSlopes() {
        if (charge > 0 && balance.pumpSpeed > 0) {
            double perTurn = charge / TWO_PI;
            double volume = 1 / balance.density[G];
            balance.slope[INPUT * SIZE + G] -= perTurn * share * volume * balance.pressureSlope[G];
            double bySpeed = perTurn * (shareSlope - share) / balance.pumpSpeed * work;
            balance.slope[INPUT * SIZE + INPUT] -= bySpeed * balance.engine.shaftSlope;
        }
    }

    /** Flow of the charge relief valve back to the case, m³/s. */
    double reliefFlow() {
        return charge > 0 ? reliefGain() * Balance.ramp(reliefOver(), reliefSetting()) : 0;
    }

    private double reliefOver() {
        return balance.pressure[G] - balance.casePressure - reliefSetting();
    }

    /** Opening pressure of the charge relief valve above the case, Pa. */
    double reliefSetting() {
        return balance.vector[MakeUpParameter.CHARGE_RELIEF.index()];
    }

    /** Flow of the charge relief valve per pressure above its setting, m³/(s·Pa). */
    double reliefGain() {
        return balance.vector[MakeUpParameter.CHARGE_RELIEF_SLOPE.index()];
    }

    private void check(int side) {
        double difference = balance.pressure[G] - balance.pressure[side];
        double lift = lift(side, difference);
        double area = fixedArea(side) + full() * lift;
        balance.orifice(1, difference);
        double bySlope = balance.flowSlope * area + balance.flow * full() * liftSlope(lift, side, difference);
        balance.between(
                G,
                side,
                balance.flow * area,
                bySlope * balance.pressureSlope[G],
                bySlope * balance.pressureSlope[side]);
    }

    /** Flow from the gallery into a side through its check valve, seat leak and bleed, m³/s. */
    double checkFlow(int side) {
        double difference = balance.pressure[G] - balance.pressure[side];
        balance.orifice(1, difference);
        return balance.flow * (fixedArea(side) + full() * lift(side, difference));
    }

    private double full() {
        return balance.vector[LoopParameter.CHECK_AREA.index()];
    }

    private double lift(int side, double difference) {
        double x = opening(difference);
        double lift = x <= 0 ? 0 : x >= 1 ? 1 : x * x * (3 - 2 * x);
        return Math.max(least(side), Math.min(lift, reach(side)));
    }

    /** Change of lift with pressure difference, 1/Pa; 0 where the valve is at a stop. */
    private double liftSlope(double lift, int side, double difference) {
        double x = opening(difference);
        boolean stopped = x <= 0 || x >= 1 || lift <= least(side) || lift >= reach(side);
        return stopped ? 0 : 6 * x * (1 - x) / balance.vector[LoopParameter.CHECK_SPAN.index()];
    }

    private double opening(double difference) {
        double[] vector = balance.vector;
        return (difference - vector[LoopParameter.CHECK_CRACK.index()]) / vector[LoopParameter.CHECK_SPAN.index()];
    }

    private double least(int side) {
        return balance.vector[(side == A ? LoopParameter.CHECK_A_LIFT : LoopParameter.CHECK_B_LIFT).index()];
    }

    private double reach(int side) {
        return balance.vector[(side == A ? LoopParameter.CHECK_A_REACH : LoopParameter.CHECK_B_REACH).index()];
    }

    private double fixedArea(int side) {
        double seat = balance.vector[(side == A ? LoopParameter.CHECK_A_LEAK : LoopParameter.CHECK_B_LEAK).index()];
        return seat + bleedArea(side);
    }

    /** Area of the bleed orifice beside a side's check valve, m². */
    double bleedArea(int side) {
        return Orifice.area(balance.vector[(side == A ? LoopParameter.BLEED_A : LoopParameter.BLEED_B).index()]);
    }
}
