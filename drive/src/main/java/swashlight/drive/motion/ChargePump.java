package swashlight.drive.motion;

import swashlight.drive.description.MakeUpParameter;

/**
 * Charge pump with its relief valve, as in the steady view.
 *
 * <pre>
 *   q = q_c (1 + (q_c/q_f)⁸)^(−1/8)     q_c = V_c n ≥ 0; the filter lets through q_f at most; turned backwards it delivers nothing
 *   T = V_c/2π (q/q_c) (p_g − p_case)
 *
 *   n   turns a second of the shaft   1/s
 * </pre>
 *
 * Source: definitions; the joint with the filter is a smooth lesser-of-two (own form). SI; flat workspace of {@link MotionKernel}.
 */
final class ChargePump {
    private static final double ONE_WAY =
            2e4; // Pa: scale of the soft start of the non-return valve beside it, as in the steady view

    private final double displacement; // m³/rev
    private final double setting; // Pa
    private final double gain; // m³/(s·Pa)
    private double share; // of its stroke that is filled, 1
    private boolean forward;

    ChargePump(double[] vector) {
        displacement = vector[MakeUpParameter.CHARGE_DISPLACEMENT.index()];
        setting = vector[MakeUpParameter.CHARGE_RELIEF.index()];
        gain = vector[MakeUpParameter.CHARGE_RELIEF_SLOPE.index()];
    }

    boolean there() {
        return displacement > 0;
    }

    /** Flow into the gallery at turns a second (1/s) behind a filter that lets through so much at most (m³/s), m³/s. */
    double flow(double turns, double filterGiven) {
        double wanted = displacement * Math.max(0, turns);
        double ratio = wanted / filterGiven;
        double square = ratio * ratio;
        share = 1 / Math.sqrt(Math.sqrt(Math.sqrt(1 + square * square * square * square)));
        forward = turns > 0;
        return wanted * share;
    }

    /** Torque on the shaft at a gallery pressure above the case (Pa), N·m. */
    double torque(double gauge) {
        return forward ? displacement / (2 * Math.PI) * share * gauge : 0;
    }

    /** Flow of the relief valve at a gallery pressure above the case (Pa), m³/s. */
    double relieved(double gauge) {
        return gain * SideSystem.ramp(gauge - setting, setting);
    }

    /** Its slope, m³/(s·Pa). */
    double relievedSlope(double gauge) {
        return gain * SideSystem.rampSlope(gauge - setting, setting);
    }

    /** Share of a pressure drop (Pa) from case to gallery that counts at the filter beside it, Pa: oil never goes back. */
    double forwardDrop(double drop) {
        return there() ? SideSystem.ramp(drop, ONE_WAY) : drop;
    }

    /** Its slope, 1. */
    double forwardDropSlope(double drop) {
        return there() ? SideSystem.rampSlope(drop, ONE_WAY) : 1;
    }
}
