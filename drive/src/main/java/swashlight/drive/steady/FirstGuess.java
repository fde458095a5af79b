package swashlight.drive.steady;

import static swashlight.drive.steady.Balance.A;
import static swashlight.drive.steady.Balance.B;
import static swashlight.drive.steady.Balance.G;
import static swashlight.drive.steady.Balance.INPUT;
import static swashlight.drive.steady.Balance.MOTOR;
import static swashlight.drive.steady.Balance.TWO_PI;

import swashlight.drive.description.LoopParameter;

/**
 * Where solving begins: pressures from the torque the motor must give, leaks from the pressures, speeds and make-up from the leaks. Only its
 * nearness matters, nothing else hangs on it. Works on a {@link Balance} whose situation is decided.
 */
final class FirstGuess {
    private static final double MOST_STILL = 8e6; // Pa: an ordinary peak
    private static final double MOST_SUCTION = 0.9; // of what can be sucked at all, 1
    private static final double LEAST_SPEED = 1; // rad/s

    private final Balance balance;
    private double difference; // of A above B, Pa
    private double shaft; // rad/s

    FirstGuess(Balance balance) {
        this.balance = balance;
    }

    /**
     * The motor turns by what it is given, in the direction and against the load the balance holds; if it may starve, also where make-up ends what
     * pressure there can be.
     */
    void moving(boolean mayStarve) {
        shaft = balance.engineDrives ? balance.engine.noLoadShaftSpeed() : balance.pumpSpeed;
        double speed = ahead(-pumpFlow() * TWO_PI / balance.motor.displacement);
        double torque = balance.load.motorTorque + lost(balance.motor, speed);
        double friction = balance.direction * balance.motor.frictionPerPressure * Math.abs(torque);
        double perPressure = -balance.motor.torquePerPressure;
        difference = (torque + friction / perPressure) / perPressure;
        boolean starves = mayStarve && replaced() < Math.abs(difference);
        if (starves) {
            difference = difference < 0 ? -replaced() : replaced();
            speed = dragged(perPressure * difference - balance.load.motorTorque);
        }
        input();
        double leak = Math.signum(difference) * (caseConductance() + bridgeConductance()) * Math.abs(difference);
        balance.unknown[MOTOR] = starves ? speed : ahead((leak - pumpFlow()) * TWO_PI / balance.motor.displacement);
        pressures();
        if (starves) {
            double turned = Math.abs(speed * balance.motor.displacement / TWO_PI);
            starve(Math.max(turned, Math.abs(pumpFlow())), Math.min(turned, Math.abs(pumpFlow())));
        }
    }

    /** The motor's speed is known: what is left over must leak. */
    void turning() {
        shaft = balance.engineDrives ? balance.engine.noLoadShaftSpeed() : balance.pumpSpeed;
        double left = pumpFlow() + balance.motorSpeed * balance.motor.displacement / TWO_PI;
        double pressure = left / (caseConductance() + bridgeConductance());
        double most = mostStill(left);
        boolean starves = replaced() < Math.min(Math.abs(pressure), most);
        most = Math.min(most, replaced());
        difference = Math.max(-most, Math.min(most, pressure));
        input();
        balance.unknown[MOTOR] = 0;
        pressures();
        if (starves) {
            starve(Math.abs(left), 0);
        }
    }

    /** Pressure at which as much leaks as make-up can replace, Pa. */
    private double replaced() {
        return balance.makeUp.supply(shaft) / caseConductance();
    }

    /** Speed at which a torque (N·m) is spent by the motor's drag, rad/s. */
    private double dragged(double torque) {
        double spare = Math.max(0, balance.direction * torque);
        double viscous = balance.motor.drag * balance.viscosity;
        double churn = balance.motor.churn * balance.oilDensity;
        double root = Math.sqrt(viscous * viscous + 4 * churn * spare);
        return ahead(spare > 0 ? balance.direction * 2 * spare / (viscous + root) : 0);
    }

