package swashlight.drive.gap;

/**
 * Leakage along the gap between a piston and its bore: laminar flow in a thin ring, piston off centre.
 *
 * <pre>
 *   Q = π d c³ (1 + 1.5 ε²) Δp / (12 µ L)
 *
 *   Q    leakage, positive out of the chamber   m³/s
 *   d    piston diameter                        m      2e-3 … 60e-3
 *   c    radial clearance                       m      0 … 3e-4
 *   ε    eccentricity ÷ clearance               1      0 … 1
 *   L    engaged length                         m      1e-3 … 0.2
 *   Δp   chamber less case pressure             Pa     any sign
 *   µ    dynamic viscosity                      Pa·s
 * </pre>
 *
 * Holds while c/d &lt; 0.01 and the flow is laminar; wall motion is left out (it adds ± π d c v / 2, which is the ring's own area
 * carried along: count it by taking the area at the mean of piston and bore). Source: Merritt 1967 ch. 3 (from memory); Fox and
 * McDonald, Ex. 8.1 (inputs seen); eccentricity: exact average of (1 + ε cos θ)³. Check: {@code gap-annular}.
 */
public record AnnularGap(double pistonDiameter, double clearance, double eccentricity, double engagedLength) {
    /** @throws IllegalArgumentException when a size is outside the law's range */
    public AnnularGap {
        if (!(pistonDiameter > 0)
                || !(clearance >= 0)
                || !(engagedLength > 0)
                || !(eccentricity >= 0 && eccentricity <= 1)) {
            throw new IllegalArgumentException("annular gap needs d > 0, c ≥ 0, L > 0, 0 ≤ ε ≤ 1: d " + pistonDiameter
                    + " m, c " + clearance + " m, L " + engagedLength + " m, ε " + eccentricity);
        }
    }

    /** Conductance G = π d c³ (1 + 1.5 ε²)/(12 L), so that Q = G/µ · Δp; m³. */
    public double conductance() {
        double c = clearance;
        return Math.PI * pistonDiameter * c * c * c * (1 + 1.5 * eccentricity * eccentricity) / (12 * engagedLength);
    }

    /**
     * Leakage Q.
     *
     * @param pressureDifference Δp, Pa
     * @param dynamicViscosity µ, Pa·s
     * @return Q, m³/s
     */
    public double leakage(double pressureDifference, double dynamicViscosity) {
        return conductance() / dynamicViscosity * pressureDifference;
    }
}
