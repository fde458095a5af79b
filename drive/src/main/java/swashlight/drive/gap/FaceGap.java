package swashlight.drive.gap;

/**
 * Leakage of one kidney across the lands of a flat port face at a mean gap h: radial laminar flow inwards and outwards.
 *
 * <pre>
 *   Q = Θ h³ / (12 µ) · (1/ln(r2/r1) + 1/ln(r4/r3)) · Δp
 *
 *   Θ       angle the kidney spans              rad    0 … 2π
 *   h       mean gap                            m      0 … 1e-3
 *   r1, r2  inner land, from inside to kidney   m
 *   r3, r4  outer land, from kidney to outside  m
 *   Q, Δp, µ as in {@link AnnularGap}
 * </pre>
 *
 * Also here: the leak across the two bridges between the kidneys, Q = 2 (r3 − r2) h³ Δp / (12 µ l), l = (π − Θ)(r2 + r3)/2, and
 * the viscous drag torque of the turning face, T = π µ ω (r4⁴ − r1⁴)/(2 h). Holds for laminar flow and h far below the land
 * width. Source: Merritt 1967 ch. 3 (from memory); Newton's law of viscosity. Check: {@code gap-radial}, {@code face-shear}.
 */
public record FaceGap(
        double gap, double kidneySpan, double landInner, double kidneyInner, double kidneyOuter, double landOuter) {
    /** @throws IllegalArgumentException when radii do not rise or the gap is negative */
    public FaceGap {
        if (!(landInner > 0 && kidneyInner > landInner && kidneyOuter > kidneyInner && landOuter > kidneyOuter)) {
            throw new IllegalArgumentException("port face radii must rise: " + landInner + ", " + kidneyInner + ", "
                    + kidneyOuter + ", " + landOuter + " m");
        }
        if (!(gap >= 0) || !(kidneySpan > 0 && kidneySpan < Math.PI)) {
            throw new IllegalArgumentException(
                    "port face needs gap ≥ 0 and 0 < kidney span < π: gap " + gap + " m, span " + kidneySpan + " rad");
        }
    }

    /** Conductance of one kidney to the case, G in Q = G/µ · Δp; m³. */
    public double conductance() {
        return caseConductance(gap);
    }

    /** Conductance of one kidney to the case at another gap h (m); m³. */
    public double caseConductance(double h) {
        return kidneySpan
                * h
                * h
                * h
                / 12
                * (1 / Math.log(kidneyInner / landInner) + 1 / Math.log(landOuter / kidneyOuter));
    }

    /** Conductance from kidney to kidney across both bridges; m³. */
    public double bridgeConductance() {
        return 2 * (kidneyOuter - kidneyInner) * gap * gap * gap / (12 * bridgeLength());
    }

    /** Length of one bridge along the mean circle; m. */
    public double bridgeLength() {
        return (Math.PI - kidneySpan) * (kidneyInner + kidneyOuter) / 2;
    }

    /** Mean width of the two lands; m. */
    public double landWidth() {
        return ((kidneyInner - landInner) + (landOuter - kidneyOuter)) / 2;
    }

    /** Drag coefficient π (r4⁴ − r1⁴)/(2 h) of the turning face, so that T = coefficient · µ · ω; m³. */
    public double dragCoefficient() {
        return Math.PI * (fourth(landOuter) - fourth(landInner)) / (2 * gap);
    }

    /** Open edge of one kidney, along which oil escapes once the block is lifted; m. */
    public double kidneyEdge() {
        return kidneySpan * (kidneyInner + kidneyOuter);
    }

    private static double fourth(double x) {
        return x * x * x * x;
    }
}
