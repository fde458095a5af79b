package swashlight.drive.oil;

/**
 * Density of a lubricating oil against temperature, as the petroleum tables reckon it.
 *
 * <pre>
 *   ρ = ρ60 exp(−α ΔT (1 + 0.8 α ΔT)),   α = K₁/ρ60
 *
 *   ρ60  density at 60 °F (288.706 K)    kg/m³   800 … 1164
 *   K₁   0.6278 for lubricating oils     kg/(m³·K)
 *   ΔT   temperature less 60 °F          K       −78 … 92
 * </pre>
 *
 * A finer form than {@link Oil#density}: at 60 °C the linear form with 7e-4 /K lies 0.2 % above. Source: API MPMS ch. 11.1 / ASTM
 * D1250 (constants seen: 0.34878 per °F). Check: {@code oil-density-api}, {@code oil-density-api-alpha}.
 *
 * @param density60 ρ60, kg/m³
 */
public record ApiDensity(double density60) {
    private static final double LUBRICANT = 0.34878 * 1.8; // K₁, kg/(m³·K): printed per °F
    private static final double REFERENCE = (60 + 459.67) / 1.8; // 60 °F, K

    /** @throws IllegalArgumentException when the density is not that of a lubricating oil */
    public ApiDensity {
        if (!(density60 >= 800 && density60 <= 1164)) {
            throw new IllegalArgumentException(
                    "density at 60 °F is " + density60 + " kg/m³; lubricating oils lie between 800 and 1164 kg/m³");
        }
    }

    /** Thermal expansion α at 60 °F, 1/K. */
    public double expansion() {
        return LUBRICANT / density60;
    }

    /** Density at a temperature (K), kg/m³. */
    public double at(double temperature) {
        double share = expansion() * (temperature - REFERENCE); // α ΔT, unit 1
        return density60 * Math.exp(-share * (1 + 0.8 * share));
    }
}
