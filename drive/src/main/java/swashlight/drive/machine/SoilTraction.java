package swashlight.drive.machine;

/**
 * Traction of a tyre on soil from its mobility number and its slip.
 *
 * <pre>
 *   ρ   = 1/B_n + 0.04 + 0.5 s/√B_n                               motion resistance ÷ load
 *   μ_g = 0.88 (1 − e^(−0.1 B_n)) (1 − e^(−7.5 s)) + 0.04          gross traction ÷ load
 *   μ   = μ_g − ρ                                                  net traction ÷ load
 *   η_t = (1 − s) μ/μ_g                                            tractive efficiency
 *
 *   B_n  mobility number, {@link SoilTyre}    1    10 … 120
 *   s    slip                                 1    0 … 0.5
 * </pre>
 *
 * Fitted to bias-ply farm tyres: small tyres lie outside. Source: Brixius 1987 = ASABE D497 cl. 3 (from memory). Check:
 * {@code soil-net}, {@code brixius-net}, {@code brixius-gross}, {@code brixius-rolling}, {@code brixius-efficiency}.
 *
 * @param mobility B_n, unit 1
 */
public record SoilTraction(double mobility) {
    /** @throws IllegalArgumentException when the mobility number is not positive */
    public SoilTraction {
        if (!(mobility > 0)) {
            throw new IllegalArgumentException("the mobility number must be positive; given " + mobility);
        }
    }

    /** ρ at a slip (unit 1), unit 1. */
    public double rolling(double slip) {
        return 1 / mobility + 0.04 + 0.5 * slip / Math.sqrt(mobility);
    }

    /** μ_g at a slip (unit 1), unit 1. */
    public double gross(double slip) {
        return 0.88 * (1 - Math.exp(-0.1 * mobility)) * (1 - Math.exp(-7.5 * slip)) + 0.04;
    }

    /** μ at a slip (unit 1), unit 1; negative when the wheel must be pushed. */
    public double net(double slip) {
        return gross(slip) - rolling(slip);
    }

    /** η_t at a slip (unit 1), unit 1. */
    public double efficiency(double slip) {
        return (1 - slip) * net(slip) / gross(slip);
    }
}
