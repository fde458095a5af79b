package swashlight.findings.evidence;

/**
 * A change of scale in which readings follow their unknowns more nearly along straight lines: leakage goes with products of powers, so a
 * large number is taken by its logarithm, a small one as it is.
 *
 * <pre>
 *   t = √(r² + c²) asinh(y/c)/σ,   c = 3 σ      slope 1/σ at the measured value
 *
 *   y   number of a reading      SI unit of the comparison
 *   r   its measured value       SI unit of the comparison
 *   σ   its error                SI unit of the comparison
 * </pre>
 *
 * Only proposals use it.
 */
final class Straightening {
    private static final double CORNER = 3; // c over σ, 1
    private final double[] corner;
    private final double[] slope;

    Straightening(Target target) {
        corner = new double[target.size()];
        slope = new double[target.size()];
        for (int i = 0; i < corner.length; i++) {
            double r = target.value(i);
            corner[i] = CORNER * target.error(i);
            slope[i] = Math.sqrt(r * r + corner[i] * corner[i]) / target.error(i);
        }
    }

    double of(int reading, double number) {
        double x = Math.abs(number) / corner[reading];
        double t = slope[reading] * Math.log(x + Math.sqrt(x * x + 1));
        return number < 0 ? -t : t;
    }
}
