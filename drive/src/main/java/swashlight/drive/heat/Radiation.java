package swashlight.drive.heat;

/**
 * Radiation of a warm case as if it were a film coefficient.
 *
 * <pre>
 *   h = ε σ (T_s⁴ − T_a⁴)/(T_s − T_a) = ε σ (T_s + T_a)(T_s² + T_a²)
 *
 *   ε        emissivity                   1     0 … 1
 *   T_s, T_a surface and surroundings     K
 * </pre>
 *
 * About as large as free convection on a painted case. Source: Stefan–Boltzmann law. Check: {@code radiation-film}.
 */
public final class Radiation {
    /** Stefan–Boltzmann constant σ, W/(m²·K⁴) (CODATA 2018, exact by the 2019 SI). */
    public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    private Radiation() {}

    /** h for an emissivity (unit 1) and two temperatures (K), W/(m²·K). */
    public static double film(double emissivity, double surface, double surroundings) {
        return emissivity
                * STEFAN_BOLTZMANN
                * (surface + surroundings)
                * (surface * surface + surroundings * surroundings);
    }
}
