package swashlight.files.drive;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import swashlight.drive.description.Origin;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Quantity;
import swashlight.files.document.Fields;
import swashlight.files.document.Measure;
import swashlight.files.document.Node;
import swashlight.files.document.Range;

/** One number of a drive: {@code 12 µm}, {@code 12 ± 3 µm}, or value, spread, origin and note as keys. */
final class QuantityReader {
    private static final Map<String, Origin> ORIGINS =
            Map.of("given", Origin.GIVEN, "fitted", Origin.FITTED, "typical", Origin.TYPICAL);

    private final Optional<Quantity> quantity;
    private Optional<String> note = Optional.empty();

    QuantityReader(Fields section, Parameter parameter, int longestNote) {
        Range range = Range.of(parameter.dimension(), parameter.low(), parameter.high());
        boolean parted = section.node(parameter.term())
                .filter(Node.Branch.class::isInstance)
                .isPresent();
        this.quantity = parted
                ? section.branch(parameter.term()).flatMap(parts -> parted(parts, range, longestNote))
                : section.measure(parameter.term(), range)
                        .map(measure ->
                                new Quantity(measure.value(), measure.spread().orElse(0), Origin.GIVEN));
    }

    Optional<Quantity> quantity() {
        return quantity;
    }

    Optional<String> note() {
        return note;
    }

    private Optional<Quantity> parted(Fields parts, Range range, int longestNote) {
        Optional<Measure> value = parts.scalar("value", range);
        if (!parts.has("value")) {
            parts.complain("missing", "value", "", "the value is missing", "write value: and spread: below it");
        }
        OptionalDouble spread = value.isPresent() ? parts.spread("spread", range, value.get()) : OptionalDouble.empty();
        parts.node("spread");
        Optional<Origin> origin = parts.choice("origin", ORIGINS);
        note = parts.text("note", longestNote);
        parts.close();
        return value.map(measure ->
                new Quantity(measure.value(), spread.orElse(measure.spread().orElse(0)), origin.orElse(Origin.GIVEN)));
    }
}
