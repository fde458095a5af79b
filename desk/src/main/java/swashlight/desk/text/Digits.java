package swashlight.desk.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as people read them: few digits, a real minus, no point where there is no need for one. */
public final class Digits {
    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final int PLAIN_FROM = -4; // power of ten below which a number is written with a power
    private static final int PLAIN_TO = 7; // power of ten from which on it is

    private Digits() {}

    /** A number with so many significant digits, trailing zeros kept: 2.310. */
    public static String significant(double number, int digits) {
        if (number == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(number).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        int power = rounded.precision() - rounded.scale() - 1;
        if (power < PLAIN_FROM || power >= PLAIN_TO) {
            String mantissa = minus(rounded.movePointLeft(power)
                    .setScale(Math.max(0, Math.min(1, digits - 1)), RoundingMode.HALF_EVEN));
            return mantissa + "·10" + raised(power);
        }
        int decimals = Math.max(0, digits - 1 - power);
        return minus(rounded.setScale(decimals, RoundingMode.HALF_EVEN));
    }

    /** A number with so many decimals; a number that rounds to nothing is 0 without a sign. */
    public static String fixed(double number, int decimals) {
        return minus(new BigDecimal(number).setScale(decimals, RoundingMode.HALF_EVEN));
    }

    /** How many decimals show a spread with two significant digits. */
    public static int decimalsFor(double spread) {
        if (!(spread > 0)) {
            return 0;
        }
        int power = (int) Math.floor(Math.log10(spread * 1.0000001));
        return Math.max(0, Math.min(9, 1 - power));
    }

    /** For machines: at most 12 significant digits, a plain minus, no needless zeros. */
    public static String machine(double number) {
        if (number == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(number)
                .round(new MathContext(12, RoundingMode.HALF_EVEN))
                .stripTrailingZeros();
        int power = rounded.precision() - rounded.scale() - 1;
        return power < -6 || power > 15 ? rounded.toString() : rounded.toPlainString();
    }

    private static String minus(BigDecimal number) {
        String text = number.toPlainString();
        boolean zero = number.signum() == 0;
        return text.startsWith("-") ? (zero ? "" : "−") + text.substring(1) : text;
    }

    private static String raised(int power) {
        StringBuilder text = new StringBuilder(power < 0 ? "⁻" : "");
        for (char digit : String.valueOf(Math.abs(power)).toCharArray()) {
            text.append(SUPERSCRIPTS.charAt(digit - '0'));
        }
        return text.toString();
    }
}
