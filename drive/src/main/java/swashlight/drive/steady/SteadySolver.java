package swashlight.drive.steady;

import swashlight.drive.description.InputParameter;
import swashlight.drive.description.LoopParameter;
import swashlight.drive.description.MakeUpParameter;
import swashlight.drive.description.OilParameter;
import swashlight.drive.oil.Oil;
import swashlight.drive.oil.OilAt;

/**
 * Finds which situation a duty leads to and solves it: moving forward or backward, standing by friction, held, pushed; engine running,
 * stalled, off. Dry friction is decided, not smoothed: a direction is assumed, solved, and kept only if the motor then turns that way;
 * else the drive is solved at rest, and stays there if friction and brake can hold it.
 *
 * <p>Reusable workspace for hot loops (not for several threads): {@link #load} a vector of values, {@link #solve} duties, read the
 * fields through {@link SteadyPoint}. The plain face is {@link SteadyDrive}.
 */
public final class SteadySolver {
    /** Share of free air per uncovered share of the filter: what a half-dry filter draws, 1 (own estimate, no source). */
    private static final double AIR_PER_UNCOVERED = 0.3;

    private static final double MOST_AIR = 0.3; // range of the oil law, 1
    private static final int REMEMBERED = 16; // oils kept by temperature

    final SteadyKernel kernel;
    final Balance balance;
    private final FirstGuess guess;
    private final OilAt[] oils = new OilAt[REMEMBERED];
    private Oil oil;
    boolean converged;
    boolean standing;
    boolean stalled;
    boolean held;
    boolean pushed;
    boolean skids; // pushed, and the wheels slide over the ground
    boolean beltOff; // the belt slips by its whole speed
    private boolean engineOn; // runs, keyed, not stalled
    Duty duty;
    double swashAngle; // rad
    double wheelSpeedGiven; // m/s, pushed only

    /** To the last digits. */
    public SteadySolver() {
        this(SteadyKernel.TOLERANCE);
    }

    /** To a largest residual over the sum of magnitudes in its balance, 1e-12 … 1e-6, unit 1; a larger one saves a last step. */
    public SteadySolver(double tolerance) {
        kernel = new SteadyKernel(tolerance);
        balance = kernel.balance;
        guess = new FirstGuess(balance);
    }

    /** Takes over a drive's values, in index order, SI (see {@code DriveDescription.vector()}); the array is read, not kept changed. */
    public void load(double[] vector) {
        balance.vector = vector;
        balance.pump.load(vector);
        balance.motor.load(vector);
        balance.motor.swash(balance.motor.fixedSwashAngle());
        oil = oilOf(vector);
        java.util.Arrays.fill(oils, null);
    }

    /**
     * Solves one duty from a cold start, so that the answer depends on nothing but drive and duty.
     *
     * @return true when every balance is met
     */
    public boolean solve(Duty wanted) {
        return solve(wanted, wanted.wheels() instanceof WheelState.Held);
    }

    /** Solves a duty on the ground as if something held the wheels still; true when every balance is met. */
    boolean hold(Duty wanted) {
        return solve(wanted, true);
    }

    private boolean solve(Duty wanted, boolean wheelsHeld) {
        duty = wanted;
        kernel.iterations = 0;
        standing = false;
        stalled = false;
        held = wheelsHeld;
        prepare(wanted);
        converged = settle(wanted);
        if (converged && balance.engineDrives && balance.engine.engineSpeed < balance.engine.stallSpeed) {
            stalled = true;
            engineOn = false;
            balance.pumpSpeed = 0;
            converged = settle(wanted);
        }
        return converged;
    }

