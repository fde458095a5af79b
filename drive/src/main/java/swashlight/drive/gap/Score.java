package swashlight.drive.gap;

/**
 * Leakage along a score scratched across a land: a shallow laminar groove.
 *
 * <pre>
 *   Q = b s³ Δp / (12 µ l)      rectangular
 *   Q = b s³ Δp / (48 µ l)      triangular
 *
 *   b   width    m   0 … 0.02
 *   s   depth    m   0 … 1e-3, far below b
 *   l   length   m   &gt; 0
 *   Q, Δp, µ as in {@link AnnularGap}
 * </pre>
 *
 * Holds for s/b below about 0.1. Source: lubrication limit, White, Viscous Fluid Flow (from
 * memory). Check: {@code gap-score-*}.
 */
public record Score(double width, double depth, double length, boolean triangular) {
    /** @throws IllegalArgumentException when a size is negative */
    public Score {
        if (!(width >= 0) || !(depth >= 0) || !(length > 0)) {
            throw new IllegalArgumentException(
                    "score needs width ≥ 0, depth ≥ 0, length > 0: " + width + ", " + depth + ", " + length + " m");
        }
    }

    /** Conductance G in Q = G/µ · Δp; m³. */
    public double conductance() {
        double divisor = triangular ? 48 : 12;
        return width * depth * depth * depth / (divisor * length);
    }
}
