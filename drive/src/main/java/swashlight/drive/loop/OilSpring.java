package swashlight.drive.loop;

/**
 * Oil trapped between pump and motor as a spring, the load as its mass: the tone at which a drive rocks.
 *
 * <pre>
 *   ω₀ = √(K D²/(V J))                     one side live; × √2 with both sides live
 *   ω_n = √(K (D² + C b)/(V J))            with leak C and drag b
 *   ζ   = (C K/V + b/J)/(2 ω_n)
 *   ζ ≈ (C/2D) √(K J/V) + (b/2D) √(V/(K J))     on ω₀, for small C b
 *
 *   K   bulk modulus in the loop           Pa          2e8 … 2e9
 *   D   motor displacement a radian V_g/2π m³          (a cylinder: its area, m²)
 *   V   volume of one live side            m³
 *   J   inertia at the motor shaft         kg·m²       (a cylinder: its mass, kg)
 *   C   leak                               m³/(s·Pa)
 *   b   drag                               N·m·s
 * </pre>
 *
 * Holds for small motions about a steady point. Source: Merritt 1967 ch. 4 and 6 (formula from memory; both-sided form seen in
 * Esposito, Ex. 17-2). Check: {@code oil-spring-one-side}, {@code oil-spring-both-sides}, {@code oil-spring-exact},
 * {@code oil-spring-damping}, {@code oil-spring-damping-short}, {@code cylinder-spring}.
 *
 * @param bulkModulus K, Pa
 * @param displacement D, m³ a radian
 * @param volume V, m³
 * @param inertia J, kg·m²
 */
public record OilSpring(double bulkModulus, double displacement, double volume, double inertia) {
    /** @throws IllegalArgumentException when a value is not positive */
    public OilSpring {
        if (!(bulkModulus > 0) || !(displacement > 0) || !(volume > 0) || !(inertia > 0)) {
            throw new IllegalArgumentException("an oil spring needs K, D, V, J > 0: " + bulkModulus + " Pa, "
                    + displacement + " m³, " + volume + " m³, " + inertia + " kg·m²");
        }
    }

    /** ω₀ with one side live, rad/s. */
    public double oneSide() {
        return displacement * Math.sqrt(bulkModulus / (volume * inertia));
    }

    /** ω₀ with both sides live, rad/s. */
    public double bothSides() {
        return oneSide() * Math.sqrt(2);
    }

    /** ω_n with a leak (m³/(s·Pa)) and a drag (N·m·s), one side live, rad/s. */
    public double damped(double leak, double drag) {
        return Math.sqrt(bulkModulus * (displacement * displacement + leak * drag) / (volume * inertia));
    }

    /** ζ with a leak (m³/(s·Pa)) and a drag (N·m·s), unit 1. */
    public double damping(double leak, double drag) {
        return (leak * bulkModulus / volume + drag / inertia) / (2 * damped(leak, drag));
    }

    /** ζ in the short form, on ω₀, unit 1. */
    public double dampingShort(double leak, double drag) {
        return leak / (2 * displacement) * Math.sqrt(bulkModulus * inertia / volume)
                + drag / (2 * displacement) * Math.sqrt(volume / (bulkModulus * inertia));
    }
}
