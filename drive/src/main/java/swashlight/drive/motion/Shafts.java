package swashlight.drive.motion;

import swashlight.drive.description.InputParameter;
import swashlight.drive.description.OutputParameter;
import swashlight.drive.description.Place;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;

/**
 * Engine, belt, pump shaft, motor shaft, gears, wheels and machine in one implicit step, the oil's torques being known.
 *
 * <pre>
 *   J_e dω_e/dt = T_engine(ω_e) − T_other − k T_belt          k belt ratio
 *   J_p dω_p/dt = T_belt(ω_e, ω_p) − T_pump                   T_belt = T_cap (1 − e^(−|s|/s_c)), s = 1 − ω_p/(k ω_e)
 *   J_m dω_m/dt = T_oil − friction − T_gear       T_gear = T_axle/(i η) driving, T_axle η/i driven
 *   M   dv/dt   = F − m g sin θ − (f m g cos θ + pull) sgn v  F = F_max (1 − e^(−k|s|)), s slip of the wheels
 * </pre>
 *
 * Dry friction and the loss of the teeth: sgn is rounded over {@link #STICTION_SPEED}; at standstill it grows to the breakaway friction (Stribeck). Wheel slip is taken
 * over the larger of the two speeds plus {@link #CRAWL}. Laws and parameters are those of the steady view. Source: see there; Stribeck
 * curve: common practice. SI; flat workspace of {@link MotionKernel}.
 */
final class Shafts {
    /** Shaft speed over which dry friction turns round, rad/s (own choice: a tenth of a turn a minute at the wheel). */
    static final double STICTION_SPEED = 0.2;

    /** Ground speed added to the reference of wheel slip, m/s (own choice). */
    static final double CRAWL = 0.05;

    /** Torque that turns an engine whose ignition is off, over its greatest torque, unit 1 (friction and pumping; common practice, no source). */
    static final double MOTORED_SHARE = 0.15;

    private static final double STOPPED_SHARE =
            0.03; // of the full speed: slower, an engine that does not fire stands, 1
    private static final double GRAVITY = 9.80665; // m/s², ISO 80000-3
    private static final double STRIBECK = 4; // breakaway fades over this many stiction speeds, 1
    private static final double FADED = 40; // e to minus this is lost beside 1, unit 1
    private static final double SPEED_SHARE = 1e-6; // of a speed, ends an iteration; what is left is of its square, 1
    private static final double GROUND_SHARE = 1e-8; // likewise of the ground speed, 1

    private final double[] vector;
    private final double pumpInertia; // kg·m²
    private final double motorInertia; // kg·m²
    private final double engineInertia; // kg·m²
    private final double mass; // kg, rotating parts included
    private final double weight; // N
    private final double ratio; // 1
    private final double meanGear; // motor torque per axle torque without regard to loss, 1
    private final double halfGear; // what loss adds or takes, 1
    private final double radius; // m
    private final double gripStiffness; // 1
    private final boolean connected;
    private final double beltRatio; // 1
    private final double beltCapacity; // N·m
    private final double beltCreep; // 1
    private final double fullSpeed; // rad/s
    private final double droop; // 1
    private final double ratedTorque; // N·m
    private final double peakTorque; // N·m
    private final double peakSpeed; // rad/s
    private final double otherTorque; // N·m
    private final double rolling; // 1
    private final double traction; // grip over the machine's weight, 1
    private final double gearDrag; // N·m
    private final double brakeDrag; // N·m
    private final double brakeCapacity; // N·m

    double throttle = 1; // 1
    double slope; // rad
    double pull; // N
    double brake; // 1
    boolean engineRuns; // turns by its own law; else the input shaft keeps its speed
    boolean engineFires = true; // false: ignition off, it slows down
    boolean lifted;
    boolean held;
    boolean pushed; // the speed over ground is given
    double givenAcceleration; // of the ground speed while pushed, m/s²

    // states
    double engineSpeed; // rad/s
    double pumpSpeed; // rad/s
    double motorSpeed; // rad/s
    double groundSpeed; // m/s

