package swashlight.drive.steady;

import swashlight.drive.description.OutputParameter;

/**
 * What gears, brake, wheels and ground ask of the motor shaft.
 *
 * <pre>
 *   F        = m g sin θ + dir (f m g cos θ + pull + scrub)     held to ± μ λ m g cos θ, the traction limit
 *   T_axle   = F r + dir (drag + brake)
 *   T_motor  = T_axle/(i η) when the drive pushes, T_axle η/i when it is pushed
 *   slip     s = −ln(1 − F/F_max)/k
 * </pre>
 *
 * dir is the direction of motion (±1): what resists turns with it, so it is chosen before solving and checked after. Source:
 * statics; slip law of the form of Brixius 1987 for firm ground (own constant). Check: {@code grade-force}, {@code worked-climb}.
 * Mutable workspace: force N, torque N·m, length m.
 */
final class LoadLaw {
    /** Standard gravity g, m/s² (ISO 80000-3). */
    static final double GRAVITY = 9.80665;

    double ratio; // motor over axle speed, 1
    double efficiency; // 1
    double radius; // m
    boolean connected;
    double gradeForce; // N, along the ground, positive backwards
    double rollingForce; // N, resists motion
    double pullForce; // N, resists motion
    double tractionLimit; // N
    double stiffness; // 1
    double dragTorque; // at the axle, N·m
    double brakeTorque; // at the axle, N·m
    double pushedGrade; // N, kept while the wheels skid
    double pushedRolling; // N
    double groundForce; // at the tyres, N
    double axleTorque; // N·m
    double motorTorque; // N·m
    boolean spinning;

    void load(double[] vector) {
        ratio = vector[OutputParameter.GEARS_RATIO.index()];
        efficiency = vector[OutputParameter.GEARS_MESH_EFFICIENCY.index()]
                * (1 - vector[OutputParameter.GEARS_TOOTH_LOSS.index()]);
        radius = vector[OutputParameter.WHEELS_ROLLING_RADIUS.index()];
        connected = vector[OutputParameter.GEARS_CONNECTED.index()] > 0.5;
        stiffness = vector[OutputParameter.WHEELS_TRACTION_STIFFNESS.index()];
    }

    void lifted(double[] vector, double brake) {
        gradeForce = 0;
        rollingForce = 0;
        pullForce = 0;
        tractionLimit = 0;
        torques(vector, brake);
    }

    void ground(double[] vector, double brake, double slope, double pull) {
        double weight = vector[OutputParameter.MACHINE_MASS.index()] * GRAVITY;
        double normal = weight * Math.cos(slope);
        gradeForce = weight * Math.sin(slope);
        rollingForce = vector[OutputParameter.WHEELS_ROLLING_RESISTANCE.index()] * normal;
        tractionLimit = vector[OutputParameter.WHEELS_TRACTION.index()]
                * vector[OutputParameter.WHEELS_LOAD_SHARE.index()]
                * normal;
        double mismatch = Math.abs(vector[OutputParameter.WHEELS_RADIUS_MISMATCH.index()])
                * vector[OutputParameter.GEARS_DIFFERENTIAL_LOCKED.index()];
        double scrub = tractionLimit / 2 * (1 - Math.exp(-stiffness * mismatch / 2)) * mismatch;
        pullForce = pull + scrub;
        torques(vector, brake);
    }

    /** Sets forces and torques for a direction of motion, +1 or −1. */
    void moving(int direction) {
        double wanted = connected ? gradeForce + direction * (rollingForce + pullForce) : 0;
        spinning = Math.abs(wanted) > tractionLimit * (1 + 1e-12);
        groundForce = Math.max(-tractionLimit, Math.min(tractionLimit, wanted));
        axleTorque = groundForce * radius + direction * (dragTorque + (connected ? brakeTorque : 0));
        motorTorque = axleTorque * direction > 0 ? axleTorque / (ratio * efficiency) : axleTorque * efficiency / ratio;
    }

    /** Wheels sliding over the ground at a speed (m/s) that something else imposes: the ground drags them with all its grip. */
    void skid(double speed) {
        pushedGrade = gradeForce;
        pushedRolling = rollingForce;
        gradeForce = speed > 0 ? -tractionLimit : tractionLimit;
        rollingForce = 0;
        pullForce = 0;
    }

    /** Force of the tyres on the ground while everything stands, N. */
    double standingForce() {
        return connected ? Math.max(-tractionLimit, Math.min(tractionLimit, gradeForce)) : 0;
    }

    /** Wheel slip for a ground force, share of wheel speed, 1; below 1. */
    double slip(double force) {
        if (tractionLimit <= 0) {
            return 0;
        }
        double share = Math.min(Math.abs(force) / tractionLimit, 1 - 1e-9);
        return Math.min(0.999, -Math.log(1 - share) / stiffness);
    }

    private void torques(double[] vector, double brake) {
        dragTorque = vector[OutputParameter.GEARS_DRAG_TORQUE.index()];
        brakeTorque = vector[OutputParameter.BRAKE_DRAG_TORQUE.index()]
                + brake * vector[OutputParameter.BRAKE_CAPACITY.index()];
    }
}
