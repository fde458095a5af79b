package swashlight.findings.rig;

import swashlight.drive.oil.Oil;

/**
 * What a healthy pump delivers at a step of the duty, in the parts that are fitted and the parts that are given.
 * <pre>
 *   q = a_s − b (p − p_s) − κ a_s (W − W_s)/W_r − (g + g_s) (p/p_r) ((µ_r/µ(T'))^n − 1)
 *   T' = T − τ dT/dt
 *
 *   a_s       delivered at the step's usual pressure and power, reference oil     m³/s   fitted
 *   g, g_s    leak through the pump's own gaps at p_r and T_r; step's departure   m³/s   fitted
 *   b         fall with pressure: compression and own leak                        m³/(s·Pa)
 *   κ         slip of the motor at power W_r                                      1
 *   n         thinning exponent (1 laminar)                                       1
 *   τ         lag of the gaps behind the oil                                      s
 *   p_s, W_s  the step's usual pressure and power (means of the healthy rows)     Pa, W
 * </pre>
 * Displacement and speed are inside a_s. Holds for one duty, oil between freezing and 420 K.
 * Source: Merritt, Hydraulic Control Systems, 1967, ch. 4 (laminar leak); ASTM D341 through {@link Oil}.
 */
final class HealthyLaw {
    /** p_r, Pa: middle of the duty's steps. */
    static final double REFERENCE_PRESSURE = 156e5;

    /** T_r, K. */
    static final double REFERENCE_TEMPERATURE = Oil.CELSIUS_ZERO + 36;

    /** W_r, W. */
    static final double REFERENCE_POWER = 2500;

    private final Oil oil;
    private final double pressureSlope;
    private final double slip;
    private final double exponent;
    private final double lag;
    private final double referenceViscosity;

    HealthyLaw(Oil oil, double pressureSlope, double slip, double exponent, double lag) {
        this.oil = oil;
        this.pressureSlope = pressureSlope;
        this.slip = slip;
        this.exponent = exponent;
        this.lag = lag;
        referenceViscosity = viscosity(REFERENCE_TEMPERATURE);
    }

    /** µ_r/µ(T'), 1: how much thinner the oil in the gaps is than at the reference. */
    double thinning(double temperature, double warming) {
        return referenceViscosity / viscosity(temperature - lag * warming);
    }

    /** −(p/p_r)((µ_r/µ)^n − 1), 1: what multiplies g in the law. */
    double leakShare(Plateau plateau, double warming) {
        double thinner = Math.pow(thinning(plateau.temperature(), warming), exponent);
        return -(plateau.pressure() / REFERENCE_PRESSURE) * (thinner - 1);
    }

    /** The given part: pressure and power away from the step's usual ones, m³/s. */
    double given(Plateau plateau, StepUsual usual) {
        return -pressureSlope * (plateau.pressure() - usual.pressure())
                - slip * usual.flow() * (plateau.power() - usual.power()) / REFERENCE_POWER;
    }

    private double viscosity(double temperature) {
        return oil.kinematicViscosity(temperature) * oil.density(temperature);
    }
}
