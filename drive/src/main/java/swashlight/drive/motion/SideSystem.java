package swashlight.drive.motion;

import swashlight.drive.description.LoopParameter;
import swashlight.drive.description.MakeUpParameter;
import swashlight.drive.description.Place;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.gap.FaceGap;
import swashlight.drive.gap.Orifice;
import swashlight.drive.gap.Score;
import swashlight.drive.gap.ThroatedGap;

/**
 * The two sides and the gallery in one implicit step: their oil, everything that joins them, and what the eliminated chambers add.
 *
 * <pre>
 *   V_A d(p_A) = m_A,  dm_A/dt = Σ in        likewise B and gallery
 * </pre>
 *
 * Laws and parameters are those of the steady view. SI; flat workspace of {@link MotionKernel}.
 */
final class SideSystem {
    static final int A = 0;
    static final int B = 1;
    static final int G = 2;

    private static final double GIVING_PRESSURE = 60e6; // Pa above the case, as in the steady view
    private static final double GIVING_SLOPE = 1e-10; // m³/(s·Pa), as in the steady view

    final double[] pressure = new double[3]; // Pa
    final double[] mass = new double[3]; // m³ at ρ₀, state
    final double[] base = new double[3]; // M of the present stage, m³
    final double[] volume = new double[3]; // m³
    private final double[] flow = new double[3]; // net flow in, m³/s
    private final double[] slope = new double[9]; // of the flow, m³/(s·Pa)
    final double[] change = new double[3]; // of pressure, Pa
    private final double[] density = new double[3];
    private final double[] densitySlope = new double[3];
    private final double[] gapPressure = new double[3];
    private final double[] gapSlope = new double[3];
    private final double[] vector;

    private final double caseA; // conductances to the case, m³
    private final double caseB;
    private final double across; // A to B, m³
    private final double liftFactor; // 1
    private final double film; // m
    private final double liftEdge; // m
    private final double bypassArea; // m²
    private final double bypassLift; // m
    private final double crackA;
    private final double crackB;
    private final double crackAB;
    private final CheckValve checkA;
    private final CheckValve checkB;
    private final double reliefA; // Pa
    private final double reliefB; // Pa
    private final double reliefGain; // m³/(s·Pa)
    final ChargePump charge;
    final PathFlows paths = new PathFlows();

    double perViscosity; // 1/(Pa·s)
    double orificeFactor; // m³/s per m² and Pa^½
    double oilDensity; // kg/m³
    double casePressure; // Pa
    double caseGap; // Pa
    double filterConductance; // m³/(s·Pa)
    double bypassOpening; // 1
    double pumpTurns; // turns per second of the pump, for the charge pump
    private double q;
    private double dq;

    double makeUpFlow; // last stage, m³/s
    double caseLeak; // last stage, m³/s
    private double chamberA;
    private double chamberB;
    private double chamberLeak;
    private double fromCase; // last gathering: net flow from the case into the loop without the chambers, m³/s
    private final double[] fromCaseSlope = new double[3];

    SideSystem(double[] vector) {
        this.vector = vector;
        volume[A] = vector[LoopParameter.VOLUME_A.index()];
        volume[B] = vector[LoopParameter.VOLUME_B.index()];
        volume[G] = vector[MakeUpParameter.GALLERY_VOLUME.index()];
        FaceGap pump = face(Place.PUMP);
        FaceGap motor = face(Place.MOTOR);
        double both = pump.conductance() + motor.conductance();
        caseA = both + caseScores(Place.PUMP, pump, true) + caseScores(Place.MOTOR, motor, true);
        caseB = both + caseScores(Place.PUMP, pump, false) + caseScores(Place.MOTOR, motor, false);
        across = pump.bridgeConductance()
                + motor.bridgeConductance()
                + bridge(Place.PUMP, pump)
                + bridge(Place.MOTOR, motor);
        film = motor.gap();
        liftFactor = motor.caseConductance(1);
        liftEdge = motor.kidneyEdge();
        bypassArea = vector[LoopParameter.BYPASS_AREA.index()];
        bypassLift = vector[LoopParameter.BYPASS_LIFT.index()];
        crackA = vector[LoopParameter.CRACK_A.index()];
        crackB = vector[LoopParameter.CRACK_B.index()];
        crackAB = vector[LoopParameter.CRACK_AB.index()];
        checkCrack = vector[LoopParameter.CHECK_CRACK.index()];
        checkA = CheckValve.a(vector);
        checkB = CheckValve.b(vector);
        reliefA = vector[LoopParameter.RELIEF_A.index()];
        reliefB = vector[LoopParameter.RELIEF_B.index()];
        reliefGain = vector[LoopParameter.RELIEF_SLOPE.index()];
        charge = new ChargePump(vector);
    }

    private double get(Place place, UnitProperty property) {
        return vector[new UnitParameter(place, property).index()];
    }

    private FaceGap face(Place place) {
        return new FaceGap(
                get(place, UnitProperty.FACE_GAP),
                get(place, UnitProperty.KIDNEY_SPAN),
                get(place, UnitProperty.LAND_INNER),
                get(place, UnitProperty.KIDNEY_INNER),
                get(place, UnitProperty.KIDNEY_OUTER),
                get(place, UnitProperty.LAND_OUTER));
    }

