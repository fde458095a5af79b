package swashlight.drive.oil;

/**
 * Hot limits of an engine-oil grade: a band at 100 °C and a least viscosity under high shear at 150 °C.
 *
 * <p>Source: SAE J300, January 2015, table 1. Check: {@code j300-kv100-min}, {@code j300-kv100-below}, {@code j300-hths}.
 */
public enum SummerGrade {
    S8("8", 4.0e-6, 6.1e-6, 1.7e-3),
    S12("12", 5.0e-6, 7.1e-6, 2.0e-3),
    S16("16", 6.1e-6, 8.2e-6, 2.3e-3),
    S20("20", 6.9e-6, 9.3e-6, 2.6e-3),
    S30("30", 9.3e-6, 12.5e-6, 2.9e-3),
    S40("40", 12.5e-6, 16.3e-6, 3.7e-3),
    S50("50", 16.3e-6, 21.9e-6, 3.7e-3),
    S60("60", 21.9e-6, 26.1e-6, 3.7e-3);

    private final String label;
    private final double leastViscosity100;
    private final double boundViscosity100;
    private final double highShearViscosity;

    SummerGrade(String label, double leastViscosity100, double boundViscosity100, double highShearViscosity) {
        this.label = label;
        this.leastViscosity100 = leastViscosity100;
        this.boundViscosity100 = boundViscosity100;
        this.highShearViscosity = highShearViscosity;
    }

    /** As written on the can: 30. */
    public String label() {
        return label;
    }

    /** Least kinematic viscosity at 100 °C, m²/s. */
    public double leastViscosity100() {
        return leastViscosity100;
    }

    /** Kinematic viscosity at 100 °C that it stays below, m²/s. */
    public double boundViscosity100() {
        return boundViscosity100;
    }

    /** Least viscosity at 150 °C under high shear when there is no W grade before it, Pa·s. */
    public double highShearViscosity() {
        return highShearViscosity;
    }
}
