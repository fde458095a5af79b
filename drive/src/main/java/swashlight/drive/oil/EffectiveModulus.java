package swashlight.drive.oil;

/**
 * Bulk modulus of oil, gas and walls together when the gas share is known at the pressure at hand.
 *
 * <pre>
 *   1/K = α/(n p) + (1 − α)/K_l + 1/K_w
 *
 *   α    gas share of the volume at pressure p   1     0 … 1
 *   n    polytropic exponent of the gas          1     1 … 1.4
 *   p    absolute pressure                       Pa    &gt; 0
 *   K_l  bulk modulus of the liquid              Pa
 *   K_w  stiffness of the walls, E t/D in a thin tube   Pa
 * </pre>
 *
 * {@link OilAt#bulkModulus} is for a share stated at one atmosphere; mixing up the two shares is the commonest error with this
 * formula. Many books leave out the (1 − α). Source: Rabie, Fluid Power Engineering, 2009, eq. 2.57; Merritt, Hydraulic Control
 * Systems, 1967, ch. 1 (from memory). Check: {@code oil-effective-modulus}.
 *
 * @param gasShare α, unit 1
 * @param exponent n, unit 1
 * @param liquidModulus K_l, Pa
 * @param wallCompliance 1/K_w, 1/Pa; 0 for rigid walls
 */
public record EffectiveModulus(double gasShare, double exponent, double liquidModulus, double wallCompliance) {
    /** @throws IllegalArgumentException when a value is outside its range */
    public EffectiveModulus {
        if (!(gasShare >= 0 && gasShare <= 1)
                || !(exponent >= 1 && exponent <= 5.0 / 3)
                || !(liquidModulus > 0)
                || !(wallCompliance >= 0)) {
            throw new IllegalArgumentException(
                    "effective modulus needs 0 ≤ α ≤ 1, 1 ≤ n ≤ 5/3, K_l > 0, 1/K_w ≥ 0: α " + gasShare + ", n "
                            + exponent + ", K_l " + liquidModulus + " Pa, 1/K_w " + wallCompliance + " 1/Pa");
        }
    }

    /** K at an absolute pressure (Pa), Pa. */
    public double at(double pressure) {
        return 1 / (gasShare / (exponent * pressure) + (1 - gasShare) / liquidModulus + wallCompliance);
    }
}
