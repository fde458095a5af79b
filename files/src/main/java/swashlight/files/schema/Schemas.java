package swashlight.files.schema;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import swashlight.files.document.Heading;
import swashlight.files.document.Syntax;
import swashlight.files.document.TreeText;

/** The schemas as texts (JSON Schema 2020-12), by kind of file. */
public final class Schemas {
    private static final List<String> KINDS = List.of("drive", "case", "duty", "prices", "teardown", "papers");

    private Schemas() {}

    /** The kinds of file: drive, case, duty, prices, teardown, papers. */
    public static List<String> kinds() {
        return KINDS;
    }

    /** The schema of a kind. */
    public static String of(String kind) {
        return switch (kind) {
            case "drive" -> text(kind, "A drive", DriveSchema.shape(), Definitions.all());
            case "case" -> {
                Map<String, Object> definitions = Definitions.all();
                definitions.put("drive", DriveSchema.shape());
                yield text(kind, "A machine with a complaint", CaseSchema.shape(), definitions);
            }
            case "duty" -> text(kind, "What a drive is asked", DutySchema.shape(), Definitions.all());
            case "prices" -> text(kind, "What work and parts cost", PricesSchema.shape(), Definitions.all());
            case "teardown" -> {
                Map<String, Object> definitions = Definitions.all();
                definitions.put("drive", DriveSchema.shape());
                yield text(kind, "A drive opened and measured", TeardownSchema.shape(), definitions);
            }
            case "papers" ->
                text(kind, "What a maker's papers say of parts and screws", TeardownSchema.papers(), Definitions.all());
            default -> throw new IllegalArgumentException("there is no schema for " + kind + "; there are " + KINDS);
        };
    }

    private static String text(String kind, String title, Map<String, Object> shape, Map<String, Object> definitions) {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("$id", "urn:swashlight:" + kind + ":" + Heading.FORMAT);
        root.put("title", title);
        root.putAll(shape);
        root.put("$defs", definitions);
        return TreeText.of(root, Syntax.JSON);
    }
}
