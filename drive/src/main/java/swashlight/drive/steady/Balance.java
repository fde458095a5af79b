package swashlight.drive.steady;

import swashlight.drive.description.LoopParameter;
import swashlight.drive.description.MakeUpParameter;
import swashlight.drive.description.Place;
import swashlight.drive.gap.Orifice;
import swashlight.drive.gap.ThroatedGap;
import swashlight.drive.oil.OilAt;

/**
 * The balances of one situation and their exact slopes: oil into A, into B, into the gallery; torque on the motor shaft; torque on the
 * input shaft.
 *
 * <pre>
 *   Σ q into A = 0      pump + motor carry, leaks to case, A ↔ B paths, check valve A, bleed A
 *   Σ q into B = 0      likewise
 *   Σ q into G = 0      filter, charge pump, charge relief, check valves
 *   T_oil − friction − T_load = 0        motor shaft, when it may turn
 *   T_belt − T_pump = 0                  input shaft, when the engine turns it
 * </pre>
 *
 * Flows q are volumes at atmospheric pressure, m³/s, that is mass over ρ₀: so what leaves one place arrives at another whatever the
 * pressures. Unknown u (Pa) of a side is its pressure, and below the cavity pressure its missing oil: pressure stays at the floor while
 * the filling d falls, never both at once. Mutable workspace of {@link SteadyKernel}; SI throughout.
 */
final class Balance {
    static final int A = 0;
    static final int B = 1;
    static final int G = 2;
    static final int MOTOR = 3;
    static final int INPUT = 4;
    static final int SIZE = SmallSystem.SIZE;

    /** Depth of the coordinate below the cavity pressure at which all oil is missing, Pa: a numerical scale, not physics. */
    static final double MISSING_SCALE = 1e5;

    /** Pressure above the case's at which block or joint would be forced open, Pa (own estimate, no source). */
    static final double GIVING_PRESSURE = 60e6;

    private static final double GIVING_SLOPE = 1e-10; // flow per pressure beyond it, m³/(s·Pa): stiff (own estimate)

    private static final double MOST_CAVITY = 0.9; // of the case pressure: hot wet oil would boil in the case itself, 1

    private static final double LEAST_FILL = 1e-9; // keeps the coordinate in range, 1
    static final double TWO_PI = 2 * Math.PI;

    final UnitLaw pump = new UnitLaw(Place.PUMP);
    final UnitLaw motor = new UnitLaw(Place.MOTOR);
    final EngineLaw engine = new EngineLaw();
    final LoadLaw load = new LoadLaw();
    final MakeUpBalance makeUp = new MakeUpBalance(this);
    final double[] unknown = new double[SIZE];
    final double[] residual = new double[SIZE];
    final double[] size = new double[SIZE]; // sum of the magnitudes in each balance
    final double[] slope = new double[SIZE * SIZE];
    final double[] pressure = new double[3]; // absolute, Pa
    final double[] density = new double[3]; // with missing oil, ÷ ρ₀, 1
    final double[] gapPressure = new double[3]; // Pa

    final double[] pressureSlope = new double[3];
    private final double[] densitySlope = new double[3];
    private final double[] gapSlope = new double[3];
    private final double[] oilValues = new double[4];
    private final double[] partedOil = new double[4]; // the same at cavity pressure
    double galleryWork; // flow work of the oil in the gallery, J/m³

    double[] vector = new double[0];
    OilAt oil;
    double viscosity; // Pa·s
    double oilDensity; // kg/m³
    double casePressure; // Pa
    double caseGapPressure; // Pa
    double cavityPressure; // at which the oil parts, Pa
    double bypassOpening; // 1
    double filterConductance; // m³/(s·Pa)
    boolean motorFree;
    boolean engineDrives;
    int direction = 1;
    double motorSpeed; // rad/s
    double pumpSpeed; // rad/s
    double pumpTorque; // N·m
    double motorOilTorque; // N·m

    private double orificeFactor;
    double flow; // last orifice, m³/s
    double flowSlope; // m³/(s·Pa)

    /** Takes over oil, ambient pressure and bypass opening (0 … 1). */
    void conditions(OilAt oilNow, double ambient, double opening) {
        oil = oilNow;
        viscosity = oilNow.dynamicViscosity();
        oilDensity = oilNow.density();
        casePressure = ambient;
        cavityPressure = Math.min(oilNow.cavityPressure(), MOST_CAVITY * ambient);
        caseGapPressure = oilNow.gapPressure(ambient);
        oilNow.evaluate(cavityPressure, partedOil, 0);
        bypassOpening = opening;
        orificeFactor = Orifice.DISCHARGE * Math.sqrt(2 / oilDensity);
        double resistance = vector[MakeUpParameter.FILTER_RESISTANCE.index()]
                * vector[MakeUpParameter.FILTER_CLOGGING.index()]
                / (1 - vector[MakeUpParameter.UNCOVERED_SHARE.index()]);
        filterConductance = 1 / (resistance * viscosity);
        makeUp.conditions();
    }

