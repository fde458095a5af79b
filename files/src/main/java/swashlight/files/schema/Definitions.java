package swashlight.files.schema;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import swashlight.drive.description.Dimension;
import swashlight.files.document.Range;
import swashlight.files.unit.UnitSystem;

/** What every schema refers to: values with units of each dimension, alone, with a spread, and as a number of a drive. */
final class Definitions {
    private Definitions() {}

    static Map<String, Object> all() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("spread", Shapes.spread());
        for (Dimension dimension : Dimension.values()) {
            String name = Shapes.name(dimension);
            all.put(name, Shapes.scalar(dimension));
            all.put(name + "_measure", measure(name));
            all.put(name + "_quantity", quantity(name));
        }
        return all;
    }

    /** A reference to a value with its unit, told what it is and what it may be. */
    static Map<String, Object> measure(String description, Range range) {
        Map<String, Object> shape = Shapes.of("description", description + ", " + between(range));
        shape.putAll(Shapes.reference(Shapes.name(range.dimension()) + "_measure"));
        return shape;
    }

    static String between(Range range) {
        return between(range.low(), range.high(), range.dimension());
    }

    static String between(double low, double high, Dimension dimension) {
        return UnitSystem.SI.show(low, dimension) + " … " + UnitSystem.SI.show(high, dimension);
    }

    private static Map<String, Object> measure(String name) {
        Map<String, Object> parts = new LinkedHashMap<>();
        parts.put("value", Shapes.reference(name));
        parts.put("spread", Shapes.reference("spread"));
        return Shapes.anyOf(List.of(Shapes.reference(name), Shapes.keys(parts, List.of("value"))));
    }

    private static Map<String, Object> quantity(String name) {
        Map<String, Object> parts = new LinkedHashMap<>();
        parts.put("value", Shapes.reference(name));
        parts.put("spread", Shapes.reference("spread"));
        parts.put("origin", Shapes.words("where the number comes from", List.of("given", "fitted", "typical")));
        parts.put("note", Shapes.text("a remark"));
        return Shapes.anyOf(List.of(Shapes.reference(name), Shapes.keys(parts, List.of("value"))));
    }
}
