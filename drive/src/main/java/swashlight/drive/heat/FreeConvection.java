package swashlight.drive.heat;

/**
 * Heat given off to still air by an upright wall, and the short forms for air.
 *
 * <pre>
 *   Ra = g β ΔT L³/(ν a)
 *   Nu = (0.825 + 0.387 Ra^(1/6)/(1 + (0.492/Pr)^(9/16))^(8/27))²,   h = Nu k/L
 *   in air, laminar:  h = C (ΔT/L)^¼,  C 1.42 upright wall, 1.32 lying cylinder
 *
 *   L    height (diameter of a cylinder)   m
 *   ΔT   wall less air                     K     &gt; 0
 *   ν, a, k, Pr, β   of the air at the mean temperature: {@link FilmAir}
 * </pre>
 *
 * Holds for Ra below about 1e12. Source: Churchill and Chu 1975, as in Incropera and DeWitt (from memory); short forms seen on an
 * engineering page, in metres. Check: {@code vertical-plate-film}, {@code vertical-plate-nusselt}, {@code air-film}.
 */
public final class FreeConvection {
    /** C of an upright wall in air, W/(m²·K) · (m/K)^¼. */
    public static final double UPRIGHT = 1.42;

    /** C of a lying cylinder in air, W/(m²·K) · (m/K)^¼. */
    public static final double LYING_CYLINDER = 1.32;

    private static final double GRAVITY = 9.80665; // m/s², standard

    private FreeConvection() {}

    /** Ra for a height L (m) and a difference ΔT (K), unit 1. */
    public static double rayleigh(FilmAir air, double height, double difference) {
        return GRAVITY
                * air.expansion()
                * difference
                * height
                * height
                * height
                / (air.viscosity() * air.diffusivity());
    }

    /** Nu for a Rayleigh number (unit 1), unit 1. */
    public static double nusselt(FilmAir air, double rayleigh) {
        double prandtl = Math.pow(1 + Math.pow(0.492 / air.prandtl(), 9.0 / 16), 8.0 / 27);
        double root = 0.825 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / prandtl;
        return root * root;
    }

    /** h of an upright wall of height L (m) at a difference ΔT (K), W/(m²·K). */
    public static double film(FilmAir air, double height, double difference) {
        return nusselt(air, rayleigh(air, height, difference)) * air.conductivity() / height;
    }

    /** h in air by the short form, W/(m²·K); C as above, length in m, ΔT in K. */
    public static double inAir(double coefficient, double length, double difference) {
        return coefficient * Math.sqrt(Math.sqrt(difference / length));
    }
}