    // last evaluated
    double beltTorque; // N·m
    double beltSlip; // 1
    double engineTorque; // N·m
    double groundForce; // N
    double wheelSlip; // 1
    double axleTorque; // N·m
    private double d1;
    private double d2;

    Shafts(double[] vector) {
        this.vector = vector;
        pumpInertia = vector[UnitParameter.pump(UnitProperty.INERTIA).index()];
        motorInertia = vector[UnitParameter.motor(UnitProperty.INERTIA).index()];
        engineInertia = vector[InputParameter.ENGINE_INERTIA.index()];
        double machine = vector[OutputParameter.MACHINE_MASS.index()];
        mass = machine * (1 + vector[OutputParameter.MACHINE_ROTATING_SHARE.index()]);
        weight = machine * GRAVITY;
        ratio = vector[OutputParameter.GEARS_RATIO.index()];
        double efficiency = vector[OutputParameter.GEARS_MESH_EFFICIENCY.index()]
                * (1 - vector[OutputParameter.GEARS_TOOTH_LOSS.index()]);
        meanGear = (1 / efficiency + efficiency) / (2 * ratio);
        halfGear = (1 / efficiency - efficiency) / (2 * ratio);
        radius = vector[OutputParameter.WHEELS_ROLLING_RADIUS.index()];
        gripStiffness = vector[OutputParameter.WHEELS_TRACTION_STIFFNESS.index()];
        connected = vector[OutputParameter.GEARS_CONNECTED.index()] > 0.5;
        beltRatio = vector[InputParameter.BELT_SPEED_RATIO.index()];
        beltCapacity = Math.max(1e-3, vector[InputParameter.BELT_CAPACITY.index()]);
        beltCreep = Math.max(1e-6, vector[InputParameter.BELT_CREEP.index()]);
        fullSpeed = vector[InputParameter.ENGINE_NO_LOAD_SPEED.index()];
        droop = vector[InputParameter.ENGINE_DROOP.index()];
        double strength = vector[InputParameter.ENGINE_STRENGTH.index()];
        ratedTorque = strength * vector[InputParameter.ENGINE_RATED_TORQUE.index()];
        peakSpeed = vector[InputParameter.ENGINE_PEAK_SPEED_SHARE.index()] * fullSpeed;
        otherTorque = vector[InputParameter.ENGINE_OTHER_TORQUE.index()];
        rolling = vector[OutputParameter.WHEELS_ROLLING_RESISTANCE.index()];
        traction = vector[OutputParameter.WHEELS_TRACTION.index()] * vector[OutputParameter.WHEELS_LOAD_SHARE.index()];
        gearDrag = vector[OutputParameter.GEARS_DRAG_TORQUE.index()];
        brakeDrag = vector[OutputParameter.BRAKE_DRAG_TORQUE.index()];
        brakeCapacity = vector[OutputParameter.BRAKE_CAPACITY.index()];
        peakTorque = Math.max(ratedTorque * 1.001, strength * vector[InputParameter.ENGINE_PEAK_TORQUE.index()]);
    }

    private double get(Place place, UnitProperty property) {
        return vector[new UnitParameter(place, property).index()];
    }

    double stallSpeed() {
        return (engineFires ? vector[InputParameter.ENGINE_STALL_SPEED_SHARE.index()] : STOPPED_SHARE) * fullSpeed;
    }

    double noLoadSpeed() {
        return throttle * fullSpeed;
    }

    double beltRatio() {
        return beltRatio;
    }

    double gearRatio() {
        return ratio;
    }

    double rollingRadius() {
        return radius;
    }

