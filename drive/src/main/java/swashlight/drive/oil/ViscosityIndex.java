package swashlight.drive.oil;

/**
 * Viscosity index: how little an oil thins as it warms, from its viscosities at 40 and 100 °C.
 *
 * <pre>
 *   VI = 100 (L − U)/(L − H)                                    U ≥ H   (procedure A)
 *   VI = 100 + (10^N − 1)/0.00715,  N = lg(H/U)/lg Y            U &lt; H   (procedure B)
 *   L = a Y² + b Y + c,   H = d Y² + e Y + f
 *
 *   U     viscosity at 40 °C                                    m²/s (mm²/s inside the law)
 *   Y     viscosity at 100 °C                                   m²/s     2e-6 … 5e-4
 *   L, H  viscosity at 40 °C of oils of index 0 and 100 with the same Y
 * </pre>
 *
 * Holds from 2 mm²/s at 100 °C upwards. Source: ASTM D2270 §5 and §6; coefficients of its appendix X2 (seen in public copies; they
 * fit table 1 of the standard to about 0.05 %). Check: {@code vi}, {@code vi-of-limits}, {@code vi-l}, {@code vi-h}.
 */
public final class ViscosityIndex {
    private static final double LN10 = 2.302585092994046; // ln 10, unit 1
    private static final double MM2 = 1e-6; // m²/s per mm²/s
    private static final double LEAST = 2e-6; // lowest viscosity at 100 °C covered, m²/s

    /** From Y (mm²/s) on: a, b, c of L and d, e, f of H; ASTM D2270 appendix X2. */
    private static final double[][] QUADRATICS = {
        {2.0, 1.14673, 1.7576, -0.109, 0.84155, 1.5521, -0.077},
        {3.8, 3.38095, -15.4952, 33.196, 0.78571, 1.7929, -0.183},
        {4.4, 2.5, -7.2143, 13.812, 0.82143, 1.5679, 0.119},
        {5.0, 0.101, 16.635, -45.469, 0.04985, 9.1613, -18.557},
        {6.4, 3.35714, -23.5643, 78.466, 0.22619, 7.7369, -16.656},
        {7.0, 0.01191, 21.475, -72.87, 0.79762, -0.7321, 14.61},
        {7.7, 0.41858, 16.1558, -56.04, 0.05794, 10.5156, -28.24},
        {9.0, 0.88779, 7.5527, -16.6, 0.26665, 6.7015, -10.81},
        {12.0, 0.7672, 10.7972, -38.18, 0.20073, 8.4658, -22.49},
        {15.0, 0.97305, 5.3135, -2.2, 0.28889, 5.9741, -4.93},
        {18.0, 0.97256, 5.25, -0.98, 0.24504, 7.416, -16.73},
        {22.0, 0.91413, 7.4759, -21.82, 0.20323, 9.1267, -34.23},
        {28.0, 0.87031, 9.7157, -50.77, 0.18411, 10.1015, -46.75},
        {40.0, 0.84703, 12.6752, -133.31, 0.17029, 11.4866, -80.62},
        {55.0, 0.85921, 11.1009, -83.19, 0.1713, 11.368, -76.94},
        {70.0, 0.83531, 14.6731, -216.246, 0.16841, 11.8493, -96.947},
    };

    private ViscosityIndex() {}

    /**
     * The index.
     *
     * @param viscosity40 U, m²/s
     * @param viscosity100 Y, m²/s
     * @return VI, unit 1
     */
    public static double of(double viscosity40, double viscosity100) {
        return ofReferences(viscosity40, viscosity100, lowReference(viscosity100), highReference(viscosity100));
    }

    /** The index as it is reported: a whole number. Same arguments (m²/s) as {@link #of}; unit 1. */
    public static double reported(double viscosity40, double viscosity100) {
        return Math.floor(of(viscosity40, viscosity100) + 0.5);
    }

    /** L for a viscosity Y at 100 °C (m²/s): viscosity at 40 °C of the oil of index 0, m²/s. */
    public static double lowReference(double viscosity100) {
        return quadratic(viscosity100, 1);
    }

    /** H for a viscosity Y at 100 °C (m²/s): viscosity at 40 °C of the oil of index 100, m²/s. */
    public static double highReference(double viscosity100) {
        return quadratic(viscosity100, 4);
    }

    /** The index when L and H (m²/s) are already known; U and Y in m²/s, result unit 1. */
    public static double ofReferences(double viscosity40, double viscosity100, double low, double high) {
        if (viscosity40 >= high) {
            return 100 * (low - viscosity40) / (low - high);
        }
        double exponent = Math.log(high / viscosity40) / Math.log(viscosity100 / MM2); // N, unit 1
        return 100 + (Math.exp(LN10 * exponent) - 1) / 0.00715;
    }

    private static double quadratic(double viscosity100, int first) {
        if (!(viscosity100 >= LEAST)) {
            throw new IllegalArgumentException(
                    "the viscosity index needs at least 2 mm²/s at 100 °C; given " + viscosity100 / MM2 + " mm²/s");
        }
        double y = viscosity100 / MM2;
        int row = QUADRATICS.length - 1;
        while (row > 0 && y < QUADRATICS[row][0]) {
            row--;
        }
        double[] q = QUADRATICS[row];
        return (q[first] * y * y + q[first + 1] * y + q[first + 2]) * MM2;
    }
}
