package swashlight.browser;

/** How many numbers lie between two. */
final class Ulps {
    private Ulps() {}

    /** 0 when they are the same to the bit or both no number. */
    static long between(double a, double b) {
        if (Double.isNaN(a) || Double.isNaN(b)) {
            return Double.isNaN(a) && Double.isNaN(b) ? 0 : Long.MAX_VALUE;
        }
        if (Double.doubleToRawLongBits(a) == Double.doubleToRawLongBits(b)) {
            return 0;
        }
        return Math.max(1, Math.abs(place(a) - place(b))); // 0 and −0 are not the same
    }

    private static long place(double x) {
        long bits = Double.doubleToRawLongBits(x);
        return bits >= 0 ? bits : Long.MIN_VALUE - bits;
    }
}
