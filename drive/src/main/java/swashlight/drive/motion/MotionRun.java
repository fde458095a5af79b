package swashlight.drive.motion;

import java.util.List;
import swashlight.drive.description.Place;
import swashlight.drive.heat.Cooling;
import swashlight.drive.oil.Oil;

/**
 * One run in progress: advance it, read it. Not for several threads; nothing is allocated while it advances but noted events and, when the
 * oil has warmed by a tenth of a kelvin, a new table of its laws.
 *
 * <p>The step follows the faster shaft (a fixed angle, smaller for a tighter tolerance) and is cut where pressures bend too much for it.
 */
public final class MotionRun {
    /** Tolerance that keeps means over ten turns within about 0.02 % and swings within 1 %, unit 1 (measured on a launch, decision 60). */
    public static final double USUAL_TOLERANCE = 1e-3;

    private static final double USUAL_TURN = Math.toRadians(1); // shaft angle a step at the usual tolerance, rad
    private static final double MOST_TURN = Math.toRadians(3); // rad
    private static final double SLOWEST = 20; // rad/s: slower shafts step as if they turned at this
    private static final double MOST_BEND = 0.3; // at the usual tolerance, 1
    private static final double LEAST_STEP = 1e-10; // s
    private static final double TURNED = 1e-9; // rad: an angle left over that counts as none
    private static final double WARMED = 0.1; // K between new tables of the oil's laws

    private static final double STANDS = 1; // rad/s: a slower motor counts as standing (own choice)
    private static final double PUSHES = 2e6; // Pa between the sides that should turn it (own choice)

    private MotionDuty duty;
    private final MotionKernel kernel;
    private final Oil oil;
    private final Cooling cooling;
    private final EventLog log = new EventLog();
    private final double turn; // rad a step
    private final double bend; // 1
    private final BlockHold pumpHold;
    private final BlockHold motorHold;
    private final double startOil; // m³
    private final Chambers pumpChambers;
    private final Chambers motorChambers;
    private double foreseen; // next step by curvature, s
    private double oilTemperature; // K
    private double tableTemperature; // K
    private long steps;
    private long rejected;
    private boolean failed;

    MotionRun(MotionDuty duty, MotionKernel kernel, Oil oil, Cooling cooling, double tolerance, BlockHold[] hold) {
        this.duty = duty;
        this.kernel = kernel;
        this.oil = oil;
        this.cooling = cooling;
        double tightness = Math.sqrt(tolerance / USUAL_TOLERANCE);
        turn = Math.min(MOST_TURN, USUAL_TURN * tightness);
        bend = MOST_BEND * tightness;
        pumpHold = hold[0];
        motorHold = hold[1];
        startOil = kernel.oilHeld();
        pumpChambers = new Chambers(kernel.pump, kernel.sides);
        motorChambers = new Chambers(kernel.motor, kernel.sides);
        foreseen = 1e-6;
        oilTemperature = duty.oilTemperature();
        tableTemperature = oilTemperature;
        control(0);
    }

    /**
     * Advances to a time.
     *
     * @param until s
     * @return false when the run could not go on: it then stays where it last was
     */
    public boolean advance(double until) {
        return advance(until, run -> {});
    }

    /**
     * Advances to a time with somebody watching.
     *
     * @param until s
     * @return false when the run could not go on: it then stays where it last was
     */
    public boolean advance(double until, MotionWatcher watcher) {
        while (kernel.time < until && !failed) {
            step(Math.min(nextStep(), until - kernel.time));
            if (!failed) {
                watcher.stepped(this);
            }
        }
        return !failed;
    }

    /**
     * From now on the controls over time follow another duty, whose times are those of this run: somebody's hand on the lever. What turns the
     * input, what the wheels stand on, temperatures and pressure stay as they began.
     */
    public void redirect(MotionDuty other) {
        duty = duty.change()
                .stroke(other.stroke())
                .throttle(other.throttle())
                .brake(other.brake())
                .bypass(other.bypass())
                .slope(other.slope())
                .pull(other.pull())
                .groundSpeed(other.groundSpeed())
                .build();
    }

    /**
     * Advances until a shaft has turned by an angle from where it is, either way; a shaft that speeds up meanwhile goes some 1e-8 rad too far.
     *
     * @param place pump or motor shaft
     * @param angle rad, positive
     * @param within time after which it stops all the same, s
     * @return false when the run could not go on
     */
    public boolean turn(Place place, double angle, double within) {
        MotionChannel shaft = place == Place.PUMP ? MotionChannel.PUMP_ANGLE : MotionChannel.MOTOR_ANGLE;
        MotionChannel rate = place == Place.PUMP ? MotionChannel.PUMP_SPEED : MotionChannel.MOTOR_SPEED;
        double from = value(shaft);
        double until = kernel.time + within;
        double left = angle;
        while (left > TURNED && kernel.time < until && !failed) {
            double length = Math.min(nextStep(), until - kernel.time);
            double speed = Math.abs(value(rate));
            step(speed * length > left ? Math.max(LEAST_STEP, left / speed) : length);
            left = angle - Math.abs(value(shaft) - from);
        }
        return !failed;
    }

