package swashlight.drive.steady;

import swashlight.drive.description.InputParameter;

/**
 * Governed engine and belt: from the load the belt carries to the speed the input shaft turns.
 *
 * <pre>
 *   governed       ω_e = τ ω_0 (1 − δ T_e/T_r)                        τ throttle, δ droop on the no-load speed
 *   lugging        T_e = T_max (1 − c (ω_e − ω_peak)²)                 through the end of the governed range
 *   below the peak a steep fall to rest: an engine pulled down there dies (told by the stall speed)
 *   belt           T = T_cap (1 − e^(−s/s_c)),  s slip                 s_c creep scale
 *   shaft          ω_p = k ω_e (1 − s)
 * </pre>
 *
 * The unknown is the belt's load y = T_cap s/s_c (N·m): equal to the torque while the belt holds, growing past its capacity when it
 * slips. Source: droop definition on no-load speed (of the two in use); belt curve: own one-parameter form of creep and gross slip
 * (common practice). Check: {@code belt-slip}, {@code governor-droop}. Mutable workspace: torque N·m, speed rad/s.
 */
final class EngineLaw {
    private static final double COLLAPSE = 0.05; // share of peak torque over which the extended curve falls to rest, 1

    private double noLoad; // rad/s
    private double governedSlope; // rad/s per N·m, at the engine
    private double governedTorque; // end of the governed range, N·m
    private double governedSpeed; // rad/s
    private double peakTorque; // N·m
    private double peakSpeed; // rad/s
    private double otherTorque; // N·m
    private double ratio; // 1
    private double capacity; // N·m
    private double creep; // 1
    double stallSpeed; // rad/s

    double torque; // at the input shaft, N·m
    double torqueSlope; // dT/dy, 1
    double engineSpeed; // rad/s
    double slip; // 1
    double shaftSpeed; // rad/s
    double shaftSlope; // dω_p/dy, rad/s per N·m

    void load(double[] vector, double throttle) {
        double fullSpeed = vector[InputParameter.ENGINE_NO_LOAD_SPEED.index()];
        double strength = vector[InputParameter.ENGINE_STRENGTH.index()];
        double droop = vector[InputParameter.ENGINE_DROOP.index()];
        noLoad = throttle * fullSpeed;
        governedTorque = strength * vector[InputParameter.ENGINE_RATED_TORQUE.index()];
        peakTorque = Math.max(governedTorque * 1.001, strength * vector[InputParameter.ENGINE_PEAK_TORQUE.index()]);
        governedSpeed = noLoad * (1 - droop);
        peakSpeed = Math.min(
                vector[InputParameter.ENGINE_PEAK_SPEED_SHARE.index()] * fullSpeed, governedSpeed - 0.01 * noLoad);
        governedSlope = noLoad * droop / governedTorque;
        stallSpeed = vector[InputParameter.ENGINE_STALL_SPEED_SHARE.index()] * fullSpeed;
        stallSpeed = Math.min(stallSpeed, 0.9 * peakSpeed);
        otherTorque = vector[InputParameter.ENGINE_OTHER_TORQUE.index()];
        ratio = vector[InputParameter.BELT_SPEED_RATIO.index()];
        capacity = Math.max(vector[InputParameter.BELT_CAPACITY.index()], 1e-3);
        creep = Math.max(vector[InputParameter.BELT_CREEP.index()], 1e-6);
    }

    /** Sets torque, speeds and their slopes for a belt load y, N·m. */
    void at(double y) {
        double over = Math.exp(-Math.abs(y) / capacity);
        torque = (y < 0 ? -1 : 1) * capacity * (1 - over);
        torqueSlope = over;
        slip = creep * y / capacity;
        double load = torque * ratio + otherTorque;
        double speedSlope = speed(load) * ratio * torqueSlope;
        shaftSpeed = ratio * engineSpeed * (1 - slip);
        shaftSlope = ratio * (speedSlope * (1 - slip) - engineSpeed * creep / capacity);
    }

    /** Load y that would carry a shaft torque, N·m, held to a value the belt can carry. */
    double loadFor(double shaftTorque) {
        double share = Math.min(0.95, Math.abs(shaftTorque) / capacity);
        return (shaftTorque < 0 ? 1 : -1) * capacity * Math.log(1 - share);
    }

    /** Load at which the belt slips by its whole speed, N·m. */
    double mostLoad() {
        return capacity / creep;
    }

    double speedRatio() {
        return ratio;
    }

    double noLoadShaftSpeed() {
        return ratio * noLoad;
    }

    double otherTorque() {
        return otherTorque;
    }

    /** Sets the engine speed for a load torque (N·m) and returns its slope, rad/s per N·m. */
    private double speed(double load) {
        if (load <= governedTorque) {
            engineSpeed = noLoad - governedSlope * load;
            return -governedSlope;
        }
        double span = governedSpeed - peakSpeed;
        if (load < peakTorque) {
            double root = Math.sqrt((peakTorque - load) / (peakTorque - governedTorque));
            engineSpeed = peakSpeed + span * root;
            double soft = Math.max(root, 1e-3); // keeps the slope finite at the peak
            return -span / (2 * (peakTorque - governedTorque) * soft);
        }
        double fall = peakSpeed / (COLLAPSE * peakTorque);
        engineSpeed = Math.max(0, peakSpeed - fall * (load - peakTorque));
        return engineSpeed > 0 ? -fall : 0;
    }
}
