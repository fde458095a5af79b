package swashlight.drive.motion;

import swashlight.drive.description.InputParameter;
import swashlight.drive.description.LoopParameter;
import swashlight.drive.description.MakeUpParameter;
import swashlight.drive.description.Place;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.gap.Orifice;
import swashlight.drive.oil.OilAt;

/**
 * Steps the whole drive in time.
 *
 * <p>Two implicit stages of Alexander's stiffly accurate pair (γ = 1 − √½, order 2, L-stable). In each stage the pistons are placed at the
 * angle foreseen from speed and acceleration, the oil of chambers, sides and gallery is solved together by Newton (chambers eliminated
 * one by one), then the shafts with the oil's torques. Oil mass is the state and moves only along flows booked at both ends, so the
 * whole circuit conserves oil to rounding whatever the step.
 *
 * <p>Source: Alexander, SIAM J. Numer. Anal. 14 (1977) 1006 (from memory). SI; flat workspace, no allocation in a step.
 */
final class MotionKernel {
    static final double GAMMA = 1 - Math.sqrt(0.5); // 1
    private static final int NEWTON_STEPS = 25;
    private static final double MOST_NEWTON_CHANGE =
            1e-3; // of pressures in the last Newton step; what is left is of its square, 1

    final ChamberSet pump;
    final ChamberSet motor;
    final SideSystem sides;
    final Shafts shafts;
    OilTable oil;
    private final double[] vector;
    private final double filterResistance; // 1/m³
    private double density; // kg/m³
    private double viscosity; // Pa·s
    final double casePressure; // Pa
    private double caseGap; // Pa
    private final Shafts.Losses pumpLosses;
    private final Shafts.Losses motorLosses;
    private final double pumpFriction; // 1
    private final double pumpThrust; // 1
    private final double motorFriction; // 1
    private final double motorThrust; // 1
    private final double fullAngle; // rad
    private final double swashRate; // rad/s
    private final double returnRate; // rad/s

    double time; // s
    double pumpAngle; // rad
    double motorAngle; // rad
    double swashAngle; // rad
    private double pumpAcceleration; // rad/s²
    private double motorAcceleration; // rad/s²
    double pumpTorque; // oil on the pump shaft, N·m
    double motorTorque; // oil on the motor shaft, forward, N·m
    double oilIn; // net oil from the case since the start, m³
    long newtonSteps;
    long stages;

    // beginning of the step, and the first stage
    private final double[] startPump;
    private final double[] startMotor;
    private final double[] startSides = new double[3];
    private final PressurePath path;
    private double lastStep = 1; // s
    private final double newtonChange; // largest change that ends a Newton iteration, 1
    private double startEngine;
    private double startPumpSpeed;
    private double startMotorSpeed;
    private double startGround;
    private double startPumpAngle;
    private double startMotorAngle;
    private double startSwash;
    double errorEstimate; // of the last step, 1

    MotionKernel(double[] vector, OilAt oilAt, double casePressure, double tolerance) {
        this.vector = vector;
        this.casePressure = casePressure;
        newtonChange = Math.min(MOST_NEWTON_CHANGE, tolerance);
        pump = new ChamberSet(vector, Place.PUMP);
        motor = new ChamberSet(vector, Place.MOTOR);
        sides = new SideSystem(vector);
        shafts = new Shafts(vector);
        oil = new OilTable(oilAt);
        filterResistance = vector[MakeUpParameter.FILTER_RESISTANCE.index()]
                * vector[MakeUpParameter.FILTER_CLOGGING.index()]
                / (1 - vector[MakeUpParameter.UNCOVERED_SHARE.index()]);
        sides.casePressure = casePressure;
        oilIs(oilAt);
        pumpLosses = new Shafts.Losses(shafts.breakaway(Place.PUMP));
        motorLosses = new Shafts.Losses(shafts.breakaway(Place.MOTOR));
        pumpLosses.churn = churn(Place.PUMP);
        motorLosses.churn = churn(Place.MOTOR);
        pumpFriction = get(Place.PUMP, UnitProperty.FRICTION_COEFFICIENT);
        pumpThrust = get(Place.PUMP, UnitProperty.THRUST_FRICTION);
        motorFriction = get(Place.MOTOR, UnitProperty.FRICTION_COEFFICIENT);
        motorThrust = get(Place.MOTOR, UnitProperty.THRUST_FRICTION);
        fullAngle = vector[UnitParameter.pump(UnitProperty.FULL_SWASH_ANGLE).index()];
        motor.swash(vector[UnitParameter.motor(UnitProperty.FULL_SWASH_ANGLE).index()]);
        swashRate = vector[InputParameter.CONTROL_SWASH_RATE.index()];
        returnRate = vector[InputParameter.CONTROL_RETURN_RATE.index()];
        startPump = new double[pump.count];
        startMotor = new double[motor.count];
        path = new PressurePath(pump, motor, sides);
    }

