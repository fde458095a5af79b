package swashlight.drive.unit;

/**
 * Volumetric and hydromechanical efficiency of a pump or motor; overall is their product.
 *
 * <pre>
 *   pump    η_v = Q/(V ω/2π)     η_hm = (V Δp/2π)/T
 *   motor   η_v = (V ω/2π)/Q     η_hm = T/(V Δp/2π)
 *   both    η = η_v η_hm
 *
 *   Q   real flow      m³/s
 *   T   real torque    N·m
 *   V, ω, Δp  as in {@link IdealUnit}
 * </pre>
 *
 * Compression of the oil is left out: at high pressure the standard's definitions no longer add up without a stated rule. Source: ISO
 * 4391 (from memory). Check: {@code pump-volumetric}, {@code motor-volumetric}, {@code pump-overall}, {@code motor-overall},
 * {@code efficiency-product}, {@code transmission-overall}.
 *
 * @param volumetric η_v, unit 1
 * @param hydromechanical η_hm, unit 1
 */
public record Efficiency(double volumetric, double hydromechanical) {
    /** No loss at all; unit 1. */
    public static final Efficiency PERFECT = new Efficiency(1, 1);

    /** Of a pump that delivers a real flow (m³/s) and takes a real torque (N·m). */
    public static Efficiency ofPump(IdealUnit ideal, double flow, double torque) {
        return new Efficiency(flow / ideal.flow(), ideal.torque() / torque);
    }

    /** Of a motor that takes a real flow (m³/s) and gives a real torque (N·m). */
    public static Efficiency ofMotor(IdealUnit ideal, double flow, double torque) {
        return new Efficiency(ideal.flow() / flow, torque / ideal.torque());
    }

    /** η = η_v η_hm, unit 1. */
    public double overall() {
        return volumetric * hydromechanical;
    }

    /** This unit and the next one in line, part by part. */
    public Efficiency then(Efficiency next) {
        return new Efficiency(volumetric * next.volumetric, hydromechanical * next.hydromechanical);
    }

    /** Flow a pump of this efficiency delivers, m³/s. */
    public double pumpFlow(IdealUnit ideal) {
        return ideal.flow() * volumetric;
    }

    /** Torque a pump of this efficiency takes, N·m. */
    public double pumpTorque(IdealUnit ideal) {
        return ideal.torque() / hydromechanical;
    }

    /** Flow a motor of this efficiency takes, m³/s. */
    public double motorFlow(IdealUnit ideal) {
        return ideal.flow() / volumetric;
    }

    /** Torque a motor of this efficiency gives, N·m. */
    public double motorTorque(IdealUnit ideal) {
        return ideal.torque() * hydromechanical;
    }
}
