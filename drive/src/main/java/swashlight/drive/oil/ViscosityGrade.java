package swashlight.drive.oil;

import java.util.Arrays;
import java.util.Optional;

/**
 * An ISO viscosity grade of industrial oil: a mid-point at 40 °C, ten per cent either way.
 *
 * <pre>
 *   ν40 = mid-point (1 ± 0.1)       mid-point = grade number in mm²/s, but 2.2, 3.2, 4.6, 6.8 for VG 2, 3, 5, 7
 * </pre>
 *
 * Source: ISO 3448:1992, table (VG 32 to 220 seen; VG 2, 3, 5, 7 from memory). Check: {@code iso3448-mid}, {@code iso3448-min},
 * {@code iso3448-max}.
 *
 * @param number the number after VG, unit 1
 * @param midpoint viscosity at 40 °C, m²/s
 */
public record ViscosityGrade(int number, double midpoint) {
    private static final double SPREAD = 0.1; // of the mid-point, unit 1 (ISO 3448)
    private static final double MM2 = 1e-6; // m²/s per mm²/s
    private static final int[] NUMBERS = {2, 3, 5, 7, 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500};
    private static final double[] THIN = {2.2, 3.2, 4.6, 6.8}; // mm²/s, mid-points of the first four

    /** The grade of that number, if there is one. */
    public static Optional<ViscosityGrade> of(int number) {
        int at = Arrays.binarySearch(NUMBERS, number);
        return at < 0 ? Optional.empty() : Optional.of(grade(at));
    }

    /** The grade a measured viscosity at 40 °C (m²/s) belongs to, if it belongs to one. */
    public static Optional<ViscosityGrade> holding(double viscosity40) {
        for (int at = 0; at < NUMBERS.length; at++) {
            ViscosityGrade grade = grade(at);
            if (viscosity40 >= grade.lowest() && viscosity40 <= grade.highest()) {
                return Optional.of(grade);
            }
        }
        return Optional.empty();
    }

    /** Lowest viscosity at 40 °C, m²/s. */
    public double lowest() {
        return midpoint * (1 - SPREAD);
    }

    /** Highest viscosity at 40 °C, m²/s. */
    public double highest() {
        return midpoint * (1 + SPREAD);
    }

    private static ViscosityGrade grade(int at) {
        return new ViscosityGrade(NUMBERS[at], (at < THIN.length ? THIN[at] : NUMBERS[at]) * MM2);
    }
}