    /** Goes on with the oil at another temperature; masses stay. */
    void warm(OilAt oilAt) {
        oil = new OilTable(oilAt);
        oilIs(oilAt);
        pumpLosses.churn = churn(Place.PUMP);
        motorLosses.churn = churn(Place.MOTOR);
    }

    private void oilIs(OilAt oilAt) {
        density = oilAt.density();
        viscosity = oilAt.dynamicViscosity();
        caseGap = oilAt.gapPressure(casePressure);
        sides.perViscosity = 1 / viscosity;
        sides.orificeFactor = Orifice.DISCHARGE * Math.sqrt(2 / density);
        sides.oilDensity = density;
        sides.caseGap = caseGap;
        sides.filterConductance = 1 / (filterResistance * viscosity);
    }

    private double churn(Place place) {
        double outer = get(place, UnitProperty.LAND_OUTER);
        return get(place, UnitProperty.CHURNING_COEFFICIENT) * Math.pow(outer, 5) / 2 * density;
    }

    /** Sets every pressure (Pa) and fills chambers and sides accordingly. */
    void fill(double pressureA, double pressureB, double pressureG) {
        sides.pressure[SideSystem.A] = pressureA;
        sides.pressure[SideSystem.B] = pressureB;
        sides.pressure[SideSystem.G] = pressureG;
        for (int side = 0; side < 3; side++) {
            oil.at(sides.pressure[side]);
            sides.mass[side] = sides.volume[side] * oil.density;
        }
        pump.swash(swashAngle);
        fill(pump, pumpAngle, pressureA, pressureB);
        fill(motor, motorAngle, pressureA, pressureB);
        look();
    }

    /** Evaluates flows and torques of the present state, so that they can be read before the first step. */
    private void look() {
        System.arraycopy(pump.mass, 0, pump.base, 0, pump.count);
        System.arraycopy(motor.mass, 0, motor.base, 0, motor.count);
        System.arraycopy(sides.mass, 0, sides.base, 0, 3);
        sides.open(oil);
        sides.clearCoupled();
        pump.gather(0, sides, oil, caseGap, casePressure, density);
        motor.gather(0, sides, oil, caseGap, casePressure, density);
        sides.beginBook();
        pump.book(0, 0, 0, sides);
        motor.book(0, 0, 0, sides);
        sides.book(0);
        pump.meanTookA = pump.tookA;
        motor.meanTookA = motor.tookA;
        torques();
    }

    private void fill(ChamberSet unit, double angle, double pressureA, double pressureB) {
        unit.place(angle, sides.orificeFactor, sides.perViscosity);
        for (int k = 0; k < unit.count; k++) {
            double open = unit.gainA[k] + unit.gainB[k];
            unit.pressure[k] = open > 0
                    ? (unit.gainA[k] * pressureA + unit.gainB[k] * pressureB) / open
                    : (pressureA + pressureB) / 2;
            oil.at(unit.pressure[k]);
            unit.mass[k] = unit.volume[k] * oil.density;
        }
    }

    /** Swash angle (rad) that a stroke asks for: share of travel, play taken off, neutral offset added. */
    double wantedSwash(double stroke) {
        double reach = vector[
                (stroke >= 0 ? InputParameter.CONTROL_FORWARD_SHARE : InputParameter.CONTROL_REVERSE_SHARE).index()];
        double size = Math.max(0, Math.abs(stroke) * reach * fullAngle - vector[InputParameter.CONTROL_PLAY.index()]);
        double angle = (stroke < 0 ? -size : size) + vector[InputParameter.CONTROL_NEUTRAL_OFFSET.index()];
        return Math.max(-fullAngle, Math.min(fullAngle, angle));
    }

