package swashlight.drive.gap;

/**
 * Leakage along a score scratched across a land: a laminar groove under a flat lid.
 *
 * <pre>
 *   Q = φ b s³ Δp / (12 µ l)      rectangular
 *   Q = φ b s³ Δp / (48 µ l)      triangular
 *
 *   b   width    m   0 … 0.02
 *   s   depth    m   0 … 1e-3
 *   l   length   m   &gt; 0
 *   φ   share of the thin law, {@link ScoreShape}; 1 for s ≪ b
 *   Q, Δp, µ as in {@link AnnularGap}
 * </pre>
 *
 * Holds for laminar flow at any ratio of depth to width. Source: lubrication limit, White, Viscous Fluid Flow (from memory). Check:
 * {@code gap-score-rectangular}, {@code gap-score-triangular}, {@code gap-slot-factor}, {@code gap-triangle-factor}.
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
        return width > 0 ? thinConductance() * shape().share(depth / width) : 0;
    }

    /** Conductance by the thin law alone, φ = 1; m³. */
    public double thinConductance() {
        return width * depth * depth * depth / (shape().divisor() * length);
    }

    /** The section. */
    public ScoreShape shape() {
        return triangular ? ScoreShape.TRIANGULAR : ScoreShape.RECTANGULAR;
    }
}
