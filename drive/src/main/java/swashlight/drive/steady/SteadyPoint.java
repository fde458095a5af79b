package swashlight.drive.steady;

import java.util.EnumSet;
import java.util.Set;

/**
 * Reads a solved situation: speeds, pressures, torques, and the ledger. Allocation-free when reused; refill after every solve.
 *
 * <p>All values SI: pressures absolute in Pa, speeds rad/s (ground m/s), torques N·m, forces N, flows m³/s at atmospheric pressure, power
 * W. Forward is positive.
 */
public final class SteadyPoint {
    private static final double NOTICEABLE_SLIP =
            0.03; // belt slip worth a word, 1 (common practice: above 3 % a fault sign)

    private static final double EXTREME = 40e6; // Pa: beyond any drive of this class (common practice)

    private static final double LEAST_FLOW =
            1e-8; // m³/s: less is what a pressure's last digit sends through a wide open bypass, over 1e-9
    private static final double LEAST_POWER = 1e-6; // W

    private final LedgerBook book = new LedgerBook();
    private SteadySolver solver = new SteadySolver();
    private double groundSpeed;
    private double wheelSlip;
    private double axleTorque;
    private double groundForce;
    private double pushForce;
    private double motorShaftTorque;

    /** Takes over the solver's present solution. */
    public void fill(SteadySolver solved) {
        solver = solved;
        Balance balance = solved.balance;
        book.open(balance);
        output(balance, solved);
        input(balance);
    }

    private void output(Balance balance, SteadySolver solved) {
        LoadLaw load = balance.load;
        double speed = balance.motorSpeed;
        double axle = speed / load.ratio;
        boolean turning = speed != 0;
        motorShaftTorque = balance.motorOilTorque - lost(balance, speed);
        boolean pushes = motorShaftTorque * speed > 0;
        double toAxle = turning
                ? motorShaftTorque * load.ratio * (pushes ? load.efficiency : 1 / load.efficiency)
                : motorShaftTorque * load.ratio;
        axleTorque = toAxle;
        wheelSlip = 0;
        groundSpeed = 0;
        pushForce = 0;
        groundForce = solved.standing ? load.standingForce() : 0;
        if (solved.skids) {
            skidding(balance, axle);
        }
        if (!turning) {
            return;
        }
        book.take(LedgerItem.GEARS, motorShaftTorque * speed - toAxle * axle);
        double rim = Math.abs(axle);
        book.take(LedgerItem.AXLE_DRAG, load.dragTorque * rim);
        book.take(LedgerItem.BRAKE, load.connected ? load.brakeTorque * rim : 0);
        if (!load.connected || load.tractionLimit <= 0 || solved.skids) {
            return;
        }
        int direction = speed > 0 ? 1 : -1;
        if (solved.pushed) {
            groundSpeed = solved.wheelSpeedGiven;
            groundForce = (toAxle - direction * (load.dragTorque + load.brakeTorque)) / load.radius;
            pushForce = load.gradeForce + direction * load.rollingForce - groundForce;
            book.take(LedgerItem.PUSH, -pushForce * groundSpeed);
        } else {
            groundForce = load.groundForce;
            wheelSlip = load.spinning ? 1 : load.slip(groundForce);
            double rolled = axle * load.radius;
            boolean drives = groundForce * direction > 0;
            groundSpeed = load.spinning ? 0 : drives ? rolled * (1 - wheelSlip) : rolled / (1 - wheelSlip);
            book.take(LedgerItem.WHEEL_SLIP, groundForce * (rolled - groundSpeed));
        }
        book.take(LedgerItem.ROLLING, load.rollingForce * Math.abs(groundSpeed));
        book.take(LedgerItem.PULL, solved.pushed ? 0 : load.pullForce * Math.abs(groundSpeed));
        book.take(LedgerItem.GRADE, load.gradeForce * groundSpeed);
    }

