package swashlight.files.drive;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import swashlight.drive.description.Origin;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Quantity;
import swashlight.files.document.Heading;
import swashlight.files.unit.UnitSystem;

/** A complete drive as a tree to write, its numbers in a system of units. */
public final class DriveTree {
    private DriveTree() {}

    /** The whole file. */
    public static Map<String, Object> of(DriveFile file, UnitSystem system) {
        Map<String, Object> root =
                Heading.tree("drive", file.drive().name(), file.drive().invented(), file.about());
        root.put("level", file.level().word());
        DriveReader.sections().forEach((section, parameters) -> root.put(section, section(parameters, file, system)));
        return root;
    }

    private static Map<String, Object> section(List<Parameter> parameters, DriveFile file, UnitSystem system) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (Parameter parameter : parameters) {
            Optional<String> note = Optional.ofNullable(file.notes().get(parameter));
            Map<String, String> parts = parts(parameter, file.drive().quantity(parameter), note, system);
            values.put(parameter.term(), parts.size() == 1 ? parts.get("value") : parts);
        }
        return values;
    }

    /** Value alone when it is given and exact; else also spread, origin and note. */
    private static Map<String, String> parts(
            Parameter parameter, Quantity quantity, Optional<String> note, UnitSystem system) {
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
