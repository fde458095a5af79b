package swashlight.findings.fit;

/** The standard normal law: density, share below, and the logarithm of that share far into the tail. */
public final class NormalLaw {
    /** ln √(2π), 1. */
    private static final double LOG_ROOT_TWO_PI = 0.9189385332046727;

    private static final double FAR = 38; // standardised: beyond the smallest share there is, 1

    private NormalLaw() {}

    /**
     * ln φ(z).
     *
     * @param z standardised value, 1
     * @return logarithm of the density, 1
     */
    public static double logDensity(double z) {
        return -0.5 * z * z - LOG_ROOT_TWO_PI;
    }

    /**
     * Φ(z): a power series near the middle, a continued fraction in the tails.
     *
     * @param z standardised value, 1
     * @return share below, 1. Source: Abramowitz and Stegun 26.2.11 and 26.2.14
     */
    public static double below(double z) {
        if (Math.abs(z) < 3) {
            double term = z;
            double sum = z;
            for (int k = 1; Math.abs(term) > 1e-18 * Math.abs(sum) && k < 200; k++) {
                term *= z * z / (2 * k + 1);
                sum += term;
            }
            return 0.5 + sum * Math.exp(logDensity(z));
        }
        double tail = Math.exp(logTail(Math.abs(z)));
        return z < 0 ? tail : 1 - tail;
    }

    /**
     * Φ⁻¹(p): a rational first guess, then two steps of Halley.
     *
     * @param share below, between 0 and 1, 1
     * @return standardised value, 1; far out where the share is 0 or 1. Source: Abramowitz and Stegun 26.2.23 for the guess
     */
    public static double quantile(double share) {
        if (!(share > 0)) {
            return -FAR;
        }
        if (!(share < 1)) {
            return FAR;
        }
        double tail = Math.min(share, 1 - share);
        double t = Math.sqrt(-2 * Math.log(tail));
        double z =
                (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308))) - t;
        for (int step = 0; step < 2; step++) {
            double off = (below(z) - tail) / Math.exp(logDensity(z));
            z -= off / (1 + z * off / 2);
        }
        return share < 0.5 ? z : -z;
    }

    /**
     * ln Φ(z), exact also where Φ itself would be rounded to nothing.
     *
     * @param z standardised value, 1
     * @return logarithm of the share below, 1
     */
    public static double logBelow(double z) {
        return z <= -3 ? logTail(-z) : Math.log(below(z));
    }

    /** ln of the share above z ≥ 3: φ(z) / (z + 1/(z + 2/(z + 3/…))). */
    private static double logTail(double z) {
        double fraction = z;
        for (int k = 120; k >= 1; k--) {
            fraction = z + k / fraction;
        }
        return logDensity(z) - Math.log(fraction);
    }
}
