package swashlight.drive.steady;

import static swashlight.drive.steady.Balance.A;
import static swashlight.drive.steady.Balance.B;
import static swashlight.drive.steady.Balance.INPUT;
import static swashlight.drive.steady.Balance.MOTOR;
import static swashlight.drive.steady.Balance.SIZE;

/** The torque balances of the input shaft and the motor shaft, N·m, and their slopes: the shaft rows of {@link Balance}. */
final class ShaftBalance {
    private ShaftBalance() {}

    /** What the engine gives less what pump and charge pump take. */
    static void input(Balance balance) {
        UnitLaw pump = balance.pump;
        double[] pressureSlope = balance.pressureSlope;
        double pumpSpeed = balance.pumpSpeed;
        int turn = pumpSpeed >= 0 ? 1 : -1;
        double difference = balance.pressure[A] - balance.pressure[B];
        double sum = balance.pressure[A] + balance.pressure[B] - 2 * balance.casePressure;
        double friction = sum > 0 ? pump.frictionPerPressure : 0;
        double viscous = pump.drag * balance.viscosity;
        double churn = pump.churn * balance.oilDensity;
        double speedy = viscous * pumpSpeed + churn * pumpSpeed * Math.abs(pumpSpeed);
        double pumpTorque =
                pump.torquePerPressure * difference + turn * friction * sum + speedy + balance.makeUp.chargeTorque();
        balance.pumpTorque = pumpTorque;
        double[] slope = balance.slope;
        if (!balance.engineDrives) {
            slope[INPUT * SIZE + INPUT] = 1;
            return;
        }
        double given = balance.engine.torque;
        balance.add(INPUT, given - pumpTorque, Math.abs(given) + Math.abs(pumpTorque) + Math.abs(speedy));
        double perA = (pump.torquePerPressure + turn * friction) * pressureSlope[A];
        double perB = (-pump.torquePerPressure + turn * friction) * pressureSlope[B];
        slope[INPUT * SIZE + A] -= perA;
        slope[INPUT * SIZE + B] -= perB;
        balance.makeUp.takeChargeSlopes();
        double bySpeed = viscous + 2 * churn * Math.abs(pumpSpeed);
        slope[INPUT * SIZE + INPUT] += balance.engine.torqueSlope - bySpeed * balance.engine.shaftSlope;
    }

    /** What the oil gives the motor less friction and load. */
    static void motor(Balance balance) {
        UnitLaw motor = balance.motor;
        double[] pressureSlope = balance.pressureSlope;
        double[] slope = balance.slope;
        double motorSpeed = balance.motorSpeed;
        int direction = balance.direction;
        double difference = balance.pressure[A] - balance.pressure[B];
        double oilTorque = -motor.torquePerPressure * difference;
        balance.motorOilTorque = oilTorque;
        if (!balance.motorFree) {
            slope[MOTOR * SIZE + MOTOR] = 1;
            return;
        }
        double sum = balance.pressure[A] + balance.pressure[B] - 2 * balance.casePressure;
        double friction = sum > 0 ? motor.frictionPerPressure : 0;
        double viscous = motor.drag * balance.viscosity;
        double churn = motor.churn * balance.oilDensity;
        double speedy = viscous * motorSpeed + churn * motorSpeed * Math.abs(motorSpeed);
        double asked = balance.load.motorTorque;
        balance.add(
                MOTOR,
                oilTorque - direction * friction * sum - speedy - asked,
                Math.abs(oilTorque) + friction * Math.abs(sum) + Math.abs(speedy) + Math.abs(asked));
        slope[MOTOR * SIZE + A] += (-motor.torquePerPressure - direction * friction) * pressureSlope[A];
        slope[MOTOR * SIZE + B] += (motor.torquePerPressure - direction * friction) * pressureSlope[B];
        slope[MOTOR * SIZE + MOTOR] -= viscous + 2 * churn * Math.abs(motorSpeed);
    }
}
