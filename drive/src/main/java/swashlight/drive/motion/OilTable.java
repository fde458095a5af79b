package swashlight.drive.motion;

import swashlight.drive.oil.OilAt;

/**
 * Density ratio and gap pressure of one oil at one temperature, tabled against pressure: the laws of {@link OilAt} are smooth, and a hot
 * loop asks for them millions of times a second.
 *
 * <pre>
 *   y = p + p_s                     cells: 64 even ones between y = 2ⁿ and 2ⁿ⁺¹, fine where air makes the oil soft
 *   d(p), ψ(p)                      cubic through values and slopes of the law, value and slope continuous
 *   d = d_c (p − p_e)/(p_c − p_e)   below the cavity pressure p_c: oil is missing; p_e = 0.8 p_c is an empty space
 *
 *   p    absolute pressure          Pa     p_e … 500e6
 *   d    density ÷ ρ₀, with what is missing   1
 *   ψ    gap pressure               Pa
 * </pre>
 *
 * So absolute pressure stays positive, and an empty space sits at the cavity pressure, as in the steady view. Error against the laws: see
 * the tests. Source: cubic Hermite interpolation; cells read off the number's own binary form, own idea.
 */
final class OilTable {
    private static final double SHIFT = 1024; // p_s, Pa
    private static final double HIGHEST = 5e8; // Pa
    private static final double EMPTY_SHARE = 0.8; // p_e ÷ p_c, 1
    private static final int CELL_BITS = 6;
    private static final int DROP = 52 - CELL_BITS;
    private static final int WIDTH = 10; // start, 1/width, four coefficients of d, four of ψ

    private final double[] cells;
    private final int first;
    private final int last = cell(HIGHEST + SHIFT);
    final double cavityPressure; // p_c, Pa
    final double emptyPressure; // p_e, Pa
    private final double cavitySlope; // 1/Pa
    private final double cavityGapPressure; // Pa

    double density; // 1
    double densitySlope; // 1/Pa
    double gapPressure; // Pa
    double gapSlope; // 1

    OilTable(OilAt oil) {
        cavityPressure = oil.cavityPressure();
        emptyPressure = EMPTY_SHARE * cavityPressure;
        first = cell(cavityPressure + SHIFT);
        cells = new double[(last - first + 1) * WIDTH];
        double[] before = new double[4];
        double[] after = new double[4];
        double lowest = cavityPressure / 2; // below every pressure asked for
        oil.evaluate(Math.max(lowest, start(first) - SHIFT), before, 0);
        for (int index = first; index <= last; index++) {
            double start = start(index);
            double end = start(index + 1);
            double width = end - start;
            oil.evaluate(end - SHIFT, after, 0);
            int at = (index - first) * WIDTH;
            cells[at] = start;
            cells[at + 1] = 1 / width;
            hermite(at + 2, before[0], after[0], before[1] * width, after[1] * width);
            hermite(at + 6, before[2], after[2], before[3] * width, after[3] * width);
            System.arraycopy(after, 0, before, 0, 4);
        }
        tabled(cavityPressure);
        cavitySlope = density / (cavityPressure - emptyPressure);
        cavityGapPressure = gapPressure;
    }

    /** Sets the four values at an absolute pressure, Pa. */
    void at(double pressure) {
        if (pressure >= cavityPressure) {
            tabled(pressure);
        } else {
            density = cavitySlope * (pressure - emptyPressure);
            densitySlope = cavitySlope;
            gapPressure = cavityGapPressure + (pressure - cavityPressure);
            gapSlope = 1;
        }
    }

    private static int cell(double y) {
        return (int) (Double.doubleToRawLongBits(y) >>> DROP);
    }

    private static double start(int cell) {
        return Double.longBitsToDouble((long) cell << DROP);
    }

    private void hermite(int at, double start, double end, double startSlope, double endSlope) {
        cells[at] = start;
        cells[at + 1] = startSlope;
        cells[at + 2] = 3 * (end - start) - 2 * startSlope - endSlope;
        cells[at + 3] = 2 * (start - end) + startSlope + endSlope;
    }

    private void tabled(double pressure) {
        double y = pressure + SHIFT;
        int c = (Math.min(last, cell(y)) - first) * WIDTH;
        double perPressure = cells[c + 1];
        double s = (y - cells[c]) * perPressure;
        double d2 = cells[c + 4];
        double d3 = cells[c + 5];
        density = cells[c + 2] + s * (cells[c + 3] + s * (d2 + s * d3));
        densitySlope = (cells[c + 3] + s * (2 * d2 + 3 * s * d3)) * perPressure;
        double g2 = cells[c + 8];
        double g3 = cells[c + 9];
        gapPressure = cells[c + 6] + s * (cells[c + 7] + s * (g2 + s * g3));
        gapSlope = (cells[c + 7] + s * (2 * g2 + 3 * s * g3)) * perPressure;
    }
}
