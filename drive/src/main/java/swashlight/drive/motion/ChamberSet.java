package swashlight.drive.motion;

import swashlight.drive.description.Place;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.gap.AnnularGap;
import swashlight.drive.gap.FaceGap;
import swashlight.drive.gap.Orifice;
import swashlight.drive.gap.ThroatedGap;

/**
 * The chambers of one rotating group: where each piston stands, what its ports let through, and what oil it holds.
 *
 * <pre>
 *   φ_k = θ + 2πk/N                     φ = 0 where the chamber is largest (pump, α &gt; 0)
 *   V_k = V_mid + A R tan α cos φ_k     the motor's tan α counts negative, so that both carry from B to A when they turn forward
 *   V_k d(p_k) = m_k                    oil mass over ρ₀ (m³) is the state, pressure follows
 *   dm_k/dt = Q_A + Q_B − leak          orifices to kidneys A and B, gap past the piston, shoe pocket
 *   a_A(φ) = a_max S((φ − δ)/w + ½) S((π − δ − φ)/w + ½), a_B(φ) = a_A(φ − π), S(u) = u² (3 − 2u)
 * </pre>
 *
 * One implicit step over τ solves V d(p) − M − τ (Q_A + Q_B − leak) = 0 for each chamber; linearised in p, p_A and p_B a chamber is
 * eliminated from the sides' balances at the cost of one line. Source: textbook chamber equation; Schur complement of an arrow matrix. SI;
 * flat workspace of {@link MotionKernel}.
 */
final class ChamberSet {
    private static final double TWO_PI = 2 * Math.PI;
    private static final double SQUARE_TRANSITION = Orifice.TRANSITION * Orifice.TRANSITION; // Pa²

    final int count;
    private final int idle;
    private final double sign; // +1 pump, −1 motor
    final double area; // m²
    final double pitch; // m
    final double midVolume; // m³
    private final double engaged; // m
    private final double ring; // leak × length, m⁴
    private final double badRing; // m⁴
    private final double shoeConductance; // m³
    private final double shoeMouth; // m²
    private final double portArea; // m²
    private final double overlap; // rad
    private final double perRamp; // 1/rad
    private final double grooveArea; // m²
    private final double grooveAngle; // rad
    private final double turnCos;
    private final double turnSin;

    final double faceDrag; // viscous torque of the face / (µ ω), m³
    final double pistonDrag; // viscous torque of the pistons / (µ ω tan² α), m³

    final double[] mass; // m³ at ρ₀, state
    final double[] base; // M of the present stage, m³
    final double[] pressure; // Pa
    final double[] volume; // m³
    final double[] volumeSlope; // dV/dθ, m³/rad
    private final double[] cosine; // cos φ, 1
    final double[] gainA; // orifice to A, m³/s per Pa^½
    final double[] gainB;
    final double[] leakGain; // m³/(s·Pa)
    private final double[] step; // change at fixed sides, Pa
    private final double[] byA; // dp_k/dp_A, 1
    private final double[] byB;
    private final double[] qA; // into the chamber from A, m³/s
    private final double[] qB;
    private final double[] qASlope;
    private final double[] qBSlope;
    private final double[] leak;
    private final double[] leakSlope;

    double tan; // signed tan α
    double sine; // |sin α|

    ChamberSet(double[] vector, Place place) {
        count = (int) get(vector, place, UnitProperty.PISTON_COUNT);
        idle = (int) get(vector, place, UnitProperty.IDLE_PISTONS);
        sign = place == Place.MOTOR ? -1 : 1;
        double diameter = get(vector, place, UnitProperty.PISTON_DIAMETER);
        area = Math.PI * diameter * diameter / 4;
        pitch = get(vector, place, UnitProperty.PITCH_RADIUS);
        midVolume = get(vector, place, UnitProperty.CHAMBER_MID_VOLUME);
        engaged = get(vector, place, UnitProperty.ENGAGED_LENGTH);
        double eccentricity = get(vector, place, UnitProperty.BORE_ECCENTRICITY);
        double clearance = get(vector, place, UnitProperty.BORE_CLEARANCE);
        ring = new AnnularGap(diameter, clearance, eccentricity, 1).conductance();
        double bad = Math.max(clearance, get(vector, place, UnitProperty.BAD_PISTON_CLEARANCE));
        badRing = new AnnularGap(diameter, bad, eccentricity, 1).conductance();
        double hole = get(vector, place, UnitProperty.SHOE_ORIFICE);
        double shoe = get(vector, place, UnitProperty.SHOE_GAP);
        shoeMouth = hole > 0 && shoe > 0 ? Orifice.area(hole) : 0;
        shoeConductance = Math.PI * shoe * shoe * shoe / (6 * Math.log(2.5)); // land proportions as in the steady view
        portArea = get(vector, place, UnitProperty.PORT_AREA);
        overlap = get(vector, place, UnitProperty.PORT_OVERLAP);
        perRamp = 1 / get(vector, place, UnitProperty.PORT_RAMP);
        grooveArea = get(vector, place, UnitProperty.GROOVE_AREA);
        grooveAngle = get(vector, place, UnitProperty.GROOVE_ANGLE);
        faceDrag = new FaceGap(
                        get(vector, place, UnitProperty.FACE_GAP),
                        get(vector, place, UnitProperty.KIDNEY_SPAN),
                        get(vector, place, UnitProperty.LAND_INNER),
                        get(vector, place, UnitProperty.KIDNEY_INNER),
                        get(vector, place, UnitProperty.KIDNEY_OUTER),
                        get(vector, place, UnitProperty.LAND_OUTER))
                .dragCoefficient();
        pistonDrag = count * Math.PI * diameter * engaged * pitch * pitch / (2 * clearance);
        turnCos = Math.cos(TWO_PI / count);
        turnSin = Math.sin(TWO_PI / count);
        mass = new double[count];
        base = new double[count];
        pressure = new double[count];
        volume = new double[count];
        volumeSlope = new double[count];
        cosine = new double[count];
        gainA = new double[count];
        gainB = new double[count];
        leakGain = new double[count];
        step = new double[count];
        byA = new double[count];
        byB = new double[count];
        qA = new double[count];
        qB = new double[count];
        qASlope = new double[count];
        qBSlope = new double[count];
        leak = new double[count];
        leakSlope = new double[count];
    }

