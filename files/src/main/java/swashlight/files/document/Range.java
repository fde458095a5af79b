package swashlight.files.document;

import java.util.Optional;
import swashlight.drive.description.Dimension;
import swashlight.files.unit.Suggestion;
import swashlight.files.unit.UnitAnswer;
import swashlight.files.unit.UnitSystem;
import swashlight.files.unit.UnitText;

/**
 * What a value may be.
 *
 * @param dimension what it measures
 * @param low least value, SI unit of the dimension
 * @param high greatest value, SI unit of the dimension
 * @param grade true for a slope, which may be given in per cent
 */
public record Range(Dimension dimension, double low, double high, boolean grade) {
    /** A range of an ordinary value; low and high in the SI unit of the dimension. */
    public static Range of(Dimension dimension, double low, double high) {
        return new Range(dimension, low, high, false);
    }

    /** A slope; low and high in rad. */
    public static Range slope(double low, double high) {
        return new Range(Dimension.ANGLE, low, high, true);
    }

    UnitAnswer read(String text) {
        return grade ? UnitText.readSlope(text) : UnitText.read(text, dimension);
    }

    boolean holds(double value) {
        return value >= low && value <= high;
    }

    /** What would be right instead of a value outside. */
    String advice(UnitAnswer.Understood given) {
        Optional<String> meant = grade ? Optional.empty() : Suggestion.of(given, low, high);
        String range = "a value between " + UnitSystem.SI.show(low, dimension) + " and "
                + UnitSystem.SI.show(high, dimension) + " is right";
        return range + meant.map(text -> ". Did you mean " + text + "?").orElse("");
    }

    String right() {
        return UnitText.right(dimension) + (grade ? ", or a grade in %" : "");
    }
}
