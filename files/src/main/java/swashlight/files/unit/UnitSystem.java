package swashlight.files.unit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import swashlight.drive.description.Dimension;

/** The two systems in which values are written: a unit for each dimension and size, and the digits to show. */
public enum UnitSystem {
    /** Metric, in the units of the trade: bar, rpm, °C, L/min. */
    SI,
    /** United States customary units: psi, °F, ft·lbf, gpm. */
    US;

    private static final MathContext SHOWN = new MathContext(4, RoundingMode.HALF_EVEN);
    private static final int MOST_DIGITS = 40;

    /** The unit in which a value of this size (SI unit of the dimension) is written. */
    public Unit unit(Dimension dimension, double si) {
        return UnitChoice.of(this, dimension, Math.abs(si));
    }

    /** For people: four digits and a typographic unit, {@code 7.1 cm³/rev}; value in the SI unit of the dimension. */
    public String show(double si, Dimension dimension) {
        Unit unit = unit(dimension, si);
        return text(unit.fromSi(si).round(SHOWN), unit.symbol());
    }

    /** For people: a difference or a spread, so that 3 K is 3 K and never −270 °C; SI unit of the dimension. */
    public String showDifference(double si, Dimension dimension) {
        Unit unit = unit(dimension, si);
        return text(unit.differenceFromSi(si).round(SHOWN), differenceLabel(unit.symbol()));
    }

    /** For files: the shortest text that reads back as the same value, to the last bit; SI unit of the dimension. */
    public String exact(double si, Dimension dimension) {
        Unit unit = unit(dimension, si);
        BigDecimal full = unit.fromSi(si);
        for (int digits = 1; digits < MOST_DIGITS; digits++) {
            BigDecimal rounded = full.round(new MathContext(digits));
            if (same(unit.toSi(rounded), si)) {
                return text(rounded, unit.label());
            }
        }
        return text(full, unit.label());
    }

    /** For files: a spread that reads back the same, written beside a value; both in the SI unit of the dimension. */
    public String exactDifference(double si, double beside, Dimension dimension) {
        Unit unit = unit(dimension, beside);
        BigDecimal full = unit.differenceFromSi(si);
        for (int digits = 1; digits < MOST_DIGITS; digits++) {
            BigDecimal rounded = full.round(new MathContext(digits));
            if (same(unit.differenceToSi(rounded), si)) {
                return text(rounded, differenceLabel(unit.label()));
            }
        }
        return text(full, differenceLabel(unit.label()));
    }

    private static boolean same(double one, double other) {
        return one == other; // 0 and −0 are the same value in a file
    }

    private static String differenceLabel(String label) {
        return label.equals("°C") ? "K" : label;
    }

    private static String text(BigDecimal number, String label) {
        String digits = plain(number);
        return label.isEmpty() ? digits : digits + " " + label;
    }

    /** Plain digits for ordinary sizes, an exponent beyond. */
    private static String plain(BigDecimal number) {
        if (number.signum() == 0) {
            return "0";
        }
        BigDecimal bare = number.stripTrailingZeros();
        int exponent = bare.precision() - bare.scale() - 1;
        boolean ordinary = exponent >= -5 && exponent <= 8;
        return ordinary ? bare.toPlainString() : bare.movePointLeft(exponent).toPlainString() + "e" + exponent;
    }
}