    private double swashAfter(double wanted, double step) {
        double gap = wanted - startSwash;
        boolean back = Math.abs(wanted) < Math.abs(startSwash);
        double most = (back ? Math.min(swashRate, Math.max(returnRate, 1e-9)) : swashRate) * step;
        return startSwash + Math.max(-most, Math.min(most, gap));
    }

    double bypassOpening(double pulled) {
        return Math.max(vector[LoopParameter.BYPASS_REACH.index()] * pulled, vector[LoopParameter.BYPASS_REST.index()]);
    }

    /**
     * One step.
     *
     * @param step s
     * @param midSwash wanted at {@link #GAMMA} of the step, rad
     * @param endSwash wanted at its end, rad
     * @return false when the oil could not be solved; the state is then as before
     */
    boolean step(double step, double midSwash, double endSwash) {
        begin();
        double tau = GAMMA * step;
        path.foresee(step / lastStep * GAMMA);
        boolean solved = stage(tau, tau, midSwash, 1, 0);
        if (solved) {
            double carry = (1 - GAMMA) / GAMMA;
            path.lean(carry);
            solved = stage(tau, step, endSwash, 1 - carry, carry);
        }
        if (!solved) {
            back();
            return false;
        }
        errorEstimate = path.bend();
        lastStep = step;
        double turned = step * (startPumpSpeed + shafts.pumpSpeed) / 2;
        pumpAngle = startPumpAngle + turned;
        motorAngle = startMotorAngle + step * (startMotorSpeed + shafts.motorSpeed) / 2;
        pumpAcceleration = shafts.engineRuns ? (shafts.pumpSpeed - startPumpSpeed) / step : 0;
        motorAcceleration = (shafts.motorSpeed - startMotorSpeed) / step;
        time += step;
        return true;
    }

    private void begin() {
        System.arraycopy(pump.mass, 0, startPump, 0, pump.count);
        System.arraycopy(motor.mass, 0, startMotor, 0, motor.count);
        System.arraycopy(sides.mass, 0, startSides, 0, 3);
        path.begin();
        startEngine = shafts.engineSpeed;
        startPumpSpeed = shafts.pumpSpeed;
        startMotorSpeed = shafts.motorSpeed;
        startGround = shafts.groundSpeed;
        startPumpAngle = pumpAngle;
        startMotorAngle = motorAngle;
        startSwash = swashAngle;
        startOil = oilIn;
    }

    private double startOil;
    private double firstCaseFlow;

    private void back() {
        System.arraycopy(startPump, 0, pump.mass, 0, pump.count);
        System.arraycopy(startMotor, 0, motor.mass, 0, motor.count);
        System.arraycopy(startSides, 0, sides.mass, 0, 3);
        path.back();
        shafts.engineSpeed = startEngine;
        shafts.pumpSpeed = startPumpSpeed;
        shafts.motorSpeed = startMotorSpeed;
        shafts.groundSpeed = startGround;
        swashAngle = startSwash;
        oilIn = startOil;
    }

    /** One implicit stage ending at an offset from the step's start; M = keep · start + carry · first stage. */
    private boolean stage(double tau, double offset, double wantedSwash, double keep, double carry) {
        stages++;
        for (int k = 0; k < pump.count; k++) {
            pump.base[k] = keep * startPump[k] + carry * pump.mass[k];
        }
        for (int k = 0; k < motor.count; k++) {
            motor.base[k] = keep * startMotor[k] + carry * motor.mass[k];
        }
        for (int side = 0; side < 3; side++) {
            sides.base[side] = keep * startSides[side] + carry * sides.mass[side];
        }
        double baseEngine = keep * startEngine + carry * shafts.engineSpeed;
        double basePump = keep * startPumpSpeed + carry * shafts.pumpSpeed;
        double baseMotor = keep * startMotorSpeed + carry * shafts.motorSpeed;
        double baseGround = keep * startGround + carry * shafts.groundSpeed;
        swashAngle = swashAfter(wantedSwash, offset);
        pump.swash(swashAngle);
        double half = offset * offset / 2;
        pump.place(
                startPumpAngle + offset * startPumpSpeed + half * pumpAcceleration,
                sides.orificeFactor,
                sides.perViscosity);
        motor.place(
                startMotorAngle + offset * startMotorSpeed + half * motorAcceleration,
                sides.orificeFactor,
                sides.perViscosity);
        sides.pumpTurns = (startPumpSpeed + offset * pumpAcceleration) / (2 * Math.PI);
        if (!oil(tau)) {
            return false;
        }
        if (carry == 0) {
            firstCaseFlow = sides.caseFlow;
            pump.firstTookA = pump.tookA;
            motor.firstTookA = motor.tookA;
        } else {
            oilIn = startOil + tau / GAMMA * ((1 - GAMMA) * firstCaseFlow + GAMMA * sides.caseFlow);
            pump.meanTookA = (1 - GAMMA) * pump.firstTookA + GAMMA * pump.tookA;
            motor.meanTookA = (1 - GAMMA) * motor.firstTookA + GAMMA * motor.tookA;
        }
        turn(tau, baseEngine, basePump, baseMotor, baseGround);
        return true;
    }

