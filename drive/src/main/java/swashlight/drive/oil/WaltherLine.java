package swashlight.drive.oil;

/**
 * Kinematic viscosity against temperature: the straight line of the ASTM D341 chart through two points.
 *
 * <pre>
 *   lg lg(ν + 0.7) = A − B lg T
 *
 *   ν   kinematic viscosity        m²/s (mm²/s inside the law)   2e-7 … 0.1
 *   T   temperature                K                             230 … 430
 * </pre>
 *
 * Holds for mineral and most synthetic oils above the cloud point; ν below 2 mm²/s needs the standard's correction terms,
 * which are not used. Source: ASTM D341 (form seen in print, with 273.15). Check: {@code oil-walther}.
 *
 * @param intercept A, unit 1
 * @param slope B, unit 1
 */
public record WaltherLine(double intercept, double slope) {
    private static final double LN10 = 2.302585092994046; // ln 10, unit 1
    private static final double SHIFT = 0.7; // mm²/s, ASTM D341
    private static final double M2_PER_MM2 = 1e-6; // m²/s per mm²/s

    /** @throws IllegalArgumentException when the line is not a falling one */
    public WaltherLine {
        if (!(slope > 0) || !(Math.abs(intercept) < 1e3)) {
            throw new IllegalArgumentException("viscosity must fall with temperature: slope " + slope);
        }
    }

    /**
     * The line through two measured points.
     *
     * @param coolTemperature T₁ of the first point, K
     * @param coolViscosity ν₁ at T₁, m²/s
     * @param warmTemperature T₂ above T₁, K
     * @param warmViscosity ν₂ below ν₁, m²/s
     */
    public static WaltherLine through(
            double coolTemperature, double coolViscosity, double warmTemperature, double warmViscosity) {
        double cool = logLog(coolViscosity);
        double warm = logLog(warmViscosity);
        double slope = (cool - warm) / (lg(warmTemperature) - lg(coolTemperature));
        return new WaltherLine(cool + slope * lg(coolTemperature), slope);
    }

    /**
     * Kinematic viscosity ν at a temperature.
     *
     * @param temperature T, K
     * @return ν, m²/s
     */
    public double kinematicViscosity(double temperature) {
        double lgShifted = Math.exp(LN10 * (intercept - slope * lg(temperature)));
        return (Math.exp(LN10 * lgShifted) - SHIFT) * M2_PER_MM2;
    }

    private static double logLog(double viscosity) {
        return lg(lg(viscosity / M2_PER_MM2 + SHIFT));
    }

    private static double lg(double x) {
        return Math.log(x) / LN10;
    }
}