    /** One implicit stage for engine and pump shaft: x = M + τ f(x), the oil's torque (N·m) being known. */
    void input(double tau, double baseEngine, double basePump, double oilTorque, Losses losses) {
        if (!engineRuns) {
            return;
        }
        double e = engineSpeed;
        double p = pumpSpeed;
        for (int count = 0; count < 12; count++) {
            engineTorque(e);
            double torque = engineTorque;
            double torqueSlope = d1;
            belt(e, p);
            double byEngine = d1;
            double byPump = d2;
            losses.at(p);
            double r1 = engineInertia * (e - baseEngine) - tau * (torque - otherTorque - beltRatio * beltTorque);
            double r2 = pumpInertia * (p - basePump) - tau * (beltTorque - oilTorque - losses.torque);
            double a = engineInertia - tau * (torqueSlope - beltRatio * byEngine);
            double b = tau * beltRatio * byPump;
            double c = -tau * byEngine;
            double d = pumpInertia - tau * (byPump - losses.slope);
            double determinant = a * d - b * c;
            double de = -(r1 * d - b * r2) / determinant;
            double dp = -(a * r2 - c * r1) / determinant;
            e = Math.max(0, e + de);
            p += dp;
            if (Math.abs(de) + Math.abs(dp) < SPEED_SHARE * (1 + Math.abs(p))) {
                break;
            }
        }
        engineSpeed = e;
        pumpSpeed = p;
    }

    /** One implicit stage for motor shaft and machine. */
    void output(double tau, double baseMotor, double baseGround, double oilTorque, Losses losses) {
        if (held) {
            motorSpeed = 0;
            groundSpeed = 0;
            return;
        }
        boolean rolls = !lifted;
        boolean grips = rolls && connected;
        double w = motorSpeed;
        double v = pushed ? baseGround + tau * givenAcceleration : groundSpeed;
        double normal = weight * Math.cos(slope);
        double grade = weight * Math.sin(slope);
        double resist = rolling * normal + pull;
        groundForce = 0;
        double grip = traction * normal;
        double dry = gearDrag + (connected ? brakeDrag + brake * brakeCapacity : 0);
        double rimPerSpeed = radius / ratio;
        for (int count = 0; count < 30; count++) {
            double sign = sign(w);
            double signSlope = signSlope(w);
            double force = 0;
            double byRim = 0;
            double byGround = 0;
            if (grips) {
                grip(w * rimPerSpeed, v, grip);
                force = groundForce;
                byRim = d1 * rimPerSpeed;
                byGround = d2;
            }
            axleTorque = force * radius + dry * sign;
            double axleByMotor = byRim * radius + dry * signSlope;
            double axleByGround = byGround * radius;
            double size = Math.abs(axleTorque);
            double gear = meanGear + (axleTorque < 0 ? -halfGear : halfGear) * sign;
            losses.at(w);
            double geared = meanGear * axleTorque + halfGear * size * sign;
            double r1 = motorInertia * (w - baseMotor) - tau * (oilTorque - losses.torque - geared);
            double a = motorInertia + tau * (losses.slope + gear * axleByMotor + halfGear * size * signSlope);
            double b = tau * gear * axleByGround;
            double r2 = 0;
            double c = 0;
            double d = 1;
            if (rolls && !pushed) {
                double round = v / STANDING_SPEED;
                double root = Math.sqrt(1 + round * round);
                r2 = mass * (v - baseGround) - tau * (force - grade - resist * round / root);
                c = -tau * byRim;
                d = mass - tau * (byGround - resist / (STANDING_SPEED * root * root * root));
            }
            double determinant = a * d - b * c;
            double dw = -(r1 * d - b * r2) / determinant;
            double dv = -(a * r2 - c * r1) / determinant;
            w += dw;
            v += dv;
            if (Math.abs(dw) < SPEED_SHARE * (1 + Math.abs(w)) && Math.abs(dv) < GROUND_SHARE * (1 + Math.abs(v))) {
                break;
            }
        }
        motorSpeed = w;
        groundSpeed = rolls ? v : 0;
    }

    /** Force that pushes or tows the machine at its given speed, N; 0 when nothing does. */
    double pushForce() {
        if (!pushed) {
            return 0;
        }
        double round = groundSpeed / STANDING_SPEED;
        double resist = rolling * weight * Math.cos(slope) + pull;
        return mass * givenAcceleration
                + weight * Math.sin(slope)
                + resist * round / Math.sqrt(1 + round * round)
                - groundForce;
    }