    private void prepare(Duty wanted) {
        double[] vector = balance.vector;
        double pull = vector[LoopParameter.BYPASS_REACH.index()] * wanted.bypass();
        balance.conditions(
                oilAt(wanted.oilTemperature()),
                wanted.ambientPressure(),
                Math.max(pull, vector[LoopParameter.BYPASS_REST.index()]));
        swashAngle = swashAngle(vector, wanted.stroke(), balance.pump.fixedSwashAngle());
        balance.pump.swash(swashAngle);
        balance.load.load(vector);
        engineOn = false;
        balance.pumpSpeed = 0;
        boolean keyed = keyed(vector);
        InputState input = wanted.input();
        if (input instanceof InputState.Running running) {
            balance.engine.load(vector, running.throttle());
            engineOn = keyed;
        } else if (input instanceof InputState.Fixed fixed) {
            balance.pumpSpeed = keyed ? fixed.shaftSpeed() : 0;
        }
    }

    private void standOn(Duty wanted) {
        double[] vector = balance.vector;
        pushed = false;
        skids = false;
        if (wanted.wheels() instanceof WheelState.Ground ground) {
            balance.load.ground(vector, wanted.brake(), ground.slope(), ground.pull());
        } else if (wanted.wheels() instanceof WheelState.Pushed push) {
            pushed = true;
            wheelSpeedGiven = push.speed();
            balance.load.ground(vector, wanted.brake(), push.slope(), 0);
        } else {
            balance.load.lifted(vector, wanted.brake());
        }
    }

    private boolean settle(Duty wanted) {
        standOn(wanted);
        if (held && balance.load.connected) {
            return still();
        }
        if (pushed && balance.load.connected) {
            boolean rolls = turning(wheelSpeedGiven / balance.load.radius * balance.load.ratio);
            if (rolls && withinTraction()) {
                return true;
            }
            skids = true;
            balance.load.skid(wheelSpeedGiven);
        }
        return onItsOwn(wanted);
    }

    /** True when the ground can carry the torque that turns the motor along. */
    private boolean withinTraction() {
        double axle = balance.motorOilTorque * balance.load.ratio;
        double carried = Math.max(0, Math.abs(axle) - balance.load.brakeTorque) / balance.load.radius;
        return carried <= balance.load.tractionLimit;
    }

    /** Nothing but torques decides whether and how the motor turns. */
    private boolean onItsOwn(Duty wanted) {
        if (!wanted.fromRest()) {
            int likely = likelyDirection();
            if (likely != 0 && movesAtOnce(likely)) {
                return true;
            }
        }
        if (!still()) {
            return false;
        }
        int direction = starts(wanted.fromRest());
        standing = direction == 0;
        return standing || moving(direction);
    }

    /** Which way a motor at rest begins to turn, +1 or −1; 0 when friction, drag and brake hold it. */
    private int starts(boolean fromRest) {
        double sum = balance.pressure[Balance.A] + balance.pressure[Balance.B] - 2 * balance.casePressure;
        double friction =
                balance.motor.frictionPerPressure * Math.max(0, sum) * (fromRest ? balance.motor.breakawayRatio : 1);
        double torque = balance.motorOilTorque;
        balance.load.moving(1);
        if (torque - friction > balance.load.motorTorque) {
            return 1;
        }
        balance.load.moving(-1);
        return torque + friction < balance.load.motorTorque ? -1 : 0;
    }

    /** The direction in which the pump, or else the slope, would turn the motor; 0 when neither says. */
    private int likelyDirection() {
        double shaft = engineOn ? balance.engine.noLoadShaftSpeed() : balance.pumpSpeed;
        double carried = balance.pump.displacement * shaft;
        if (balance.bypassOpening < 0.5 && Math.abs(carried) > 1e-3 * Math.abs(balance.motor.displacement)) {
            return carried > 0 ? 1 : -1;
        }
        double grade = balance.load.connected ? balance.load.gradeForce : 0;
        return grade > 0 ? -1 : grade < 0 ? 1 : 0;
    }

    /** The easy case, tried first: it moves in the likely direction, and nothing is close. */
    private boolean movesAtOnce(int direction) {
        assumeMoving(direction, false);
        return kernel.solvesAtOnce() && balance.motorSpeed * direction > 0;
    }

    private boolean moving(int direction) {
        assumeMoving(direction, true);
        return balanced() && balance.motorSpeed * direction > 0;
    }

