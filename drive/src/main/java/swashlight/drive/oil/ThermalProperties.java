package swashlight.drive.oil;

/**
 * Specific heat and conductivity of petroleum oils from specific gravity and temperature.
 *
 * <pre>
 *   c = (1685 + 3.4 t)/√s          J/(kg·K)
 *   k = 0.117 (1 − 0.00054 t)/s    W/(m·K)
 *
 *   t   temperature                °C     0 … 200
 *   s   specific gravity, 60 °F    1      0.75 … 1
 * </pre>
 *
 * Good to about 4 % for c and 10 % for k. Source: Cragoe, NBS Misc. Publ. 97, 1929 (from memory). Check:
 * {@code oil-specific-heat}, {@code oil-conductivity}.
 *
 * @param specificGravity s, unit 1
 */
public record ThermalProperties(double specificGravity) {
    /** @throws IllegalArgumentException when s is not that of an oil */
    public ThermalProperties {
        if (!(specificGravity >= 0.7 && specificGravity <= 1.1)) {
            throw new IllegalArgumentException(
                    "specific gravity is " + specificGravity + "; oils lie between 0.7 and 1.1");
        }
    }

    /** Specific heat c at a temperature (K), J/(kg·K). */
    public double specificHeat(double temperature) {
        return (1685 + 3.4 * (temperature - Oil.CELSIUS_ZERO)) / Math.sqrt(specificGravity);
    }

    /** Conductivity k at a temperature (K), W/(m·K). */
    public double conductivity(double temperature) {
        return 0.117 * (1 - 0.00054 * (temperature - Oil.CELSIUS_ZERO)) / specificGravity;
    }
}
