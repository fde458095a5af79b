package swashlight.findings.cost;

/**
 * What one piece of work takes.
 *
 * @param time of one person, s
 * @param parts in the currency of the prices, 1
 */
public record Price(double time, double parts) {
    /** @throws IllegalArgumentException when a number is below 0 or absurd */
    public Price {
        Prices.demand("time (s)", time, 1e7);
        Prices.demand("parts", parts, 1e9);
    }
}