    /** Pushed faster than the drive lets the wheels turn: they slide. */
    private void skidding(Balance balance, double axle) {
        LoadLaw load = balance.load;
        groundSpeed = solver.wheelSpeedGiven;
        groundForce = load.gradeForce;
        int direction = groundSpeed > 0 ? 1 : -1;
        pushForce = load.pushedGrade + direction * load.pushedRolling - groundForce;
        double rolled = axle * load.radius;
        wheelSlip = 1 - rolled / groundSpeed;
        book.take(LedgerItem.PUSH, -pushForce * groundSpeed);
        book.take(LedgerItem.WHEEL_SLIP, groundForce * (rolled - groundSpeed));
        book.take(LedgerItem.ROLLING, load.pushedRolling * Math.abs(groundSpeed));
        book.take(LedgerItem.GRADE, load.pushedGrade * groundSpeed);
    }

    private void input(Balance balance) {
        double shaft = balance.pumpTorque * balance.pumpSpeed;
        if (balance.engineDrives || solver.beltOff) {
            EngineLaw engine = balance.engine;
            double given = engine.torque * engine.speedRatio() * engine.engineSpeed;
            book.take(LedgerItem.ENGINE, -given);
            book.take(LedgerItem.BELT, given - engine.torque * balance.pumpSpeed);
        } else {
            book.take(LedgerItem.ENGINE, -shaft);
        }
    }

    private static double lost(Balance balance, double speed) {
        double sum = Math.max(0, balance.pressure[Balance.A] + balance.pressure[Balance.B] - 2 * balance.casePressure);
        return Math.signum(speed) * balance.motor.frictionPerPressure * sum
                + balance.motor.drag * balance.viscosity * speed
                + balance.motor.churn * balance.oilDensity * speed * Math.abs(speed);
    }

    /** Flow of an item into side A, m³/s. */
    public double intoA(LedgerItem item) {
        return book.intoA[item.ordinal()];
    }

    /** Flow of an item into side B, m³/s. */
    public double intoB(LedgerItem item) {
        return book.intoB[item.ordinal()];
    }

    /** Flow of an item into the gallery, m³/s. */
    public double intoGallery(LedgerItem item) {
        return book.intoGallery[item.ordinal()];
    }

    /** Power an item takes (negative: gives), W. */
    public double power(LedgerItem item) {
        return book.power[item.ordinal()];
    }

    /** Worst sum of flows into A, B and gallery that should vanish, over all oil that moves in or out, 1. */
    public double flowResidual() {
        double worst = Math.max(sum(book.intoA), Math.max(sum(book.intoB), sum(book.intoGallery)));
        double[] moved = solver.balance.size;
        return worst / Math.max(LEAST_FLOW, Math.max(moved[Balance.A], moved[Balance.G]));
    }

    /** Sum of all power items that should vanish, over the sum of magnitudes, 1. */
    public double powerResidual() {
        return sum(book.power) / Math.max(magnitude(book.power), LEAST_POWER);
    }

    private static double sum(double[] items) {
        double sum = 0;
        for (double item : items) {
            sum += item;
        }
        return Math.abs(sum);
    }

    private static double magnitude(double[] items) {
        double magnitude = 0;
        for (double item : items) {
            magnitude += Math.abs(item);
        }
        return magnitude;
    }

    /** Absolute pressure of side A, Pa. */
    public double pressureA() {
        return solver.balance.pressure[Balance.A];
    }

    /** Absolute pressure of side B, Pa. */
    public double pressureB() {
        return solver.balance.pressure[Balance.B];
    }

    /** Absolute pressure of the gallery, Pa. */
    public double galleryPressure() {
        return solver.balance.pressure[Balance.G];
    }

    /** Share of side A filled with oil, 1. */
    public double fillA() {
        return solver.balance.fill(Balance.A);
    }

    /** Share of side B filled with oil, 1. */
    public double fillB() {
        return solver.balance.fill(Balance.B);
    }