    private double caseScores(Place place, FaceGap face, boolean sideA) {
        double land = face.landWidth();
        double turning = new Score(
                        get(place, UnitProperty.CASE_SCORE_WIDTH),
                        get(place, UnitProperty.CASE_SCORE_DEPTH),
                        land,
                        false)
                .conductance();
        UnitProperty width = sideA ? UnitProperty.SIDE_A_SCORE_WIDTH : UnitProperty.SIDE_B_SCORE_WIDTH;
        UnitProperty depth = sideA ? UnitProperty.SIDE_A_SCORE_DEPTH : UnitProperty.SIDE_B_SCORE_DEPTH;
        return turning + new Score(get(place, width), get(place, depth), land, false).conductance();
    }

    private double bridge(Place place, FaceGap face) {
        return new Score(
                        get(place, UnitProperty.BRIDGE_SCORE_WIDTH),
                        get(place, UnitProperty.BRIDGE_SCORE_DEPTH),
                        face.bridgeLength(),
                        false)
                .conductance();
    }

    /** Evaluates everything that joins sides, gallery and case at the present pressures. */
    void open(OilTable oil) {
        java.util.Arrays.fill(slope, 0);
        java.util.Arrays.fill(flow, 0);
        java.util.Arrays.fill(fromCaseSlope, 0);
        fromCase = 0;
        paths.clear();
        for (int side = A; side <= G; side++) {
            oil.at(pressure[side]);
            density[side] = oil.density;
            densitySlope[side] = oil.densitySlope;
            gapPressure[side] = oil.gapPressure;
            gapSlope[side] = oil.gapSlope;
        }
        double gainA = caseA * perViscosity;
        double gainB = caseB * perViscosity;
        withCase(A, gainA * (caseGap - gapPressure[A]), -gainA * gapSlope[A]);
        withCase(B, gainB * (caseGap - gapPressure[B]), -gainB * gapSlope[B]);
        double gain = across * perViscosity;
        between(A, B, gain * (gapPressure[A] - gapPressure[B]), gain * gapSlope[A], gain * gapSlope[B]);
        double open = crackAB + bypassOpening * bypassArea;
        if (open > 0) {
            orifice(open, pressure[A] - pressure[B]);
            between(A, B, q, dq, dq);
            paths.bypass = q * (1 - crackAB / open);
        }
        crack(A, crackA);
        crack(B, crackB);
        lifted();
        relief(A, B, reliefA);
        relief(B, A, reliefB);
        giving(A);
        giving(B);
        makeUp(oil.cavityPressure);
    }

    private void crack(int side, double area) {
        if (area > 0) {
            orifice(area, casePressure - pressure[side]);
            withCase(side, q, -dq);
        }
    }

    private void lifted() {
        double lift = bypassOpening * bypassLift;
        if (lift > 0) {
            double height = film + lift;
            double conductance = liftFactor * (height * height * height - film * film * film) * perViscosity;
            for (int side = A; side <= B; side++) {
                double out = ThroatedGap.flow(conductance, liftEdge * lift, pressure[side] - casePressure, oilDensity);
                paths.lifted += out;
                withCase(side, -out, -ThroatedGap.slope(conductance, liftEdge * lift, out, oilDensity));
            }
        }
    }

    private void relief(int guarded, int other, double setting) {
        if (setting > 0) {
            double over = pressure[guarded] - pressure[other] - setting;
            if (over > 0) {
                double by = reliefGain * rampSlope(over, setting);
                double through = reliefGain * ramp(over, setting);
                between(guarded, other, through, by, by);
                paths.relief += guarded == A ? through : -through;
            }
        }
    }

    private void giving(int side) {
        double over = pressure[side] - casePressure - GIVING_PRESSURE;
        if (over > 0) {
            withCase(
                    side,
                    -GIVING_SLOPE * ramp(over, GIVING_PRESSURE),
                    -GIVING_SLOPE * rampSlope(over, GIVING_PRESSURE));
        }
    }

    private void makeUp(double cavityPressure) {
        double gauge = pressure[G] - casePressure;
        makeUpFlow = filterConductance * charge.forwardDrop(-gauge);
        withCase(G, makeUpFlow, -filterConductance * charge.forwardDropSlope(-gauge));
        if (charge.there()) {
            double given = charge.flow(pumpTurns, filterConductance * (casePressure - cavityPressure));
            double relieved = charge.relieved(gauge);
            paths.chargeRelief = relieved;
            withCase(G, given - relieved, -charge.relievedSlope(gauge));
            makeUpFlow += given - relieved;
        }
        check(A, checkA);
        check(B, checkB);
    }

    private void check(int side, CheckValve valve) {
        double difference = pressure[G] - pressure[side];
        valve.at(difference);
        orifice(1, difference);
        double by = dq * valve.area + q * valve.areaSlope;
        between(G, side, q * valve.area, by, by);
        paths.bleed[side] = q * valve.bleed;
        paths.check[side] = q * valve.area - paths.bleed[side];
    }

