package swashlight.drive.oil;

/**
 * Cold limits of an engine-oil W grade: it still cranks and still pumps.
 *
 * <p>Source: SAE J300, January 2015, table 1. Check: {@code j300-cranking}, {@code j300-pumping}, {@code j300-kv100-min}.
 */
public enum WinterGrade {
    W0("0W", 6.2, -35, 3.8e-6),
    W5("5W", 6.6, -30, 3.8e-6),
    W10("10W", 7.0, -25, 4.1e-6),
    W15("15W", 7.0, -20, 5.6e-6),
    W20("20W", 9.5, -15, 5.6e-6),
    W25("25W", 13.0, -10, 9.3e-6);

    private static final double PUMPING = 60; // Pa·s, all grades
    private static final double PUMPING_STEP = 5; // K below the cranking temperature

    private final String label;
    private final double crankingViscosity;
    private final double crankingCelsius;
    private final double leastViscosity100;

    WinterGrade(String label, double crankingViscosity, double crankingCelsius, double leastViscosity100) {
        this.label = label;
        this.crankingViscosity = crankingViscosity;
        this.crankingCelsius = crankingCelsius;
        this.leastViscosity100 = leastViscosity100;
    }

    /** As written on the can: 10W. */
    public String label() {
        return label;
    }

    /** Greatest viscosity when cranking, Pa·s. */
    public double crankingViscosity() {
        return crankingViscosity;
    }

    /** Temperature of the cranking limit, K. */
    public double crankingTemperature() {
        return Oil.CELSIUS_ZERO + crankingCelsius;
    }

    /** Greatest viscosity at which it still pumps, Pa·s. */
    public double pumpingViscosity() {
        return PUMPING;
    }

    /** Temperature of the pumping limit, K. */
    public double pumpingTemperature() {
        return crankingTemperature() - PUMPING_STEP;
    }

    /** Least kinematic viscosity at 100 °C, m²/s. */
    public double leastViscosity100() {
        return leastViscosity100;
    }
}
