package swashlight.files.unit;

import java.math.BigDecimal;
import java.math.MathContext;

/** An exact conversion factor: top ÷ bottom. Kept apart so that a third or π costs no digit before the last step. */
record Fraction(BigDecimal top, BigDecimal bottom) {
    /** Enough digits that a double found through them is the nearest one. */
    static final MathContext DIGITS = new MathContext(60);

    static final Fraction ONE = of("1");

    /** π to 50 places (OEIS A000796). */
    static final Fraction PI = of("3.14159265358979323846264338327950288419716939937511");

    static Fraction of(String number) {
        return new Fraction(new BigDecimal(number), BigDecimal.ONE);
    }

    Fraction times(Fraction other) {
        return new Fraction(top.multiply(other.top), bottom.multiply(other.bottom));
    }

    Fraction over(Fraction other) {
        return new Fraction(top.multiply(other.bottom), bottom.multiply(other.top));
    }

    Fraction times(String number) {
        return times(of(number));
    }

    Fraction over(String number) {
        return over(of(number));
    }

    Fraction power(int exponent) {
        return new Fraction(top.pow(exponent), bottom.pow(exponent));
    }

    /** The factor as one number, to 60 digits. */
    BigDecimal decimal() {
        return top.divide(bottom, DIGITS);
    }
}