    private void assumeMoving(int direction, boolean mayStarve) {
        reEngage();
        balance.direction = direction;
        balance.motorFree = true;
        balance.load.moving(direction);
        guess.moving(mayStarve);
    }

    /** Back to the first unknowns of the situation last tried. */
    void startAgain() {
        if (balance.motorFree) {
            guess.moving(false);
        } else {
            guess.turning();
        }
    }

    private boolean still() {
        return turning(0);
    }

    private boolean turning(double motorSpeed) {
        reEngage();
        balance.motorFree = false;
        balance.motorSpeed = motorSpeed;
        balance.direction = motorSpeed < 0 ? -1 : 1;
        balance.load.moving(balance.direction);
        guess.turning();
        return balanced();
    }

    /** Every attempt begins with the belt holding, whatever the last one came to. */
    private void reEngage() {
        beltOff = false;
        balance.engineDrives = engineOn;
    }

    /** Solves as guessed; where the engine's curve makes that fail, asks whether the belt lets go, else searches its load. */
    private boolean balanced() {
        return kernel.solve() || (balance.engineDrives && (beltLetsGo() || LoadSearch.solve(kernel)));
    }

    /** The belt cannot turn the shaft at all: it slips by its whole speed and the shaft stands. */
    private boolean beltLetsGo() {
        balance.engine.at(balance.engine.mostLoad());
        balance.engineDrives = false;
        balance.pumpSpeed = 0;
        beltOff = kernel.solve() && balance.engine.torque < Math.abs(balance.pumpTorque);
        balance.engineDrives = !beltOff;
        return beltOff;
    }

    private OilAt oilAt(double temperature) {
        int slot = (int) ((Double.doubleToLongBits(temperature) * 0x9E3779B97F4A7C15L) >>> 60);
        OilAt known = oils[slot];
        if (known == null || known.temperature() != temperature) {
            known = oil.at(temperature);
            oils[slot] = known;
        }
        return known;
    }

    /** Swash angle for a stroke (−1 … 1), rad: share of travel, worn play taken off, neutral offset added. */
    static double swashAngle(double[] vector, double stroke, double full) {
        double reach = vector[
                (stroke >= 0 ? InputParameter.CONTROL_FORWARD_SHARE : InputParameter.CONTROL_REVERSE_SHARE).index()];
        double size = Math.max(0, Math.abs(stroke) * reach * full - vector[InputParameter.CONTROL_PLAY.index()]);
        double angle = (stroke < 0 ? -size : size) + vector[InputParameter.CONTROL_NEUTRAL_OFFSET.index()];
        return Math.max(-full, Math.min(full, angle));
    }

    /** True when the pulley turns the input shaft. */
    public static boolean keyed(double[] vector) {
        return vector[InputParameter.BELT_KEYED.index()] > 0.5;
    }

    /** The loop's oil as a vector of values (index order, SI) describes it, with the air it draws in. */
    public static Oil oilOf(double[] vector) {
        double air = vector[OilParameter.FREE_AIR.index()]
                + vector[MakeUpParameter.AIR_DRAWN.index()]
                + AIR_PER_UNCOVERED * vector[MakeUpParameter.UNCOVERED_SHARE.index()];
        return new Oil(
                vector[OilParameter.VISCOSITY40.index()],
                vector[OilParameter.VISCOSITY100.index()],
                vector[OilParameter.VISCOSITY_FACTOR.index()],
                vector[OilParameter.DENSITY15.index()],
                vector[OilParameter.THERMAL_EXPANSION.index()],
                vector[OilParameter.PRESSURE_VISCOSITY.index()],
                vector[OilParameter.BULK_MODULUS40.index()],
                vector[OilParameter.BULK_MODULUS_SLOPE.index()],
                vector[OilParameter.BULK_MODULUS_FADE.index()],
                Math.min(MOST_AIR, air),
                vector[OilParameter.AIR_EXPONENT.index()],
                vector[OilParameter.WATER.index()]);
    }
}
