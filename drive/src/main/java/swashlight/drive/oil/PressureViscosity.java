package swashlight.drive.oil;

/**
 * Barus coefficient of a mineral oil from its viscosity alone, when nothing better is known.
 *
 * <pre>
 *   α_B = (0.6 + 0.965 lg μ₀) · 10⁻⁸ /Pa       μ₀ in mPa·s
 *
 *   μ₀   dynamic viscosity at atmospheric pressure   Pa·s   1e-3 … 1
 * </pre>
 *
 * Source: Wooster's rule as given in tribology handbooks (from memory). Check: {@code oil-barus-coefficient}.
 */
public final class PressureViscosity {
    private static final double LN10 = 2.302585092994046; // ln 10, unit 1

    private PressureViscosity() {}

    /** α_B for a dynamic viscosity μ₀ (Pa·s), 1/Pa. */
    public static double coefficient(double dynamicViscosity) {
        if (!(dynamicViscosity >= 1e-3)) {
            throw new IllegalArgumentException(
                    "Wooster's rule needs at least 1 mPa·s; given " + dynamicViscosity + " Pa·s");
        }
        return (0.6 + 0.965 * Math.log(dynamicViscosity * 1e3) / LN10) * 1e-8;
    }
}