    private static final double STANDING_SPEED = 1e-3; // m/s over which rolling resistance turns round (own choice)

    static double sign(double speed) {
        double x = speed / STICTION_SPEED;
        return x / Math.sqrt(1 + x * x);
    }

    static double signSlope(double speed) {
        double x = speed / STICTION_SPEED;
        double root = Math.sqrt(1 + x * x);
        return 1 / (STICTION_SPEED * root * root * root);
    }

    /** Friction, drag and churning of one unit as a function of its speed, for a stage. */
    static final class Losses {
        private final double breakaway; // 1
        double dry; // N·m
        double viscous; // N·m·s/rad
        double churn; // N·m·s²/rad²
        double torque; // N·m
        double slope; // N·m·s/rad

        Losses(double breakaway) {
            this.breakaway = breakaway;
        }

        void at(double speed) {
            double x = speed / (STRIBECK * STICTION_SPEED);
            double extra = x * x < FADED ? (breakaway - 1) * Math.exp(-x * x) : 0;
            double magnitude = dry * (1 + extra);
            double magnitudeSlope = -dry * extra * 2 * x / (STRIBECK * STICTION_SPEED);
            double sign = sign(speed);
            torque = magnitude * sign + viscous * speed + churn * speed * Math.abs(speed);
            // the falling part of the Stribeck curve is left out of the slope: it would make the step's equation lose
            // its one answer
            slope = magnitude * signSlope(speed)
                    + Math.max(0, magnitudeSlope * sign)
                    + viscous
                    + 2 * churn * Math.abs(speed);
        }
    }

    private void engineTorque(double speed) {
        if (!engineFires) {
            engineTorque = -MOTORED_SHARE * peakTorque;
            d1 = 0;
            return;
        }
        double noLoad = throttle * fullSpeed;
        double governedSlope = -ratedTorque / (droop * noLoad);
        double governed = governedSlope * (speed - noLoad);
        double governedSpeed = noLoad * (1 - droop);
        double peak = Math.min(peakSpeed, governedSpeed - 0.01 * noLoad);
        if (speed >= governedSpeed) {
            engineTorque = governed;
            d1 = governedSlope;
        } else if (speed > peak) {
            double x = (speed - peak) / (governedSpeed - peak);
            engineTorque = peakTorque - (peakTorque - ratedTorque) * x * x;
            d1 = -2 * (peakTorque - ratedTorque) * x / (governedSpeed - peak);
        } else {
            engineTorque = peakTorque;
            d1 = 0;
        }
    }

    private void belt(double engine, double pump) {
        double free = beltRatio * Math.max(engine, 1e-3);
        double slip = 1 - pump / free;
        double over = Math.exp(-Math.abs(slip) / beltCreep);
        beltSlip = slip;
        beltTorque = (slip < 0 ? -1 : 1) * beltCapacity * (1 - over);
        double bySlip = beltCapacity * over / beltCreep;
        d1 = bySlip * pump / (free * Math.max(engine, 1e-3));
        d2 = -bySlip / free;
    }

    private void grip(double rim, double ground, double most) {
        double gap = rim - ground;
        double larger = Math.max(Math.abs(rim), Math.abs(ground));
        double reference = larger + CRAWL;
        double slip = gap / reference;
        double over = Math.exp(-gripStiffness * Math.abs(slip));
        wheelSlip = slip;
        groundForce = (gap < 0 ? -1 : 1) * most * (1 - over);
        double bySlip = most * gripStiffness * over / reference;
        boolean rimLeads = Math.abs(rim) >= Math.abs(ground);
        double onReference = slip * (rimLeads ? Math.signum(rim) : Math.signum(ground));
        d1 = bySlip * (1 - (rimLeads ? onReference : 0));
        d2 = -bySlip * (1 + (rimLeads ? 0 : onReference));
    }

    double breakaway(Place place) {
        return get(place, UnitProperty.BREAKAWAY_RATIO);
    }
}
