package swashlight.drive.gap;

/**
 * Flow through a sharp opening, smooth through zero.
 *
 * <pre>
 *   Q = C_d a √(2/ρ) Δp / (Δp² + Δp_t²)^¼
 *
 *   C_d   discharge coefficient      1       0.65 (0.61 for a sharp edge, von Mises)
 *   a     area                       m²
 *   ρ     density                    kg/m³
 *   Δp    pressure difference        Pa      any sign
 *   Δp_t  laminar–turbulent change   Pa      20e3
 * </pre>
 *
 * Far above Δp_t this is C_d a √(2Δp/ρ). Source: Merritt 1967 ch. 3 (from memory); the smoothing is common practice. Check:
 * {@code gap-orifice}.
 */
public final class Orifice {
    /** Discharge coefficient C_d of valves and passages, unit 1 (common practice). */
    public static final double DISCHARGE = 0.65;

    /** Laminar–turbulent transition Δp_t, Pa (common practice). */
    public static final double TRANSITION = 20e3;

    private Orifice() {}

    /**
     * Flow Q through an opening with the default discharge coefficient.
     *
     * @param area a, m²
     * @param pressureDifference Δp, Pa
     * @param density ρ, kg/m³
     * @return Q, m³/s
     */
    public static double flow(double area, double pressureDifference, double density) {
        return flow(DISCHARGE, area, pressureDifference, density);
    }

    /**
     * Flow Q through an opening.
     *
     * @param discharge C_d, unit 1
     * @param area a, m²
     * @param pressureDifference Δp, Pa
     * @param density ρ, kg/m³
     * @return Q, m³/s
     */
    public static double flow(double discharge, double area, double pressureDifference, double density) {
        double root = Math.sqrt(pressureDifference * pressureDifference + TRANSITION * TRANSITION);
        return discharge * area * Math.sqrt(2 / density) * pressureDifference / Math.sqrt(root);
    }

    /** Area of a round hole of diameter d (m); m². */
    public static double area(double diameter) {
        return Math.PI * diameter * diameter / 4;
    }
}