    private boolean oil(double tau) {
        double least = oil.emptyPressure + 1e-6 * oil.cavityPressure;
        for (int count = 0; count < NEWTON_STEPS; count++) {
            newtonSteps++;
            sides.open(oil);
            sides.clearCoupled();
            pump.gather(tau, sides, oil, caseGap, casePressure, density);
            motor.gather(tau, sides, oil, caseGap, casePressure, density);
            sides.solve(tau);
            double changeA = sides.change[SideSystem.A];
            double changeB = sides.change[SideSystem.B];
            double worst = Math.max(
                    Math.max(pump.move(changeA, changeB, least), motor.move(changeA, changeB, least)),
                    sides.move(least));
            if (!(worst < 1e300)) {
                return false;
            }
            if (worst < newtonChange) {
                sides.beginBook();
                pump.book(tau, changeA, changeB, sides);
                motor.book(tau, changeA, changeB, sides);
                sides.book(tau);
                return true;
            }
        }
        return false;
    }

    /** Shaft torque of the pump with its losses, N·m. */
    double pumpShaftTorque() {
        pumpLosses.at(shafts.pumpSpeed);
        return pumpTorque + chargeTorque() + pumpLosses.torque;
    }

    /** Shaft torque of the motor after its losses, N·m. */
    double motorShaftTorque() {
        motorLosses.at(shafts.motorSpeed);
        return motorTorque - motorLosses.torque;
    }

    private void turn(double tau, double baseEngine, double basePump, double baseMotor, double baseGround) {
        torques();
        shafts.input(tau, baseEngine, basePump, pumpTorque + chargeTorque(), pumpLosses);
        shafts.output(tau, baseMotor, baseGround, motorTorque, motorLosses);
    }

    private void torques() {
        pumpTorque = pump.torque(casePressure);
        pumpLosses.dry = dry(pump, pumpFriction, pumpThrust);
        pumpLosses.viscous = viscous(pump);
        motorTorque = -motor.torque(casePressure);
        motorLosses.dry = dry(motor, motorFriction, motorThrust);
        motorLosses.viscous = viscous(motor);
    }

    private double chargeTorque() {
        return sides.charge.there() ? sides.charge.torque(sides.pressure[SideSystem.G] - casePressure) : 0;
    }

    /** Dry friction of a unit with its coefficients for pistons and thrust bearing, 1; N·m. */
    private static double dry(ChamberSet unit, double friction, double thrust) {
        return Math.max(0, unit.load) * unit.area * unit.pitch * (friction * unit.sine + thrust);
    }

    private double get(Place place, UnitProperty property) {
        return vector[new UnitParameter(place, property).index()];
    }

    private double viscous(ChamberSet unit) {
        return viscosity * (unit.faceDrag + unit.pistonDrag * unit.tan * unit.tan);
    }

    /** All oil inside chambers, sides and gallery, m³ at ρ₀. */
    double oilHeld() {
        double sum = 0;
        for (int k = 0; k < pump.count; k++) {
            sum += pump.mass[k];
        }
        for (int k = 0; k < motor.count; k++) {
            sum += motor.mass[k];
        }
        for (int side = 0; side < 3; side++) {
            sum += sides.mass[side];
        }
        return sum;
    }
}
