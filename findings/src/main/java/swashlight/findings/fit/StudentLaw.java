package swashlight.findings.fit;

/** Student's t: the factor that turns a standard error from few readings into an interval. */
public final class StudentLaw {
    private StudentLaw() {}

    /**
     * The t that the absolute value of a Student variable stays below with a given chance.
     *
     * @param confidence chance, 1, 0 … 1
     * @param freedom degrees of freedom, 1, above 0 (need not be whole)
     * @return factor, 1. Source: Abramowitz and Stegun 26.7.1, solved by halving
     */
    public static double factor(double confidence, double freedom) {
        double low = 0;
        double high = 1;
        while (within(high, freedom) < confidence && high < 1e12) {
            high *= 2;
        }
        for (int k = 0; k < 200 && high - low > 1e-13 * high; k++) {
            double middle = 0.5 * (low + high);
            if (within(middle, freedom) < confidence) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /**
     * Chance of |T| ≤ t: 1 − I_x(ν/2, ½) with x = ν/(ν + t²).
     *
     * @param t limit, 1, at least 0
     * @param freedom ν, 1, above 0
     * @return chance, 1
     */
    public static double within(double t, double freedom) {
        double x = freedom / (freedom + t * t);
        return 1 - incompleteBeta(x, 0.5 * freedom, 0.5);
    }

    private static double incompleteBeta(double x, double a, double b) {
        if (x <= 0 || x >= 1) {
            return x <= 0 ? 0 : 1;
        }
        double front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(1 - x));
        return x < (a + 1) / (a + b + 2)
                ? front * betaFraction(x, a, b) / a
                : 1 - front * betaFraction(1 - x, b, a) / b;
    }

    /** Lentz's evaluation of the continued fraction 26.5.8. */
    private static double betaFraction(double x, double a, double b) {
        double c = 1;
        double d = 1 / notZero(1 - (a + b) * x / (a + 1));
        double value = d;
        for (int m = 1; m <= 500; m++) {
            double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
            d = 1 / notZero(1 + even * d);
            c = notZero(1 + even / c);
            value *= d * c;
            double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            d = 1 / notZero(1 + odd * d);
            c = notZero(1 + odd / c);
            value *= d * c;
            if (Math.abs(d * c - 1) < 1e-15) {
                return value;
            }
        }
        return value;
    }

    private static double notZero(double value) {
        return Math.abs(value) < 1e-300 ? 1e-300 : value;
    }

    /** ln Γ by Stirling's series after shifting the argument above 12; source: Abramowitz and Stegun 6.1.41. */
    private static double logGamma(double argument) {
        double z = argument;
        double shift = 0;
        while (z < 12) {
            shift -= Math.log(z);
            z += 1;
        }
        double inverse = 1 / (z * z);
        double series = (1.0 / 12 - inverse * (1.0 / 360 - inverse * (1.0 / 1260 - inverse * (1.0 / 1680)))) / z;
        return shift + (z - 0.5) * Math.log(z) - z + 0.9189385332046727 + series;
    }
}