    private static double get(double[] vector, Place place, UnitProperty property) {
        return vector[new UnitParameter(place, property).index()];
    }

    void swash(double angle) {
        tan = sign * Math.tan(angle);
        sine = Math.abs(Math.sin(angle));
    }

    /** Places the pistons at a shaft angle (rad) and sets volumes, ports and leaks; orifice gain per area and 1/µ given. */
    void place(double angle, double orificeFactor, double perViscosity) {
        double halfStroke = pitch * tan;
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        double turns = angle / TWO_PI;
        double phi = (turns - Math.floor(turns)) * TWO_PI;
        double spacing = TWO_PI / count;
        for (int k = 0; k < count; k++) {
            boolean strokes = k >= idle;
            cosine[k] = cos;
            volume[k] = strokes ? midVolume + area * halfStroke * cos : midVolume;
            volumeSlope[k] = strokes ? -area * halfStroke * sin : 0;
            double length = engaged - halfStroke * cos;
            leakGain[k] = (k == count - 1 ? badRing : ring) / length * perViscosity;
            double half = phi < Math.PI * 1.5 ? phi : phi - TWO_PI; // in (−π/2, 3π/2)
            gainA[k] = orificeFactor * opening(half);
            double other = phi - Math.PI;
            gainB[k] = orificeFactor * opening(other >= -Math.PI / 2 ? other : other + TWO_PI);
            double nextCos = cos * turnCos - sin * turnSin;
            sin = sin * turnCos + cos * turnSin;
            cos = nextCos;
            phi += spacing;
            if (phi >= TWO_PI) {
                phi -= TWO_PI;
            }
        }
    }

    /** Area of kidney A's opening for a chamber at φ in (−π/2, 3π/2), m². */
    double opening(double phi) {
        double in = (phi - overlap) * perRamp + 0.5;
        double out = (Math.PI - overlap - phi) * perRamp + 0.5;
        double port = in > 0 && out > 0 ? portArea * smooth(in) * smooth(out) : 0;
        if (grooveArea > 0 && grooveAngle > 0) {
            port += grooveArea
                    * smooth((phi - overlap) / grooveAngle + 1)
                    * smooth((Math.PI - overlap - phi) / grooveAngle + 1);
        }
        return port;
    }

    /** Oil from side A into a chamber at present pressures (side, Pa), m³/s. */
    double fromA(int k, double sideA) {
        return through(gainA[k], sideA - pressure[k]);
    }

    /** Oil from side B into a chamber at present pressures (side, Pa), m³/s. */
    double fromB(int k, double sideB) {
        return through(gainB[k], sideB - pressure[k]);
    }

    /** Oil out of a chamber past its piston and through its shoe, as last solved, m³/s. */
    double lost(int k) {
        return leak[k];
    }

    private static double through(double gain, double difference) {
        return gain * difference / Math.sqrt(Math.sqrt(difference * difference + SQUARE_TRANSITION));
    }

    private static double smooth(double u) {
        return u <= 0 ? 0 : u >= 1 ? 1 : u * u * (3 - 2 * u);
    }

