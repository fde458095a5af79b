package swashlight.files.schema;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import swashlight.drive.description.Dimension;
import swashlight.files.machine.Condition;
import swashlight.files.machine.ReadingRange;
import swashlight.files.wear.TeardownFiles;
import swashlight.findings.wear.Requirement;
import swashlight.findings.wear.WearPart;

/** The shapes of a teardown and of what a drive's papers say. */
final class TeardownSchema {
    private TeardownSchema() {}

    static Map<String, Object> shape() {
        Map<String, Object> properties = DriveSchema.heading("teardown");
        properties.put(
                "drive",
                Shapes.anyOf(List.of(
                        Shapes.text("a drive file beside this one, or demo: and a name"), Shapes.reference("drive"))));
        properties.put("required", Shapes.list(requirement()));
        properties.put("measured", Shapes.list(measured()));
        properties.put(
                "papers",
                Shapes.anyOf(List.of(Shapes.text("a file of papers beside this one"), Shapes.keys(said(), List.of()))));
        return Shapes.keys(properties, List.of("drive", "measured"));
    }

    static Map<String, Object> papers() {
        Map<String, Object> properties = DriveSchema.heading("papers");
        properties.putAll(said());
        return Shapes.keys(properties, List.of());
    }

    private static Map<String, Object> requirement() {
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put(
                "share", Definitions.measure("of what the drive as described does there", TeardownFiles.share()));
        for (Requirement.Kind kind : Requirement.Kind.values()) {
            properties.put(
                    kind.key(),
                    Definitions.measure(
                            kind.moreIsBetter() ? "at least" : "at most, engine off, at neutral",
                            ReadingRange.of(kind.reading())));
        }
        properties.put("of", Shapes.words("what the share is of; usual: speed", List.of("speed", "pull", "roll")));
        properties.put("direction", Shapes.words("which way", List.of("forward", "reverse")));
        for (Condition condition : List.of(Condition.SLOPE, Condition.LOAD, Condition.OIL_TEMPERATURE)) {
            properties.put(condition.key(), Definitions.measure(condition.meaning(), condition.range()));
        }
        return Shapes.keys(properties, List.of());
    }

    private static Map<String, Object> measured() {
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put("part", Shapes.words("which part", keys()));
        properties.put(
                "shows",
                described("what the gauge shows: a play, a depth, a spring's length, a seat's leak", Dimension.LENGTH));
        properties.put("error", Shapes.reference("spread"));
        properties.put("bias", described("by how much the gauge shows too much", Dimension.LENGTH));
        properties.put("gauge", Shapes.text("its name: gauges of one name share their bias"));
        properties.put("readings", Shapes.reference("number_measure"));
        properties.put("width", Definitions.measure("of a score", TeardownFiles.width()));
        properties.put("form", Shapes.reference("number_measure"));
        properties.put("new", Shapes.reference("length_measure"));
        properties.put("testPressure", Shapes.reference("pressure_measure"));
        properties.put("testDensity", Shapes.reference("density_measure"));
        properties.put("note", Shapes.text("a remark"));
        return Shapes.keys(properties, List.of("part", "shows"));
    }

    private static Map<String, Object> said() {
        Map<String, Object> parts = new LinkedHashMap<>();
        for (String key : keys()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("most", described("most wear its maker allows", Dimension.LENGTH));
            one.put("mayBeLapped", Shapes.flag("whether it may be lapped"));
            one.put("lapAtMost", Shapes.reference("length_measure"));
            one.put("freshLength", Shapes.reference("length_measure"));
            one.put("source", Shapes.text("where that is written"));
            parts.put(key, Shapes.keys(one, List.of("source")));
        }
        Map<String, Object> torque = new LinkedHashMap<>();
        torque.put("screw", Shapes.text("which"));
        torque.put("torque", Definitions.measure("how tight", TeardownFiles.torque()));
        torque.put("order", Shapes.text("of tightening"));
        torque.put("source", Shapes.text("where that is written"));
        Map<String, Object> said = new LinkedHashMap<>();
        said.put("parts", Shapes.keys(parts, List.of()));
        said.put("torques", Shapes.list(Shapes.keys(torque, List.of("screw", "torque", "source"))));
        return said;
    }

    /** A length, or a flow for a valve. */
    private static Map<String, Object> described(String description, Dimension length) {
        Map<String, Object> shape = Shapes.anyOf(List.of(
                Shapes.reference(Shapes.name(length) + "_measure"),
                Shapes.reference(Shapes.name(Dimension.FLOW) + "_measure")));
        shape.put("description", description);
        return shape;
    }

    private static List<String> keys() {
        return WearPart.all().stream().map(WearPart::key).toList();
    }
}
