package swashlight.drive.unit;

/**
 * Wilson's three-number loss model: efficiency is a function of σ = µω/Δp alone.
 *
 * <pre>
 *   η_v = 1 − C_s/σ        η_hm = 1/(1 + C_f + C_d σ)
 *   best at  σ* = C_s (1 + √(1 + (1 + C_f)/(C_s C_d)))
 *
 *   σ    µ ω/Δp             1     1e-8 … 1e-5
 *   C_s, C_f, C_d  slip, Coulomb, viscous drag    1
 * </pre>
 *
 * Source: Wilson 1950, as tabled in handbooks (from memory); best point by own derivation. Check: {@code wilson-volumetric},
 * {@code wilson-hydromechanical}, {@code wilson-best-sigma}, {@code wilson-best-overall}.
 *
 * @param slip C_s, unit 1
 * @param coulomb C_f, unit 1
 * @param viscous C_d, unit 1
 */
public record WilsonModel(double slip, double coulomb, double viscous) {
    /** @throws IllegalArgumentException when a coefficient is not positive */
    public WilsonModel {
        if (!(slip > 0) || !(coulomb >= 0) || !(viscous > 0)) {
            throw new IllegalArgumentException(
                    "Wilson's model needs C_s > 0, C_f ≥ 0, C_d > 0: " + slip + ", " + coulomb + ", " + viscous);
        }
    }

    /** σ at a viscosity µ (Pa·s) and a running point with Δp &gt; 0, unit 1. */
    public static double sigma(double dynamicViscosity, RunningPoint point) {
        return dynamicViscosity * point.speed() / point.pressureDifference();
    }

    /** Efficiency as a pump at σ (unit 1). */
    public Efficiency at(double sigma) {
        return new Efficiency(1 - slip / sigma, 1 / (1 + coulomb + viscous * sigma));
    }

    /** σ* of the best overall efficiency, unit 1. */
    public double bestSigma() {
        return slip * (1 + Math.sqrt(1 + (1 + coulomb) / (slip * viscous)));
    }
}
