package swashlight.desk.report;

import java.math.BigDecimal;
import swashlight.files.unit.Unit;

/**
 * A unit to show numbers in.
 *
 * @param unit its sign, empty for pure numbers
 * @param size SI value of one such unit
 * @param zero SI value of its zero
 */
public record Scale(String unit, double size, double zero) {
    /** The number to show for an SI value. */
    public double shown(double si) {
        return (si - zero) / size;
    }

    /** The number to show for a difference of two SI values, such as a spread. */
    public double shownDifference(double si) {
        return si / size;
    }

    /** The scale of a unit; for differences its zero is 0. */
    static Scale of(Unit unit, boolean difference) {
        double zero = difference ? 0 : unit.toSi(BigDecimal.ZERO);
        return new Scale(unit.symbol().replace("deg", "°"), unit.differenceToSi(BigDecimal.ONE), zero);
    }
}