    /**
     * Where make-up cannot replace what would leak, the side that oil is drawn from runs so empty that no more is drawn (m³/s, were it full) than
     * is used and leaks.
     */
    private void starve(double drawn, double used) {
        double passed = (caseConductance() + bridgeConductance()) * Math.abs(difference);
        int high = difference > 0 ? A : B;
        balance.unknown[high] = Math.abs(difference);
        balance.unknown[high == A ? B : A] = balance.filledTo(Math.min(1, (used + passed) / drawn));
        balance.unknown[G] = balance.cavityPressure + checkDrop(balance.makeUp.supply(shaft));
    }

    /** Where a relief valve, or else an ordinary load, ends the rise when a flow (m³/s) is left over, Pa. */
    private double mostStill(double left) {
        LoopParameter guard = left > 0 ? LoopParameter.RELIEF_A : LoopParameter.RELIEF_B;
        double setting = balance.vector[guard.index()];
        double over = Math.abs(left) / balance.vector[LoopParameter.RELIEF_SLOPE.index()];
        return setting > 0 ? setting + Math.min(over, setting) : MOST_STILL;
    }

    private double ahead(double speed) {
        return speed * balance.direction > LEAST_SPEED ? speed : balance.direction * LEAST_SPEED;
    }

    private double pumpFlow() {
        return shaft * balance.pump.displacement / TWO_PI;
    }

    private void input() {
        balance.unknown[INPUT] = 0;
        if (balance.engineDrives) {
            double torque = balance.pump.torquePerPressure * difference
                    + lost(balance.pump, shaft)
                    + balance.pump.frictionPerPressure * Math.abs(difference);
            balance.unknown[INPUT] = balance.engine.loadFor(torque);
            balance.engine.at(balance.unknown[INPUT]);
            shaft = balance.engine.shaftSpeed;
        }
    }

    private void pressures() {
        double need = caseConductance() * Math.abs(difference);
        double gallery = gallery(need);
        double common = caseConductance() * Math.max(0, gallery - balance.casePressure);
        boolean oneValve = need > common; // the high side's stays shut
        double passed = oneValve ? need + 2 * common : common;
        double low = passed > 0 ? gallery - checkDrop(passed) : gallery;
        balance.unknown[A] = low + Math.max(0, difference);
        balance.unknown[B] = low + Math.max(0, -difference);
        balance.unknown[G] = gallery;
    }

    /** Pressure a check valve needs to pass a flow, near its smooth start, Pa. */
    private double checkDrop(double need) {
        double[] vector = balance.vector;
        double span = vector[LoopParameter.CHECK_SPAN.index()];
        double wide = vector[LoopParameter.CHECK_AREA.index()] * balance.orificePerPressure();
        double lift = Math.pow(need / (3 * wide * span), 1.0 / 3);
        return vector[LoopParameter.CHECK_CRACK.index()] + span * Math.min(1, lift);
    }

    /** Gallery pressure when the loop takes a flow: at the charge relief valve, where leaks of both sides end its rise, or under suction; Pa. */
    private double gallery(double need) {
        double spare = balance.makeUp.chargeSupply(shaft) - need;
        double set = balance.makeUp.reliefSetting();
        double over = spare - 2 * caseConductance() * set;
        if (over > 0) {
            return balance.casePressure + set + over / balance.makeUp.reliefGain();
        }
        if (spare > 0) {
            return balance.casePressure + spare / (2 * caseConductance());
        }
        double most = MOST_SUCTION * (balance.casePressure - balance.cavityPressure);
        return balance.casePressure - Math.min(most, -spare / balance.filterConductance);
    }

    private double lost(UnitLaw unit, double speed) {
        return unit.drag * balance.viscosity * speed + unit.churn * balance.oilDensity * speed * Math.abs(speed);
    }

    private double caseConductance() {
        return (of(balance.pump) + of(balance.motor)) / balance.viscosity;
    }

    private static double of(UnitLaw unit) {
        return unit.pistonConductance + unit.badPistonConductance + unit.faceConductance + unit.caseScoreConductance;
    }

    private double bridgeConductance() {
        return (balance.pump.bridgeConductance
                        + balance.pump.bridgeScoreConductance
                        + balance.motor.bridgeConductance
                        + balance.motor.bridgeScoreConductance)
                / balance.viscosity;
    }
}
