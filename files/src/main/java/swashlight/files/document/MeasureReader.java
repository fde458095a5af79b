package swashlight.files.document;

import java.util.Optional;
import java.util.OptionalDouble;
import swashlight.drive.description.Dimension;
import swashlight.files.unit.UnitAnswer;
import swashlight.files.unit.UnitSystem;
import swashlight.files.unit.UnitText;

/** One value with its unit, held against its range. */
final class MeasureReader {
    private static final double PER_CENT = 0.01;

    private final Fields fields;
    private final String key;
    private final Range range;

    MeasureReader(Fields fields, String key, Range range) {
        this.fields = fields;
        this.key = key;
        this.range = range;
    }

    Optional<Measure> value(String text) {
        UnitAnswer answer = range.read(text);
        if (answer instanceof UnitAnswer.Refused refused) {
            return refuse(text, refused);
        }
        UnitAnswer.Understood value = (UnitAnswer.Understood) answer;
        if (!range.holds(value.value())) {
            fields.complain("out-of-range", key, text, outside(value.value()), range.advice(value));
            return Optional.empty();
        }
        if (value.spread().isPresent() && !sensible(value.spread().getAsDouble())) {
            return spreadFault(text);
        }
        return Optional.of(new Measure(value.value(), value.spread()));
    }

    OptionalDouble spread(String text, double beside) {
        boolean share = text.strip().endsWith("%") && range.dimension() != Dimension.NUMBER && !range.grade();
        UnitAnswer answer =
                share ? UnitText.read(text, Dimension.NUMBER) : UnitText.readDifference(text, range.dimension());
        if (answer instanceof UnitAnswer.Refused refused) {
            refuse(text, refused);
            return OptionalDouble.empty();
        }
        UnitAnswer.Understood understood = (UnitAnswer.Understood) answer;
        double spread = share ? Math.abs(beside) * understood.number().doubleValue() * PER_CENT : understood.value();
        if (!sensible(spread)) {
            spreadFault(text);
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(spread);
    }

    private Optional<Measure> spreadFault(String text) {
        fields.complain(
                "bad-spread",
                key,
                text,
                "a spread is one standard deviation",
                "write a positive number, or 0 where it is exact");
        return Optional.empty();
    }

    private Optional<Measure> refuse(String text, UnitAnswer.Refused refused) {
        fields.complain(refused.key(), key, text, refused.wrong(), refused.right());
        return Optional.empty();
    }

    /** No spread is wider than the whole range, either way. */
    private boolean sensible(double spread) {
        return spread >= 0 && spread <= Math.max(range.high() - range.low(), Math.abs(range.high())) * 1e3;
    }

    private String outside(double value) {
        boolean small = value < range.low();
        return small
                ? "this is less than " + UnitSystem.SI.show(range.low(), range.dimension())
                : "this is more than " + UnitSystem.SI.show(range.high(), range.dimension());
    }
}
