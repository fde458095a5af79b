package swashlight.drive.oil;

/**
 * An oil as its data sheet and its state describe it; {@link #at(double)} gives the laws at one temperature.
 *
 * <pre>
 *   viscosity40          ν at 40 °C                       m²/s    2e-6 … 1e-3
 *   viscosity100         ν at 100 °C                      m²/s    1e-6 … 1e-4
 *   viscosityFactor      present ν ÷ fresh ν              1       0.1 … 3
 *   density15            ρ at 15 °C                       kg/m³   700 … 1200
 *   thermalExpansion     β of volume                      1/K     4e-4 … 1e-3
 *   pressureViscosity    Barus α_B                        1/Pa    0 … 4e-8
 *   bulkModulus40        K₀ of the liquid, 40 °C, p₀      Pa      5e8 … 3e9
 *   bulkModulusSlope     m = dK/dp                        1       2 … 15
 *   bulkModulusFade      −d ln K₀/dT                      1/K     0 … 1e-2
 *   freeAir              volume share x₀ of free air, p₀  1       0 … 0.3
 *   airExponent          polytropic exponent κ            1       1 … 1.4
 *   water                volume share of water            1       0 … 0.1
 * </pre>
 *
 * Source of the ranges: ISO 3448, SAE J300, handbooks (common practice).
 */
public record Oil(
        double viscosity40,
        double viscosity100,
        double viscosityFactor,
        double density15,
        double thermalExpansion,
        double pressureViscosity,
        double bulkModulus40,
        double bulkModulusSlope,
        double bulkModulusFade,
        double freeAir,
        double airExponent,
        double water) {
    /** 0 °C in K (SI definition of the Celsius scale). */
    public static final double CELSIUS_ZERO = 273.15;

    /** Standard atmosphere p₀, Pa (ISO 2533). */
    public static final double ATMOSPHERE = 101_325.0;

    /** 40 °C, K: the cooler reference temperature of viscosity grades (ISO 3448). */
    public static final double COOL_REFERENCE = CELSIUS_ZERO + 40;

    /** 100 °C, K: the warmer reference temperature (SAE J300). */
    public static final double WARM_REFERENCE = CELSIUS_ZERO + 100;

    /** @throws IllegalArgumentException naming the first property outside its range */
    public Oil {
        demand("viscosity40", viscosity40, 2e-6, 1e-3);
        demand("viscosity100", viscosity100, 1e-6, 1e-4);
        demand("viscosityFactor", viscosityFactor, 0.1, 3);
        demand("density15", density15, 700, 1200);
        demand("thermalExpansion", thermalExpansion, 4e-4, 1e-3);
        demand("pressureViscosity", pressureViscosity, 0, 4e-8);
        demand("bulkModulus40", bulkModulus40, 5e8, 3e9);
        demand("bulkModulusSlope", bulkModulusSlope, 2, 15);
        demand("bulkModulusFade", bulkModulusFade, 0, 1e-2);
        demand("freeAir", freeAir, 0, 0.3);
        demand("airExponent", airExponent, 1, 1.4);
        demand("water", water, 0, 0.1);
        if (viscosity100 >= viscosity40) {
            throw new IllegalArgumentException(
                    "viscosity100 (" + viscosity100 + " m²/s) must be below viscosity40 (" + viscosity40 + " m²/s)");
        }
    }

    /**
     * Fresh oil with ordinary mineral-oil properties besides its two viscosities.
     *
     * @param viscosity40 ν at 40 °C, m²/s
     * @param viscosity100 ν at 100 °C, m²/s
     */
    public static Oil mineral(double viscosity40, double viscosity100) {
        return new Oil(viscosity40, viscosity100, 1, 870, 7e-4, 1.7e-8, 1.5e9, 9, 3.5e-3, 0.005, 1.4, 0);
    }

    /**
     * Kinematic viscosity ν of the oil in its present state (ASTM D341 line times the state's factor).
     *
     * @param temperature T, K
     * @return ν, m²/s
     */
    public double kinematicViscosity(double temperature) {
        return viscosityFactor
                * WaltherLine.through(COOL_REFERENCE, viscosity40, WARM_REFERENCE, viscosity100)
                        .kinematicViscosity(temperature);
    }

    /**
     * Density at atmospheric pressure without its free air: ρ = ρ₁₅ / (1 + β (T − 288.15 K)).
     *
     * @param temperature T, K
     * @return ρ, kg/m³. Source: linear expansion, check {@code oil-density-linear}
     */
    public double density(double temperature) {
        return density15 / (1 + thermalExpansion * (temperature - CELSIUS_ZERO - 15));
    }

    /**
     * This oil at one temperature.
     *
     * @param temperature T, K, 230 … 430
     */
    public OilAt at(double temperature) {
        return new OilAt(this, temperature);
    }

    private static void demand(String name, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    "oil " + name + " is " + value + "; it must lie between " + low + " and " + high + " (SI units)");
        }
    }
}
