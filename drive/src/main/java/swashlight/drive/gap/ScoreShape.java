package swashlight.drive.gap;

/**
 * The section of a score under a flat lid, and the share of the thin law it really carries.
 *
 * <pre>
 *   Q = φ b s³ Δp / (D µ l)
 *
 *   rectangular  D = 12,  φ = 1 − (192/π⁵)(s/b) Σ tanh(n π b/(2 s))/n⁵,  n = 1, 3, 5 …   (s ≤ b; turned on its side beyond)
 *   triangular   D = 48,  φ by table up to s/b = 1, then ∝ (b/s)²
 *
 *   b, s, l   width, depth, length    m
 *   φ         share of the thin law   1     0 … 1
 * </pre>
 *
 * Holds for laminar flow. Source: rectangle: exact series, White, Viscous Fluid Flow (from memory); triangle: own finite elements,
 * {@code checks/origin/triangle_groove.py}, exact at the equilateral triangle (Bird, Stewart and Lightfoot, prob. 3B.2); linear
 * between entries, within 0.002. Check: {@code gap-slot-factor}, {@code gap-triangle-factor}, {@code gap-equilateral}.
 */
public enum ScoreShape {
    /** Flat bottom, upright sides. */
    RECTANGULAR(12) {
        @Override
        public double share(double slenderness) {
            return slenderness <= 1
                    ? 1 - slotLoss(slenderness)
                    : (1 - slotLoss(1 / slenderness)) / (slenderness * slenderness);
        }
    },
    /** A notch with two straight sides. */
    TRIANGULAR(48) {
        @Override
        public double share(double slenderness) {
            int last = DEPTHS.length - 1;
            if (slenderness >= DEPTHS[last]) {
                return SHARES[last] / (slenderness * slenderness);
            }
            int at = 0;
            while (slenderness > DEPTHS[at + 1]) {
                at++;
            }
            double along = (slenderness - DEPTHS[at]) / (DEPTHS[at + 1] - DEPTHS[at]);
            return SHARES[at] + along * (SHARES[at + 1] - SHARES[at]);
        }
    };

    /** Depth over width of the table, unit 1. */
    private static final double[] DEPTHS = {
        0, 0.02, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.8660254037844386, 1
    };

    /** Share of the thin law at those, unit 1. */
    private static final double[] SHARES = {
        1, 0.998257, 0.990802, 0.966952, 0.932726, 0.891851, 0.847250, 0.801122, 0.710112, 0.626152, 0.551853, 0.487441,
        0.432110, 0.4, 0.344079
    };

    private static final double PI5 = Math.PI * Math.PI * Math.PI * Math.PI * Math.PI; // π⁵, unit 1
    private static final int TERMS = 25; // odd terms up to n = 49: the rest is below 1e-7 of the sum

    private final double divisor;

    ScoreShape(double divisor) {
        this.divisor = divisor;
    }

    /** D of the thin law, unit 1. */
    public double divisor() {
        return divisor;
    }

    /**
     * Share φ of the thin law.
     *
     * @param slenderness s/b, depth over width, unit 1, ≥ 0
     * @return φ, unit 1
     */
    public abstract double share(double slenderness);

    private static double slotLoss(double ratio) {
        if (ratio <= 0) {
            return 0;
        }
        double sum = 0;
        for (int n = 2 * TERMS - 1; n > 0; n -= 2) {
            double fade = Math.exp(-n * Math.PI / ratio); // tanh x = (1 − e^−2x)/(1 + e^−2x)
            sum += (1 - fade) / (1 + fade) / Math.pow(n, 5);
        }
        return 192 / PI5 * ratio * sum;
    }
}
