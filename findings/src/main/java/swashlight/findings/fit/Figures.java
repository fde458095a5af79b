package swashlight.findings.fit;

/** Numbers as text with a stated count of figures, the same in every locale and in the browser. */
public final class Figures {
    private static final double SMALLEST_PLAIN = 1e-5;
    private static final double LARGEST_PLAIN = 1e9;

    private Figures() {}

    /**
     * The number with so many significant figures; plain between 1e-5 and 1e9, with an exponent outside.
     *
     * @param value any number, 1
     * @param figures significant figures, 1 … 15
     */
    public static String significant(double value, int figures) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return Double.isNaN(value) ? "not a number" : value > 0 ? "infinite" : "minus infinite";
        }
        if (value == 0) {
            return "0";
        }
        double size = Math.abs(value);
        int exponent = exponent(size);
        long digits = (long) Math.floor(scaled(size, figures - 1 - exponent) + 0.5);
        if (digits >= (long) power(figures)) {
            digits /= 10;
            exponent++;
        }
        String sign = value < 0 ? "-" : "";
        if (size >= SMALLEST_PLAIN && size < LARGEST_PLAIN) {
            return sign + plain(digits, figures - 1 - exponent);
        }
        return sign + plain(digits, figures - 1) + "E" + exponent;
    }

    /**
     * The number with so many decimals.
     *
     * @param value a number below 1e12, 1
     * @param decimals digits after the point, 0 … 6
     */
    public static String fixed(double value, int decimals) {
        double size = Math.abs(value);
        if (!(size < 1e12)) {
            return significant(value, 6);
        }
        long digits = (long) Math.floor(size * power(decimals) + 0.5);
        return (value < 0 && digits > 0 ? "-" : "") + plain(digits, decimals);
    }

    private static int exponent(double size) {
        int exponent = (int) Math.floor(Math.log(size) / Math.log(10));
        while (scaled(size, -exponent) >= 10) {
            exponent++;
        }
        while (scaled(size, -exponent) < 1) {
            exponent--;
        }
        return exponent;
    }

    private static double scaled(double size, int places) {
        return places >= 0 ? size * power(places) : size / power(-places);
    }

    private static double power(int places) {
        double power = 1;
        for (int i = 0; i < places; i++) {
            power *= 10;
        }
        return power;
    }

    /** Digits with the point so many places from the right; zeros where there are none (negative places). */
    private static String plain(long digits, int places) {
        StringBuilder text = new StringBuilder(Long.toString(digits));
        for (int i = places; i < 0; i++) {
            text.append('0');
        }
        if (places > 0) {
            while (text.length() <= places) {
                text.insert(0, '0');
            }
            text.insert(text.length() - places, '.');
        }
        return text.toString();
    }
}
