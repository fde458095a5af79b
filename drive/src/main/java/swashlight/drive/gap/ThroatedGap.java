package swashlight.drive.gap;

/**
 * A laminar gap with a sharp mouth in series: what limits a lifted block or a fed shoe pocket.
 *
 * <pre>
 *   Δp = Q µ/G + (ρ/2) (Q/(C_d a))²     solved for Q, odd in Δp
 *
 *   G   laminar conductance   m³
 *   a   mouth area            m²
 *   Q   flow                  m³/s
 *   Δp  pressure difference   Pa
 * </pre>
 *
 * Source: series of {@link AnnularGap}-like and {@link Orifice} resistances, definition. Check: limits in the tests.
 */
public final class ThroatedGap {
    private ThroatedGap() {}

    /**
     * Flow through the gap and its mouth.
     *
     * @param conductancePerViscosity G/µ, m³/(s·Pa)
     * @param mouthArea a, m²
     * @param pressureDifference Δp, Pa
     * @param density ρ, kg/m³
     * @return Q, m³/s; 0 when either is shut
     */
    public static double flow(
            double conductancePerViscosity, double mouthArea, double pressureDifference, double density) {
        if (conductancePerViscosity <= 0 || mouthArea <= 0) {
            return 0;
        }
        double inertia = density / (2 * Orifice.DISCHARGE * Orifice.DISCHARGE * mouthArea * mouthArea); // Pa·s²/m⁶
        double resistance = 1 / conductancePerViscosity; // Pa·s/m³
        double drive = Math.abs(pressureDifference);
        double flow = 2 * drive / (resistance + Math.sqrt(resistance * resistance + 4 * inertia * drive));
        return pressureDifference < 0 ? -flow : flow;
    }

    /** dQ/dΔp at a known flow Q (m³/s); m³/(s·Pa). */
    public static double slope(double conductancePerViscosity, double mouthArea, double flow, double density) {
        if (conductancePerViscosity <= 0 || mouthArea <= 0) {
            return 0;
        }
        double inertia = density / (2 * Orifice.DISCHARGE * Orifice.DISCHARGE * mouthArea * mouthArea);
        return 1 / (1 / conductancePerViscosity + 2 * inertia * Math.abs(flow));
    }
}