    /** The step (s) that tolerance and corners of the duty ask for now. */
    public double nextStep() {
        double fastest =
                Math.max(SLOWEST, Math.max(Math.abs(kernel.shafts.pumpSpeed), Math.abs(kernel.shafts.motorSpeed)));
        return Math.max(LEAST_STEP, Math.min(Math.min(turn / fastest, foreseen), cornerGap()));
    }

    private double cornerGap() {
        double t = kernel.time;
        double next = duty.nextCorner(t);
        return next - t > LEAST_STEP ? next - t : Double.POSITIVE_INFINITY;
    }

    /** Takes one step of at most the given length, s; shorter when the oil asks for it. */
    public void step(double wanted) {
        double length = wanted;
        while (true) {
            control(kernel.time + length);
            if (kernel.step(length, wantedSwash(MotionKernel.GAMMA * length), wantedSwash(length))) {
                break;
            }
            rejected++;
            length /= 4;
            if (length < LEAST_STEP) {
                failed = true;
                return;
            }
        }
        steps++;
        double growth = Math.sqrt(bend / Math.max(1e-9, kernel.errorEstimate));
        foreseen = length * Math.max(0.3, Math.min(2, growth));
        warm(length);
        watch(length);
    }

    private double wantedSwash(double ahead) {
        return kernel.wantedSwash(duty.stroke().at(kernel.time + ahead));
    }

    private void control(double time) {
        Shafts shafts = kernel.shafts;
        shafts.throttle = duty.throttle().at(time);
        shafts.brake = duty.brake().at(time);
        shafts.slope = duty.slope().at(time);
        shafts.pull = duty.pull().at(time);
        if (shafts.pushed) {
            shafts.groundSpeed = duty.groundSpeed().at(kernel.time);
            shafts.givenAcceleration = duty.groundSpeed().slopeAfter(kernel.time);
        }
        kernel.sides.bypassOpening = kernel.bypassOpening(duty.bypass().at(time));
    }

    private void warm(double length) {
        Shafts shafts = kernel.shafts;
        double rim = shafts.motorSpeed * shafts.rollingRadius() / shafts.gearRatio(); // m/s
        double loss = kernel.pumpShaftTorque() * shafts.pumpSpeed - shafts.groundForce * rim;
        double given = cooling.conductance(shafts.pumpSpeed) * (oilTemperature - duty.airTemperature());
        oilTemperature += length * (loss - given) / cooling.capacity();
        if (Math.abs(oilTemperature - tableTemperature) > WARMED && oilTemperature < 430) {
            tableTemperature = oilTemperature;
            kernel.warm(oil.at(oilTemperature));
        }
    }

    private void watch(double length) {
        double t = kernel.time;
        SideSystem sides = kernel.sides;
        double cavity = kernel.oil.cavityPressure;
        double a = sides.pressure[SideSystem.A];
        double b = sides.pressure[SideSystem.B];
        double crack = sides.checkCrack;
        log.note(MotionEvent.Kind.CHECK_A_OPEN, sides.pressure[SideSystem.G] - a > crack, t);
        log.note(MotionEvent.Kind.CHECK_B_OPEN, sides.pressure[SideSystem.G] - b > crack, t);
        log.note(MotionEvent.Kind.SIDE_A_STARVES, a < cavity, t);
        log.note(MotionEvent.Kind.SIDE_B_STARVES, b < cavity, t);
        log.note(MotionEvent.Kind.CHAMBER_STARVES, lowestChamber() < cavity, t);
        log.note(MotionEvent.Kind.RELIEF_OPEN, sides.reliefOpen(), t);
        log.note(
                MotionEvent.Kind.WHEELS_SPIN,
                Math.abs(kernel.shafts.wheelSlip) > 0.5 && Math.abs(kernel.shafts.motorSpeed) > 5,
                t);
        log.note(
                MotionEvent.Kind.DRIVE_STALLED,
                Math.abs(kernel.shafts.motorSpeed) < STANDS && Math.abs(a - b) > PUSHES,
                t);
        log.note(MotionEvent.Kind.BELT_SLIPS, kernel.shafts.engineRuns && Math.abs(kernel.shafts.beltSlip) > 0.05, t);
        log.note(MotionEvent.Kind.PUMP_BLOCK_LIFTS, pumpHold.lifts(sides, length), t);
        log.note(MotionEvent.Kind.MOTOR_BLOCK_LIFTS, motorHold.lifts(sides, length), t);
        if (kernel.shafts.engineRuns && kernel.shafts.engineSpeed < kernel.shafts.stallSpeed()) {
            kernel.shafts.engineRuns = false;
            kernel.shafts.engineSpeed = 0;
            kernel.shafts.pumpSpeed = 0;
            log.note(MotionEvent.Kind.ENGINE_STALLED, kernel.shafts.engineFires, t);
        }
    }

    private double lowestChamber() {
        double lowest = Double.POSITIVE_INFINITY;
        for (double p : kernel.pump.pressure) {
            lowest = Math.min(lowest, p);
        }
        for (double p : kernel.motor.pressure) {
            lowest = Math.min(lowest, p);
        }
        return lowest;
    }

