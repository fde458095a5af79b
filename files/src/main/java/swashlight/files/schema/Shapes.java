package swashlight.files.schema;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import swashlight.drive.description.Dimension;
import swashlight.files.unit.UnitText;

/** The small shapes of which the schemas consist. Patterns are wider than the readers, which know every spelling of a unit. */
final class Shapes {
    private static final String NUMBER_FIRST = "^[^0-9.+\\-\u2212]*[-+\u2212]?\\.?[0-9]";
    private static final String NUMBER_WITH_UNIT = NUMBER_FIRST + "[\\s\\S]*[^0-9.+\\-\\s]";

    private Shapes() {}

    /** Keys of which no other may stand there. */
    static Map<String, Object> keys(Map<String, Object> properties, List<String> required) {
        Map<String, Object> shape = new LinkedHashMap<>();
        shape.put("type", "object");
        shape.put("properties", properties);
        if (!required.isEmpty()) {
            shape.put("required", required);
        }
        shape.put("additionalProperties", false);
        return shape;
    }

    static Map<String, Object> list(Map<String, Object> items) {
        return of("type", "array", "items", items);
    }

    /** Free text; a bare number or flag is text too. */
    static Map<String, Object> text(String description) {
        return of("description", description, "type", List.of("string", "number", "boolean"));
    }

    static Map<String, Object> flag(String description) {
        return of("description", description, "enum", List.of(true, false, "true", "false"));
    }

    static Map<String, Object> words(String description, List<?> words) {
        return of("description", description, "enum", words);
    }

    static Map<String, Object> reference(String definition) {
        return of("$ref", "#/$defs/" + definition);
    }

    static Map<String, Object> anyOf(List<?> shapes) {
        return of("anyOf", shapes);
    }

    /** A number with its unit, a spread behind ± allowed. */
    static Map<String, Object> scalar(Dimension dimension) {
        return dimension == Dimension.NUMBER
                ? of(
                        "description",
                        UnitText.right(dimension),
                        "type",
                        List.of("number", "string"),
                        "pattern",
                        NUMBER_FIRST)
                : of("description", UnitText.right(dimension), "type", "string", "pattern", NUMBER_WITH_UNIT);
    }

    /** A spread: in the value's unit or in per cent of it. */
    static Map<String, Object> spread() {
        return of(
                "description",
                "one standard deviation, in the value's unit or in % of it",
                "type",
                List.of("number", "string"),
                "pattern",
                NUMBER_FIRST);
    }

    static String name(Dimension dimension) {
        return dimension.name().toLowerCase(Locale.ROOT);
    }

    static Map<String, Object> of(Object... pairs) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put((String) pairs[i], pairs[i + 1]);
        }
        return map;
    }
}
