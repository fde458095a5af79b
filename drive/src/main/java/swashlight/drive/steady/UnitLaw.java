package swashlight.drive.steady;

import swashlight.drive.description.Place;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.gap.AnnularGap;
import swashlight.drive.gap.FaceGap;
import swashlight.drive.gap.Orifice;
import swashlight.drive.gap.Score;

/**
 * Cycle means of one rotating group, as flat coefficients: what it carries, where it leaks, what turns it costs.
 *
 * <pre>
 *   carried B → A     N (ω/2π) (V(0) ρ_B − V(π) ρ_A)      ω &gt; 0, chambers switch at the dead centres
 *   torque            N A R tan α (p_A − p_B)/π
 *   piston leak       mean of 1/(L − R tan α cos φ) over half a turn is 1/√(L² − R² tan² α)
 *   friction          (f R A |sin α| + f_t R A) (N/2) (p_A + p_B − 2 p_case)
 *   viscous           [π (r4⁴ − r1⁴)/(2h) + N π d L R² tan² α/(2c)] µ ω
 *   churning          ½ C ρ r4⁵ ω |ω|
 * </pre>
 *
 * Source: cycle means of the piston-by-piston laws, own derivation; Ivantysyn and Ivantysynova 2001 for the terms (from memory).
 * Mutable workspace of the solver; all numbers SI (lengths m, volumes m³, conductances m³, torque per pressure m³).
 */
final class UnitLaw {
    private static final double TWO_PI = 2 * Math.PI; // rad per turn

    private final int[] index = new int[UnitProperty.values().length];
    private final boolean motor;
    private double[] vector = new double[0];

    double strokers; // pistons that stroke, 1
    double displacement; // per turn at the present swash angle, signed, m³/rev
    double volumeZero; // chamber at φ = 0, m³
    double volumePi; // chamber at φ = π, m³
    double torquePerPressure; // m³
    double frictionPerPressure; // m³
    double breakawayRatio; // 1
    double drag; // viscous torque / (µ ω), m³
    double churn; // torque / (ρ ω²), m⁵
    double pistonConductance; // one side to the case, m³
    double badPistonConductance; // extra of one bad piston, one side, m³
    double faceConductance; // one kidney to the case, m³
    double caseScoreConductance; // each side to the case, m³
    double sideAConductance; // score from A to the case, m³
    double sideBConductance; // score from B to the case, m³
    double bridgeConductance; // A to B, m³
    double bridgeScoreConductance; // A to B, m³
    double shoes; // shoes under pressure on one side, 1
    double shoeConductance; // one shoe, m³
    double shoeMouth; // m²
    double liftEdge; // edge of one kidney, m
    double liftFactor; // conductance of one kidney per h³, 1
    double film; // face gap, m
    private double area; // m²
    private double pitch; // m
    private double ringFactor; // piston leak × √(L² − e²), m⁴
    private double badRingFactor; // m⁴
    private double faceDrag; // m³
    private double pistonDrag; // × tan² α, m³
    private double engaged; // m

    UnitLaw(Place place) {
        motor = place == Place.MOTOR;
        for (UnitProperty property : UnitProperty.values()) {
            index[property.ordinal()] = new UnitParameter(place, property).index();
        }
    }

    /** Takes over the numbers of a drive that do not depend on swash angle. */
    void load(double[] values) {
        vector = values;
        double count = get(UnitProperty.PISTON_COUNT);
        double diameter = get(UnitProperty.PISTON_DIAMETER);
        double clearance = get(UnitProperty.BORE_CLEARANCE);
        strokers = count - get(UnitProperty.IDLE_PISTONS);
        area = Math.PI * diameter * diameter / 4;
        pitch = get(UnitProperty.PITCH_RADIUS);
        engaged = get(UnitProperty.ENGAGED_LENGTH);
        double ring = new AnnularGap(diameter, clearance, get(UnitProperty.BORE_ECCENTRICITY), 1).conductance();
        ringFactor = count / 2 * ring;
        double bad = get(UnitProperty.BAD_PISTON_CLEARANCE);
        badRingFactor = bad > clearance
                ? new AnnularGap(diameter, bad, get(UnitProperty.BORE_ECCENTRICITY), 1).conductance() / 2 - ring / 2
                : 0;
        face();
        shoes(count);
        pistonDrag = count * Math.PI * diameter * engaged * pitch * pitch / (2 * clearance);
        churn = get(UnitProperty.CHURNING_COEFFICIENT) * Math.pow(get(UnitProperty.LAND_OUTER), 5) / 2;
        breakawayRatio = get(UnitProperty.BREAKAWAY_RATIO);
    }

