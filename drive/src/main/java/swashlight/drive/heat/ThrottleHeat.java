package swashlight.drive.heat;

/**
 * What becomes of pressure that does no work: heat.
 *
 * <pre>
 *   P = Q Δp          ΔT = Δp/(ρ c)
 *
 *   Q   flow through the leak or valve   m³/s
 *   Δp  pressure lost                    Pa
 *   ρ   density                          kg/m³
 *   c   specific heat                    J/(kg·K)
 * </pre>
 *
 * Holds while no heat leaves on the way. Source: first law; Esposito, Fluid Power with Applications, Ex. 11-3 and 11-5 (seen). Check:
 * {@code throttle-rise}, {@code throttle-outlet}, {@code system-heat-relief}, {@code system-heat-line}.
 */
public final class ThrottleHeat {
    private ThrottleHeat() {}

    /** P for a flow (m³/s) and a pressure (Pa), W. */
    public static double power(double flow, double pressureDifference) {
        return flow * pressureDifference;
    }

    /** ΔT for a pressure (Pa), a density (kg/m³) and a specific heat (J/(kg·K)), K. */
    public static double rise(double pressureDifference, double density, double specificHeat) {
        return pressureDifference / (density * specificHeat);
    }
}
