package swashlight.files.unit;

import java.math.BigDecimal;
import swashlight.drive.description.Dimension;

/**
 * A unit of one dimension, with its exact way to SI.
 *
 * <pre>
 *   SI value   = (number + offset) · factor
 *   difference = number · factor               (a spread of 3 °C is 3 K)
 * </pre>
 */
public final class Unit {
    private final String label;
    private final String symbol;
    private final Dimension dimension;
    private final BigDecimal factor;
    private final BigDecimal inverse;
    private final BigDecimal offset;

    Unit(String label, String symbol, Dimension dimension, Fraction factor, BigDecimal offset) {
        this.label = label;
        this.symbol = symbol;
        this.dimension = dimension;
        this.factor = factor.decimal();
        this.inverse = Fraction.ONE.over(factor).decimal();
        this.offset = offset;
    }

    /** As written in files: cm3/rev. Empty for a plain number. */
    public String label() {
        return label;
    }

    /** As shown to people: cm³/rev. Empty for a plain number. */
    public String symbol() {
        return symbol;
    }

    /** What it measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** The SI value of a number of these units: the nearest double. */
    public double toSi(BigDecimal number) {
        return number.add(offset).multiply(factor).doubleValue();
    }

    /** The SI value of a difference of so many units. */
    public double differenceToSi(BigDecimal number) {
        return number.multiply(factor).doubleValue();
    }

    /** How many of these units an SI value is, to some 60 digits. */
    BigDecimal fromSi(double si) {
        return new BigDecimal(si).multiply(inverse).subtract(offset);
    }

    /** How many of these units an SI difference is, to some 60 digits. */
    BigDecimal differenceFromSi(double si) {
        return new BigDecimal(si).multiply(inverse);
    }

    /** This unit over another of the same dimension, unit 1. */
    double ratio(Unit other) {
        return factor.multiply(other.inverse).doubleValue();
    }

    boolean shifted() {
        return offset.signum() != 0;
    }

    @Override
    public String toString() {
        return label.isEmpty() ? "1" : label;
    }
}