    /** Sets the swash angle α, rad; the motor's is its own fixed angle. */
    void swash(double angle) {
        double tan = (motor ? -1 : 1) * Math.tan(angle);
        double halfStroke = pitch * tan;
        double mid = get(UnitProperty.CHAMBER_MID_VOLUME);
        volumeZero = mid + area * halfStroke;
        volumePi = mid - area * halfStroke;
        displacement = 2 * strokers * area * halfStroke;
        torquePerPressure = displacement / TWO_PI;
        double load = get(UnitProperty.PISTON_COUNT) / 2 * area * pitch;
        frictionPerPressure = load
                * (get(UnitProperty.FRICTION_COEFFICIENT) * Math.abs(Math.sin(angle))
                        + get(UnitProperty.THRUST_FRICTION));
        double root = Math.sqrt(engaged * engaged - halfStroke * halfStroke);
        pistonConductance = ringFactor / root;
        badPistonConductance = badRingFactor / root;
        drag = faceDrag + pistonDrag * tan * tan;
    }

    double fixedSwashAngle() {
        return get(UnitProperty.FULL_SWASH_ANGLE);
    }

    double turnsPerSecond(double speed) {
        return speed / TWO_PI;
    }

    double get(UnitProperty property) {
        return vector[index[property.ordinal()]];
    }

    private void face() {
        FaceGap gap = new FaceGap(
                get(UnitProperty.FACE_GAP),
                get(UnitProperty.KIDNEY_SPAN),
                get(UnitProperty.LAND_INNER),
                get(UnitProperty.KIDNEY_INNER),
                get(UnitProperty.KIDNEY_OUTER),
                get(UnitProperty.LAND_OUTER));
        film = gap.gap();
        faceConductance = gap.conductance();
        liftFactor = gap.caseConductance(1);
        liftEdge = gap.kidneyEdge();
        faceDrag = gap.dragCoefficient();
        bridgeConductance = gap.bridgeConductance();
        double land = gap.landWidth();
        caseScoreConductance = score(UnitProperty.CASE_SCORE_WIDTH, UnitProperty.CASE_SCORE_DEPTH, land);
        sideAConductance = score(UnitProperty.SIDE_A_SCORE_WIDTH, UnitProperty.SIDE_A_SCORE_DEPTH, land);
        sideBConductance = score(UnitProperty.SIDE_B_SCORE_WIDTH, UnitProperty.SIDE_B_SCORE_DEPTH, land);
        bridgeScoreConductance =
                score(UnitProperty.BRIDGE_SCORE_WIDTH, UnitProperty.BRIDGE_SCORE_DEPTH, gap.bridgeLength());
    }

    private double score(UnitProperty width, UnitProperty depth, double length) {
        return new Score(get(width), get(depth), length, false).conductance();
    }

    /** A shoe pocket: π h³/(6 ln(R/r)) with the land from half the piston diameter to 1.25 times it (usual proportions). */
    private void shoes(double count) {
        double hole = get(UnitProperty.SHOE_ORIFICE);
        double gap = get(UnitProperty.SHOE_GAP);
        shoes = hole > 0 && gap > 0 ? count / 2 : 0;
        shoeConductance = Math.PI * gap * gap * gap / (6 * Math.log(2.5));
        shoeMouth = Orifice.area(hole);
    }
}