    /** Present value of a channel, SI unit of its dimension. */
    public double value(MotionChannel channel) {
        Shafts shafts = kernel.shafts;
        SideSystem sides = kernel.sides;
        return switch (channel) {
            case PRESSURE_A -> sides.pressure[SideSystem.A];
            case PRESSURE_B -> sides.pressure[SideSystem.B];
            case GALLERY_PRESSURE -> sides.pressure[SideSystem.G];
            case SWASH_ANGLE -> kernel.swashAngle;
            case PUMP_ANGLE -> kernel.pumpAngle;
            case MOTOR_ANGLE -> kernel.motorAngle;
            case ENGINE_SPEED -> shafts.engineSpeed;
            case PUMP_SPEED -> shafts.pumpSpeed;
            case MOTOR_SPEED -> shafts.motorSpeed;
            case GROUND_SPEED -> shafts.groundSpeed;
            case PUMP_TORQUE -> kernel.pumpTorque;
            case INPUT_TORQUE -> kernel.pumpShaftTorque();
            case MOTOR_TORQUE -> kernel.motorTorque;
            case OUTPUT_TORQUE -> kernel.motorShaftTorque();
            case GROUND_FORCE -> shafts.groundForce;
            case BELT_SLIP -> shafts.engineRuns ? shafts.beltSlip : 0;
            case WHEEL_SLIP -> shafts.wheelSlip;
            case MAKE_UP_FLOW -> sides.makeUpFlow;
            case CASE_LEAK -> sides.caseLeak;
            case SWASH_MOMENT -> kernel.pump.moment(kernel.casePressure);
            case PUMP_HOLD_DOWN -> pumpHold.ratio(sides);
            case MOTOR_HOLD_DOWN -> motorHold.ratio(sides);
            case LOWEST_CHAMBER -> lowestChamber();
            case OIL_TEMPERATURE -> oilTemperature;
            case PUSH_FORCE -> shafts.pushForce();
            case PUMP_FLOW -> -kernel.pump.meanTookA;
            case MOTOR_FLOW -> kernel.motor.meanTookA;
            case CHECK_A_FLOW -> sides.paths.check[SideSystem.A];
            case CHECK_B_FLOW -> sides.paths.check[SideSystem.B];
            case BLEED_A_FLOW -> sides.paths.bleed[SideSystem.A];
            case BLEED_B_FLOW -> sides.paths.bleed[SideSystem.B];
            case BYPASS_FLOW -> sides.paths.bypass;
            case LIFTED_BLOCK_FLOW -> sides.paths.lifted;
            case RELIEF_FLOW -> sides.paths.relief;
            case CHARGE_RELIEF_FLOW -> sides.paths.chargeRelief;
        };
    }

    /** Present pressure of one pump chamber (0 … count − 1), absolute, Pa. */
    public double pumpChamber(int chamber) {
        return kernel.pump.pressure[chamber];
    }

    /** Present pressure of one motor chamber (0 … count − 1), absolute, Pa. */
    public double motorChamber(int chamber) {
        return kernel.motor.pressure[chamber];
    }

    /** The chambers of one unit, as they are whenever they are looked at. */
    public Chambers chambers(Place place) {
        return place == Place.PUMP ? pumpChambers : motorChambers;
    }

    /** Share of a space at an absolute pressure (Pa) that oil is missing from, 0 … 1, unit 1; 0 while it is full. */
    public double missing(double pressure) {
        OilTable table = kernel.oil;
        double gap = table.cavityPressure - pressure;
        return gap <= 0 ? 0 : gap / (table.cavityPressure - table.emptyPressure);
    }

    /** Number of pump pistons, 1. */
    public int pumpPistons() {
        return kernel.pump.count;
    }

    /** Number of motor pistons, 1. */
    public int motorPistons() {
        return kernel.motor.count;
    }

    /** Time reached, s. */
    public double time() {
        return kernel.time;
    }

    /** Steps taken, 1. */
    public long steps() {
        return steps;
    }

    /** Linear solves of the oil in all stages of all steps, 1. */
    public long newtonSteps() {
        return kernel.newtonSteps;
    }

    /** Steps taken back because the oil could not be solved, 1. */
    public long rejected() {
        return rejected;
    }

    /** True when the run could not go on. */
    public boolean failed() {
        return failed;
    }

    /** Oil that appeared from or vanished to nowhere since the start, over all oil in the loop, 1. */
    public double oilDrift() {
        return (kernel.oilHeld() - startOil - kernel.oilIn) / startOil;
    }

    /** Beginnings and ends so far, oldest first. */
    public List<MotionEvent> events() {
        return log.events();
    }

    /** How often a kind of event began, 1. */
    public int count(MotionEvent.Kind kind) {
        return log.count(kind);
    }

    /** When a kind of event first began, s; 0 when it never did. */
    public double first(MotionEvent.Kind kind) {
        return log.first(kind);
    }

    /** How long a kind of event lasted in all, s. */
    public double lasting(MotionEvent.Kind kind) {
        return log.lasting(kind, kernel.time);
    }
}
