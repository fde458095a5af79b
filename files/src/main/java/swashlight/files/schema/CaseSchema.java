package swashlight.files.schema;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.files.machine.Condition;
import swashlight.files.machine.ReadingRange;
import swashlight.findings.reading.Look;
import swashlight.findings.reading.ReadingKind;

/** The shape of a case. */
final class CaseSchema {
    private CaseSchema() {}

    static Map<String, Object> shape() {
        Map<String, Object> properties = DriveSchema.heading("case");
        properties.put("complaint", Shapes.text("the customer's words"));
        properties.put(
                "drive",
                Shapes.anyOf(List.of(
                        Shapes.text("a drive file beside this one, or demo: and a name"), Shapes.reference("drive"))));
        properties.put("usual", Shapes.keys(conditions(), List.of()));
        properties.put("readings", Shapes.list(reading()));
        Map<String, Object> look = Shapes.words(
                "what eyes, ears and nose report",
                Arrays.stream(Look.values()).map(Look::key).toList());
        properties.put("seen", Shapes.list(look));
        properties.put("notSeen", Shapes.list(look));
        return Shapes.keys(properties, List.of("drive"));
    }

    private static Map<String, Object> reading() {
        Map<String, Object> properties = new LinkedHashMap<>();
        for (ReadingKind kind : ReadingKind.values()) {
            properties.put(kind.key(), value(kind));
        }
        properties.put("error", Shapes.reference("spread"));
        properties.put("bias", bias());
        properties.put("label", Shapes.text("its author's name for the reading"));
        properties.put("note", Shapes.text("a remark"));
        properties.put(
                "part",
                Shapes.words(
                        "what a dimension at teardown measures",
                        Parameters.all().stream().map(Parameter::key).toList()));
        conditions().forEach(properties::putIfAbsent);
        Map<String, Object> shape = Shapes.keys(properties, List.of());
        shape.put("oneOf", oneKind());
        return shape;
    }

    /** One kind, beside which the input speed is a condition; or the input speed alone. */
    private static List<Map<String, Object>> oneKind() {
        List<Map<String, Object>> others = Arrays.stream(ReadingKind.values())
                .filter(kind -> kind != ReadingKind.INPUT_SPEED)
                .map(kind -> Shapes.of("required", List.of(kind.key())))
                .toList();
        List<Map<String, Object>> all = new ArrayList<>(others);
        all.add(Shapes.of("required", List.of(ReadingKind.INPUT_SPEED.key()), "not", Shapes.anyOf(others)));
        return all;
    }

    private static Map<String, Object> value(ReadingKind kind) {
        if (kind == ReadingKind.PART_DIMENSION) {
            return Shapes.anyOf(Parameters.all().stream()
                    .map(Parameter::dimension)
                    .distinct()
                    .map(dimension -> Shapes.reference(Shapes.name(dimension) + "_measure"))
                    .toList());
        }
        return Definitions.measure(kind.key(), ReadingRange.of(kind));
    }

    private static Map<String, Object> bias() {
        List<Map<String, Object>> measures = Stream.concat(
                        Arrays.stream(ReadingKind.values()).map(ReadingKind::dimension),
                        Parameters.all().stream().map(Parameter::dimension))
                .distinct()
                .map(dimension -> Shapes.reference(Shapes.name(dimension) + "_measure"))
                .toList();
        Map<String, Object> shape = Shapes.of("description", "by how much the instrument shows too much");
        shape.putAll(Shapes.anyOf(measures));
        return shape;
    }

    private static Map<String, Object> conditions() {
        Map<String, Object> properties = new LinkedHashMap<>();
        for (Condition condition : Condition.values()) {
            properties.put(condition.key(), Definitions.measure(condition.meaning(), condition.range()));
        }
        properties.put("direction", Shapes.words("which way it was driven", List.of("forward", "reverse")));
        properties.put("lifted", Shapes.flag("the wheels were clear of the ground"));
        properties.put("held", Shapes.flag("the wheels were held"));
        properties.put("backwards", Shapes.flag("it rolled or was pushed backwards"));
        return properties;
    }
}