    /**
     * Linearises every chamber about its present pressure and adds what the sides see of it.
     *
     * @param tau implicit step, s
     * @param system the sides' balances being gathered
     */
    void gather(double tau, SideSystem system, OilTable oil, double caseGap, double casePressure, double oilDensity) {
        double sideA = system.pressure[SideSystem.A];
        double sideB = system.pressure[SideSystem.B];
        double intoA = 0;
        double intoB = 0;
        double aa = 0;
        double ab = 0;
        double ba = 0;
        double bb = 0;
        for (int k = 0; k < count; k++) {
            double p = pressure[k];
            oil.at(p);
            double flowA = 0;
            double slopeA = 0;
            if (gainA[k] > 0) {
                double x = sideA - p;
                double inverse = 1 / (x * x + SQUARE_TRANSITION);
                double g = gainA[k] * Math.sqrt(Math.sqrt(inverse));
                flowA = g * x;
                slopeA = g * (1 - 0.5 * x * x * inverse);
            }
            double flowB = 0;
            double slopeB = 0;
            if (gainB[k] > 0) {
                double x = sideB - p;
                double inverse = 1 / (x * x + SQUARE_TRANSITION);
                double g = gainB[k] * Math.sqrt(Math.sqrt(inverse));
                flowB = g * x;
                slopeB = g * (1 - 0.5 * x * x * inverse);
            }
            double lost = leakGain[k] * (oil.gapPressure - caseGap);
            double lostSlope = leakGain[k] * oil.gapSlope;
            if (shoeMouth > 0) {
                double pocket = ThroatedGap.flow(
                        shoeConductance * system.perViscosity, shoeMouth, p - casePressure, oilDensity);
                lost += pocket;
                lostSlope += ThroatedGap.slope(shoeConductance * system.perViscosity, shoeMouth, pocket, oilDensity);
            }
            double residual = volume[k] * oil.density - base[k] - tau * (flowA + flowB - lost);
            double stiff = 1 / (volume[k] * oil.densitySlope + tau * (slopeA + slopeB + lostSlope));
            double change = -residual * stiff;
            double onA = tau * slopeA * stiff;
            double onB = tau * slopeB * stiff;
            step[k] = change;
            byA[k] = onA;
            byB[k] = onB;
            qA[k] = flowA;
            qB[k] = flowB;
            qASlope[k] = slopeA;
            qBSlope[k] = slopeB;
            leak[k] = lost;
            leakSlope[k] = lostSlope;
            intoA -= flowA - slopeA * change;
            intoB -= flowB - slopeB * change;
            aa += slopeA * (1 - onA);
            ab -= slopeA * onB;
            ba -= slopeB * onA;
            bb += slopeB * (1 - onB);
        }
        system.addCoupled(intoA, intoB, aa, ab, ba, bb);
    }

    /**
     * Moves the chambers with the sides' changes (Pa); returns the largest change over its scale, 1.
     */
    double move(double changeA, double changeB, double least) {
        double worst = 0;
        for (int k = 0; k < count; k++) {
            double change = step[k] + byA[k] * changeA + byB[k] * changeB;
            step[k] = change;
            double old = pressure[k];
            double moved = old + change;
            if (moved < least) {
                moved = Math.max(least, least + 0.1 * (old - least));
            }
            pressure[k] = moved;
            double size = Math.abs(change);
            double scale = SCALE + Math.abs(moved);
            if (!(size <= worst * scale)) {
                worst = size / scale;
            }
        }
        return worst;
    }

    private static final double SCALE = 1e4; // Pa: below it changes count absolutely

    /** Books the oil of the last move: what a chamber gains, a side or the case loses, to the last bit. */
    void book(double tau, double changeA, double changeB, SideSystem system) {
        double outA = 0;
        double outB = 0;
        double lost = 0;
        for (int k = 0; k < count; k++) {
            double flowA = qA[k] + qASlope[k] * (changeA - step[k]);
            double flowB = qB[k] + qBSlope[k] * (changeB - step[k]);
            double leaked = leak[k] + leakSlope[k] * step[k];
            mass[k] = base[k] + tau * (flowA + flowB - leaked);
            outA += flowA;
            outB += flowB;
            lost += leaked;
        }
        tookA = outA;
        system.chambersTook(outA, outB, lost);
    }

    /** Torque of the oil on the shaft, positive where it resists forward rotation, N·m; sum of gauge pressures in {@link #load}. */
    double torque(double casePressure) {
        double torque = 0;
        double sum = 0;
        for (int k = 0; k < count; k++) {
            double gauge = pressure[k] - casePressure;
            torque -= gauge * volumeSlope[k];
            sum += gauge;
        }
        load = sum;
        return torque;
    }

    /** Moment of the pistons on the swash plate about its trunnions, towards larger angle positive, N·m. */
    double moment(double casePressure) {
        double perTan = area * pitch;
        double sum = 0;
        for (int k = idle; k < count; k++) {
            sum += (pressure[k] - casePressure) * cosine[k];
        }
        return -perTan * (1 + tan * tan) * sum;
    }

    double load; // Σ (p_k − p_case), Pa
    double tookA; // oil that all chambers took from side A, last stage, m³/s
    double firstTookA; // the same in the first stage of the step
    double meanTookA; // over the last step, as booked
}
