package swashlight.drive.machine;

/**
 * A tyre on soil, as far as its mobility number needs it.
 *
 * <pre>
 *   B_n = (CI b d/W) (1 + 5 δ/h)/(1 + 3 b/d)
 *
 *   CI   cone index of the soil             Pa     2e5 … 2e6
 *   b, d section width, overall diameter    m
 *   δ/h  deflection over section height     1      0.05 … 0.4
 *   W    load on the wheel                  N
 * </pre>
 *
 * Source: Brixius 1987 = ASABE D497 cl. 3 (from memory). Check: {@code soil-mobility}.
 *
 * @param width b, m
 * @param diameter d, m
 * @param deflection δ/h, unit 1
 */
public record SoilTyre(double width, double diameter, double deflection) {
    /** @throws IllegalArgumentException when a size is not positive */
    public SoilTyre {
        if (!(width > 0) || !(diameter > 0) || !(deflection >= 0 && deflection < 1)) {
            throw new IllegalArgumentException("a tyre on soil needs b, d > 0 and 0 ≤ δ/h < 1: " + width + " m, "
                    + diameter + " m, " + deflection);
        }
    }

    /** B_n for a cone index (Pa) and a wheel load (N), unit 1. */
    public double mobility(double coneIndex, double load) {
        return coneIndex * width * diameter / load * (1 + 5 * deflection) / (1 + 3 * width / diameter);
    }
}
