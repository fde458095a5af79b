package swashlight.findings.evidence;

import swashlight.findings.expect.Forecast;

/**
 * Error of a reading: normal, but now and then wild (misread, wrong tape, wrong gear).
 *
 * <pre>
 *   p(e) = (1 − w) N(e; 0, σ) + w N(e; 0, W σ)
 *
 *   e   measured less expected    SI unit of the comparison
 *   σ   error of the instrument   SI unit of the comparison
 *   w   share of wild readings    1   0.02
 *   W   how wild                  1   10
 * </pre>
 *
 * Source: contaminated normal of Tukey 1960 (from memory); w and W own choice, no source. A reading whose expected value could not be
 * computed counts like one wild by 2 W σ.
 */
public final class WildLaw {
    /** w, 1. */
    public static final double SHARE = 0.02;

    /** W, 1. */
    public static final double WIDTH = 10;

    private static final double LOG_ROOT_TWO_PI = 0.9189385332046727;
    private static final double UNSOLVED = 2; // wild standard deviations, 1

    private WildLaw() {}

    /** ln p of one reading that stands z of its own standard deviations off, times σ; unit 1. */
    public static double logDensity(double z) {
        double tame = (1 - SHARE) * Math.exp(-0.5 * z * z);
        double wild = SHARE / WIDTH * Math.exp(-0.5 * z * z / (WIDTH * WIDTH));
        double sum = tame + wild;
        return sum > 0
                ? Math.log(sum) - LOG_ROOT_TWO_PI
                : Math.log(SHARE / WIDTH) - 0.5 * z * z / (WIDTH * WIDTH) - LOG_ROOT_TWO_PI;
    }

    /** ln p of a reading whose expected value is not known, times σ; unit 1. */
    public static double logUnsolved() {
        return Math.log(SHARE / WIDTH) - 0.5 * UNSOLVED * UNSOLVED - LOG_ROOT_TWO_PI;
    }

    /** Chance that a reading which stands z standard deviations off is wild, 1. */
    public static double chanceWild(double z) {
        double odds = (1 - SHARE) * WIDTH / SHARE * Math.exp(-0.5 * z * z * (1 - 1 / (WIDTH * WIDTH)));
        return 1 / (1 + odds);
    }

    /** ln of the likelihood of all readings, each times its σ; unit 1. */
    static double logLikelihood(Target target, Forecast forecast) {
        double sum = 0;
        for (int i = 0; i < target.size(); i++) {
            sum += forecast.solved(i)
                    ? logDensity((target.value(i) - forecast.value(i)) / target.error(i))
                    : logUnsolved();
        }
        return sum;
    }
}
