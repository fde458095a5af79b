package swashlight.files.drive;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import swashlight.drive.description.Origin;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Quantity;
import swashlight.files.unit.UnitSystem;

/** One number as it is written: its parts, of which value is always there. */
final class QuantityText {
    private QuantityText() {}

    /** Value alone when it is given and exact; else also spread, origin and note. */
    static Map<String, String> parts(Parameter parameter, Quantity quantity, Optional<String> note, UnitSystem system) {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("value", system.exact(quantity.value(), parameter.dimension()));
        if (quantity.spread() != 0) {
            parts.put("spread", system.exactDifference(quantity.spread(), quantity.value(), parameter.dimension()));
        }
        if (quantity.origin() != Origin.GIVEN) {
            parts.put("origin", quantity.origin().name().toLowerCase(Locale.ROOT));
        }
        note.ifPresent(text -> parts.put("note", text));
        return parts;
    }
}
