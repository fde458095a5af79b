package swashlight.drive.trace;

/**
 * Discrete Fourier transform of real or complex samples whose number is a power of two.
 *
 * <pre>
 *   X_k = Σ x_n exp(−2πi k n / N)
 * </pre>
 *
 * Source: Cooley and Tukey, Math. Comp. 19 (1965) 297, radix 2 (from memory).
 */
final class Fourier {
    private Fourier() {}

    /** In place; both arrays equally long. */
    static void transform(double[] real, double[] imaginary) {
        int count = real.length;
        if (count != imaginary.length || count == 0 || (count & (count - 1)) != 0) {
            throw new IllegalArgumentException(count + " samples; their number must be a power of two");
        }
        reverse(real, imaginary);
        for (int half = 1; half < count; half *= 2) {
            for (int k = 0; k < half; k++) {
                double angle = -Math.PI * k / half;
                double c = Math.cos(angle);
                double s = Math.sin(angle);
                for (int i = k; i < count; i += 2 * half) {
                    int j = i + half;
                    double re = real[j] * c - imaginary[j] * s;
                    double im = real[j] * s + imaginary[j] * c;
                    real[j] = real[i] - re;
                    imaginary[j] = imaginary[i] - im;
                    real[i] += re;
                    imaginary[i] += im;
                }
            }
        }
    }

    private static void reverse(double[] real, double[] imaginary) {
        int j = 0;
        for (int i = 0; i < real.length; i++) {
            if (i < j) {
                swap(real, i, j);
                swap(imaginary, i, j);
            }
            int bit = real.length >> 1;
            while (bit >= 1 && (j & bit) != 0) {
                j ^= bit;
                bit >>= 1;
            }
            j |= bit;
        }
    }

    private static void swap(double[] values, int i, int j) {
        double kept = values[i];
        values[i] = values[j];
        values[j] = kept;
    }
}