    /** Fills residual, size and slope for the present unknowns. */
    void evaluate() {
        java.util.Arrays.fill(slope, 0);
        for (int side = A; side <= G; side++) {
            node(side);
        }
        if (engineDrives) {
            engine.at(unknown[INPUT]);
            pumpSpeed = engine.shaftSpeed;
        }
        if (motorFree) {
            motorSpeed = unknown[MOTOR];
        }
        java.util.Arrays.fill(residual, 0);
        java.util.Arrays.fill(size, 0);
        carry(pump, pumpSpeed, engineDrives ? INPUT : -1, engine.shaftSlope);
        carry(motor, motorSpeed, motorFree ? MOTOR : -1, 1);
        laminar();
        sharp();
        lifted();
        shoes(pump);
        shoes(motor);
        relief(A, B, vector[LoopParameter.RELIEF_A.index()]);
        relief(B, A, vector[LoopParameter.RELIEF_B.index()]);
        makeUp.add();
        ShaftBalance.input(this);
        ShaftBalance.motor(this);
    }

    /** Filling of a side: 1, or less where oil is missing. */
    double fill(int side) {
        double missing = cavityPressure - unknown[side];
        return missing <= 0 ? 1 : Math.max(LEAST_FILL, 1 - missing / MISSING_SCALE);
    }

    /** Least coordinate: an empty side, Pa. */
    double emptiest() {
        return filledTo(LEAST_FILL);
    }

    /** Coordinate of a side that oil fills to a share (1), Pa. */
    double filledTo(double share) {
        return cavityPressure - MISSING_SCALE * (1 - share);
    }

    private void node(int side) {
        double u = unknown[side];
        if (u >= cavityPressure) {
            if (side == G) {
                galleryWork = oil.evaluateWithWork(u, oilValues, 0);
            } else {
                oil.evaluate(u, oilValues, 0);
            }
            pressure[side] = u;
            pressureSlope[side] = 1;
            density[side] = oilValues[0];
            densitySlope[side] = oilValues[1];
            gapPressure[side] = oilValues[2];
            gapSlope[side] = oilValues[3];
        } else {
            galleryWork = side == G ? oil.flowWork(cavityPressure) : galleryWork;
            pressure[side] = cavityPressure;
            pressureSlope[side] = 0;
            density[side] = partedOil[0] * fill(side);
            densitySlope[side] = partedOil[0] / MISSING_SCALE;
            gapPressure[side] = partedOil[2];
            gapSlope[side] = 0;
        }
    }

    /** Oil a unit carries from B to A with its chambers. */
    private void carry(UnitLaw unit, double speed, int speedUnknown, double speedSlope) {
        double perTurn = unit.strokers / TWO_PI;
        double rate = Math.abs(speed) * perTurn;
        double out = speed >= 0 ? unit.volumeZero : unit.volumePi; // leaves B with this volume
        double back = speed >= 0 ? unit.volumePi : unit.volumeZero; // leaves A with this volume
        double carried = out * density[B] - back * density[A];
        double fromB = rate * out * densitySlope[B];
        double fromA = -rate * back * densitySlope[A];
        add(A, rate * carried, rate * (out * density[B] + back * density[A]));
        add(B, -rate * carried, rate * (out * density[B] + back * density[A]));
        slope[A * SIZE + A] += fromA;
        slope[A * SIZE + B] += fromB;
        slope[B * SIZE + A] -= fromA;
        slope[B * SIZE + B] -= fromB;
        if (speedUnknown >= 0) {
            double bySpeed = (speed >= 0 ? 1 : -1) * perTurn * carried * speedSlope;
            slope[A * SIZE + speedUnknown] += bySpeed;
            slope[B * SIZE + speedUnknown] -= bySpeed;
        }
    }

    private void laminar() {
        double both = pump.pistonConductance
                + pump.badPistonConductance
                + pump.faceConductance
                + pump.caseScoreConductance
                + motor.pistonConductance
                + motor.badPistonConductance
                + motor.faceConductance
                + motor.caseScoreConductance;
        toCase(A, (both + pump.sideAConductance + motor.sideAConductance) / viscosity);
        toCase(B, (both + pump.sideBConductance + motor.sideBConductance) / viscosity);
        double bridge = (pump.bridgeConductance
                        + pump.bridgeScoreConductance
                        + motor.bridgeConductance
                        + motor.bridgeScoreConductance)
                / viscosity;
        between(A, B, bridge * (gapPressure[A] - gapPressure[B]), bridge * gapSlope[A], bridge * gapSlope[B]);
    }

    private void toCase(int side, double conductance) {
        double leak = conductance * (gapPressure[side] - caseGapPressure);
        add(side, -leak, Math.abs(leak));
        slope[side * SIZE + side] -= conductance * gapSlope[side];
    }