    private void withCase(int side, double in, double bySide) {
        flow[side] += in;
        slope[side * 3 + side] += bySide;
        fromCase += in;
        fromCaseSlope[side] += bySide;
    }

    private void between(int from, int to, double through, double byFrom, double byTo) {
        flow[from] -= through;
        flow[to] += through;
        slope[from * 3 + from] -= byFrom;
        slope[from * 3 + to] += byTo;
        slope[to * 3 + from] += byFrom;
        slope[to * 3 + to] -= byTo;
    }

    private void orifice(double area, double difference) {
        double square = difference * difference + Orifice.TRANSITION * Orifice.TRANSITION;
        double gain = orificeFactor * area / Math.sqrt(Math.sqrt(square));
        q = gain * difference;
        dq = gain * (1 - 0.5 * difference * difference / square);
    }

    private double eliminatedA;
    private double eliminatedB;
    private double aa;
    private double ab;
    private double ba;
    private double bb;

    void clearCoupled() {
        eliminatedA = 0;
        eliminatedB = 0;
        aa = 0;
        ab = 0;
        ba = 0;
        bb = 0;
    }

    /** What eliminated chambers send into A and B, and minus its slopes. */
    void addCoupled(double intoA, double intoB, double slopeAA, double slopeAB, double slopeBA, double slopeBB) {
        eliminatedA += intoA;
        eliminatedB += intoB;
        aa += slopeAA;
        ab += slopeAB;
        ba += slopeBA;
        bb += slopeBB;
    }

    /** Solves the three linearised balances for the pressure changes over an implicit step τ, s. */
    void solve(double tau) {
        double rA = base[A] + tau * (flow[A] + eliminatedA) - volume[A] * density[A];
        double rB = base[B] + tau * (flow[B] + eliminatedB) - volume[B] * density[B];
        double rG = base[G] + tau * flow[G] - volume[G] * density[G];
        double mAA = volume[A] * densitySlope[A] - tau * (slope[0] - aa);
        double mAB = -tau * (slope[1] - ab);
        double mAG = -tau * slope[2];
        double mBA = -tau * (slope[3] - ba);
        double mBB = volume[B] * densitySlope[B] - tau * (slope[4] - bb);
        double mBG = -tau * slope[5];
        double mGA = -tau * slope[6];
        double mGB = -tau * slope[7];
        double mGG = volume[G] * densitySlope[G] - tau * slope[8];
        // eliminate G, then two by two
        double fA = mAG / mGG;
        double fB = mBG / mGG;
        double nAA = mAA - fA * mGA;
        double nAB = mAB - fA * mGB;
        double nBA = mBA - fB * mGA;
        double nBB = mBB - fB * mGB;
        double sA = rA - fA * rG;
        double sB = rB - fB * rG;
        double determinant = nAA * nBB - nAB * nBA;
        change[A] = (sA * nBB - nAB * sB) / determinant;
        change[B] = (nAA * sB - nBA * sA) / determinant;
        change[G] = (rG - mGA * change[A] - mGB * change[B]) / mGG;
    }

    /** Moves the pressures by the changes; returns the largest change over its scale, 1. */
    double move(double least) {
        double worst = 0;
        for (int side = A; side <= G; side++) {
            double moved = pressure[side] + change[side];
            if (moved < least) {
                moved = Math.max(least, least + 0.1 * (pressure[side] - least));
            }
            double size = Math.abs(change[side]) / (1e4 + Math.abs(moved));
            pressure[side] = moved;
            worst = Math.max(worst, size);
        }
        return worst;
    }

    void beginBook() {
        chamberA = 0;
        chamberB = 0;
        chamberLeak = 0;
    }

    void chambersTook(double fromA, double fromB, double lost) {
        chamberA += fromA;
        chamberB += fromB;
        chamberLeak += lost;
    }

    /** Books the oil of sides and gallery after the chambers have been booked. */
    void book(double tau) {
        for (int side = A; side <= G; side++) {
            double in = flow[side];
            for (int other = A; other <= G; other++) {
                in += slope[side * 3 + other] * change[other];
            }
            double taken = side == A ? chamberA : side == B ? chamberB : 0;
            mass[side] = base[side] + tau * (in - taken);
        }
        double net = fromCase;
        for (int side = A; side <= G; side++) {
            net += fromCaseSlope[side] * change[side];
        }
        caseFlow = net - chamberLeak;
        caseLeak = makeUpFlow - caseFlow;
    }

    double caseFlow; // net flow from the case into everything, last stage, m³/s

    final double checkCrack; // Pa

    /** True when a loop relief valve is open. */
    boolean reliefOpen() {
        double across = pressure[A] - pressure[B];
        return (reliefA > 0 && across > reliefA) || (reliefB > 0 && -across > reliefB);
    }

    static double ramp(double over, double setting) {
        double knee = 0.05 * setting + 1;
        return over <= 0 ? 0 : over < knee ? over * over / (2 * knee) : over - knee / 2;
    }

    static double rampSlope(double over, double setting) {
        double knee = 0.05 * setting + 1;
        return over <= 0 ? 0 : over < knee ? over / knee : 1;
    }
}