    /** Swash angle of the pump, rad. */
    public double swashAngle() {
        return solver.swashAngle;
    }

    /** Speed of the input shaft, rad/s. */
    public double pumpSpeed() {
        return solver.balance.pumpSpeed;
    }

    /** Torque at the input shaft, N·m. */
    public double pumpTorque() {
        return solver.balance.pumpTorque;
    }

    /** Speed of the engine, rad/s; 0 when it is off, stalled, or the input is fixed. */
    public double engineSpeed() {
        return solver.balance.engineDrives || solver.beltOff ? solver.balance.engine.engineSpeed : 0;
    }

    /** Slip of the belt, 1. */
    public double beltSlip() {
        return solver.beltOff ? 1 : solver.balance.engineDrives ? solver.balance.engine.slip : 0;
    }

    /** Speed of the motor shaft, rad/s. */
    public double motorSpeed() {
        return solver.balance.motorSpeed;
    }

    /** Torque of the motor shaft on the gears, N·m. */
    public double motorTorque() {
        return motorShaftTorque;
    }

    /** Speed of the axle, rad/s. */
    public double axleSpeed() {
        return solver.balance.motorSpeed / solver.balance.load.ratio;
    }

    /** Torque that reaches the axle before drag and brake, N·m. */
    public double axleTorque() {
        return axleTorque;
    }

    /** Slip of the wheels on the ground, 1. */
    public double wheelSlip() {
        return wheelSlip;
    }

    /** Speed over ground, m/s. */
    public double groundSpeed() {
        return groundSpeed;
    }

    /** Force of the driven wheels on the ground, N. */
    public double groundForce() {
        return groundForce;
    }

    /** Force that must push the machine, N; 0 unless it is pushed. */
    public double pushForce() {
        return pushForce;
    }

    /** Oil that comes back through the filter and the charge pump, m³/s. */
    public double makeUpFlow() {
        return intoGallery(LedgerItem.FILTER)
                + intoGallery(LedgerItem.CHARGE_PUMP)
                + intoGallery(LedgerItem.CHARGE_RELIEF);
    }

    /** Heat left inside drive and oil: all losses but belt, ground, pull and grade, W. */
    public double heat() {
        double sum = 0;
        for (int i = LedgerItem.CHARGE_PUMP.ordinal(); i <= LedgerItem.BRAKE.ordinal(); i++) {
            sum += book.power[i];
        }
        return sum;
    }

    /** Newton and walking steps taken, 1. */
    public int iterations() {
        return solver.kernel.iterations;
    }

    /** Worst balance over its magnitudes, 1. */
    public double residual() {
        return solver.kernel.worst();
    }

    /** What is worth a word. */
    public Set<Event> events() {
        EnumSet<Event> events = EnumSet.noneOf(Event.class);
        Balance balance = solver.balance;
        put(events, Event.STANDS, solver.standing);
        put(events, Event.WHEELS_SPIN, balance.motorSpeed != 0 && wheelSlip == 1);
        put(events, Event.WHEELS_SKID, solver.skids);
        put(events, Event.EXTREME_PRESSURE, Math.max(pressureA(), pressureB()) > EXTREME);
        put(events, Event.ENGINE_STALLS, solver.stalled);
        put(events, Event.BELT_SLIPS, Math.abs(beltSlip()) > NOTICEABLE_SLIP);
        put(events, Event.SIDE_A_STARVES, fillA() < 1);
        put(events, Event.SIDE_B_STARVES, fillB() < 1);
        put(events, Event.RELIEF_OPENS, intoA(LedgerItem.RELIEF) != 0);
        put(events, Event.MOTOR_PUMPS, balance.motorOilTorque * balance.motorSpeed < 0);
        return events;
    }

    private static void put(Set<Event> events, Event event, boolean happens) {
        if (happens) {
            events.add(event);
        }
    }
}
