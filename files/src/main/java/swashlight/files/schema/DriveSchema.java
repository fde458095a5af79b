package swashlight.files.schema;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import swashlight.drive.description.Parameter;
import swashlight.files.document.Heading;
import swashlight.files.drive.DriveLevel;
import swashlight.files.drive.DriveReader;
import swashlight.files.drive.OilGrade;

/** The shape of a drive, of a file of its own or below a key. */
final class DriveSchema {
    private DriveSchema() {}

    static Map<String, Object> shape() {
        Map<String, Object> properties = heading("drive");
        properties.put(
                "level",
                Shapes.words(
                        "how much is known; follows from the numbers when left out",
                        Arrays.stream(DriveLevel.values()).map(DriveLevel::word).toList()));
        DriveReader.sections().forEach((section, parameters) -> properties.put(section, section(section, parameters)));
        return Shapes.keys(properties, List.of());
    }

    static Map<String, Object> heading(String kind) {
        Map<String, Object> properties = new LinkedHashMap<>();
        String format = Integer.toString(Heading.FORMAT);
        properties.put("format", Shapes.words("version of the file format", List.of(Heading.FORMAT, format)));
        properties.put("kind", Shapes.words("kind of file", List.of(kind)));
        properties.put("name", Shapes.text("its author's name for it"));
        properties.put("invented", Shapes.flag("true for what nobody builds or owns"));
        properties.put("about", Shapes.text("a sentence or two"));
        return properties;
    }

    private static Map<String, Object> section(String section, List<Parameter> parameters) {
        Map<String, Object> properties = new LinkedHashMap<>();
        if (section.equals("oil")) {
            properties.put("grade", Shapes.words("stands for typical viscosities", grades()));
        }
        for (Parameter parameter : parameters) {
            Map<String, Object> shape = Shapes.of(
                    "description",
                    parameter.meaning() + ", "
                            + Definitions.between(parameter.low(), parameter.high(), parameter.dimension()));
            shape.putAll(Shapes.reference(Shapes.name(parameter.dimension()) + "_quantity"));
            properties.put(parameter.term(), shape);
        }
        return Shapes.keys(properties, List.of());
    }

    private static List<String> grades() {
        return OilGrade.all().stream()
                .flatMap(grade -> List.of(grade.name(), grade.shortName()).stream())
                .toList();
    }
}
