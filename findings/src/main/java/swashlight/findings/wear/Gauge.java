package swashlight.findings.wear;

/**
 * How an instrument errs: a scatter from reading to reading, a share of the value, and a bias that all readings of its kind share.
 *
 * <pre>
 *   true value = shown − bias − scatter
 * </pre>
 *
 * @param key the same for all that share the bias
 * @param error scatter of one reading, one standard deviation, SI unit of what is measured
 * @param share further scatter as a share of the value, 1
 * @param bias by how much it shows too much, SI unit of what is measured
 * @param biasSpread how well that is known, one standard deviation, SI unit of what is measured
 */
public record Gauge(String key, double error, double share, double bias, double biasSpread) {
    /** @throws IllegalArgumentException when a number is not finite, or an error negative */
    public Gauge {
        if (!(error >= 0 && share >= 0 && biasSpread >= 0 && error + share + biasSpread < 1e9)
                || !(Math.abs(bias) < 1e9)) {
            throw new IllegalArgumentException("gauge " + key + ": error " + error + ", share " + share + ", bias "
                    + bias + " ± " + biasSpread + "; errors are at least 0");
        }
    }

    /** Scatter of one reading of a value, one standard deviation, both SI unit of what is measured. */
    public double scatter(double value) {
        double relative = share * value;
        return Math.sqrt(error * error + relative * relative);
    }
}