    /** Sharp-edged paths: cracks, bypass valve. */
    private void sharp() {
        giving(A);
        giving(B);
        sharpToCase(A, vector[LoopParameter.CRACK_A.index()]);
        sharpToCase(B, vector[LoopParameter.CRACK_B.index()]);
        double area =
                vector[LoopParameter.CRACK_AB.index()] + bypassOpening * vector[LoopParameter.BYPASS_AREA.index()];
        if (area > 0) {
            orifice(area, pressure[A] - pressure[B]);
            between(A, B, flow, flowSlope * pressureSlope[A], flowSlope * pressureSlope[B]);
        }
    }

    private void giving(int side) {
        double over = pressure[side] - casePressure - GIVING_PRESSURE;
        if (over > 0) {
            double leak = GIVING_SLOPE * ramp(over, GIVING_PRESSURE);
            add(side, -leak, leak);
            slope[side * SIZE + side] -= GIVING_SLOPE * rampSlope(over, GIVING_PRESSURE);
        }
    }

    /** Flow to the case through what is forced open at extreme pressure, m³/s. */
    double givingFlow(int side) {
        return GIVING_SLOPE * ramp(pressure[side] - casePressure - GIVING_PRESSURE, GIVING_PRESSURE);
    }

    private void sharpToCase(int side, double area) {
        if (area > 0) {
            orifice(area, pressure[side] - casePressure);
            add(side, -flow, Math.abs(flow));
            slope[side * SIZE + side] -= flowSlope * pressureSlope[side];
        }
    }

    /** The motor block lifted off its face: both kidneys open to the case. */
    private void lifted() {
        double lift = lift();
        if (lift > 0) {
            double conductance = liftConductance(lift) / viscosity;
            double mouth = motor.liftEdge * lift;
            throated(A, 1, conductance, mouth);
            throated(B, 1, conductance, mouth);
        }
    }

    double lift() {
        return bypassOpening * vector[LoopParameter.BYPASS_LIFT.index()];
    }

    double liftConductance(double lift) {
        double film = motor.film;
        double open = film + lift;
        return motor.liftFactor * (open * open * open - film * film * film);
    }

    private void shoes(UnitLaw unit) {
        if (unit.shoes > 0) {
            throated(A, unit.shoes, unit.shoeConductance / viscosity, unit.shoeMouth);
            throated(B, unit.shoes, unit.shoeConductance / viscosity, unit.shoeMouth);
        }
    }

    private void throated(int side, double count, double conductance, double mouth) {
        double leak = ThroatedGap.flow(conductance, mouth, pressure[side] - casePressure, oilDensity);
        add(side, -count * leak, Math.abs(count * leak));
        slope[side * SIZE + side] -=
                count * ThroatedGap.slope(conductance, mouth, leak, oilDensity) * pressureSlope[side];
    }

    private void relief(int guarded, int other, double setting) {
        if (setting > 0) {
            double over = pressure[guarded] - pressure[other] - setting;
            double gain = vector[LoopParameter.RELIEF_SLOPE.index()];
            double through = gain * ramp(over, setting);
            double by = gain * rampSlope(over, setting);
            between(guarded, other, through, by * pressureSlope[guarded], by * pressureSlope[other]);
        }
    }

    /** Smooth start of a relief valve: 0, then a parabola over 5 % of the setting, then straight; Pa. */
    static double ramp(double over, double setting) {
        double knee = 0.05 * setting + 1;
        return over <= 0 ? 0 : over < knee ? over * over / (2 * knee) : over - knee / 2;
    }

    static double rampSlope(double over, double setting) {
        double knee = 0.05 * setting + 1;
        return over <= 0 ? 0 : over < knee ? over / knee : 1;
    }

    void add(int row, double value, double magnitude) {
        residual[row] += value;
        size[row] += magnitude;
    }

    /** A flow from one node to another with its slopes by the pressures at both ends. */
    void between(int from, int to, double through, double byFrom, double byTo) {
        add(from, -through, Math.abs(through));
        add(to, through, Math.abs(through));
        slope[from * SIZE + from] -= byFrom;
        slope[from * SIZE + to] += byTo;
        slope[to * SIZE + from] += byFrom;
        slope[to * SIZE + to] -= byTo;
    }

    /** Flow of a small pressure difference through an opening, per area and pressure, m/(s·Pa). */
    double orificePerPressure() {
        return orificeFactor / Math.sqrt(Orifice.TRANSITION);
    }

    /** Sets {@link #flow} and {@link #flowSlope} of a sharp opening. */
    void orifice(double area, double difference) {
        double square = difference * difference + Orifice.TRANSITION * Orifice.TRANSITION;
        double gain = orificeFactor * area / Math.sqrt(Math.sqrt(square));
        flow = gain * difference;
        flowSlope = gain * (1 - difference * difference / (2 * square));
    }
}
