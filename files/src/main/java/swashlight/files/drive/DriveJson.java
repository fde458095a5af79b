package swashlight.files.drive;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swashlight.drive.description.Parameter;
import swashlight.files.document.Heading;
import swashlight.files.unit.UnitSystem;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** A complete drive as JSON. */
final class DriveJson {
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private DriveJson() {}

    static String write(DriveFile file, UnitSystem system) {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("format", Heading.FORMAT);
        root.put("kind", "drive");
        root.put("name", file.drive().name());
        root.put("invented", file.drive().invented());
        if (!file.about().isEmpty()) {
            root.put("about", file.about());
        }
        root.put("level", file.level().word());
        DriveReader.sections().forEach((section, parameters) -> root.put(section, section(parameters, file, system)));
        return MAPPER.writeValueAsString(root) + "\n";
    }

    private static Map<String, Object> section(List<Parameter> parameters, DriveFile file, UnitSystem system) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (Parameter parameter : parameters) {
            Optional<String> note = Optional.ofNullable(file.notes().get(parameter));
            Map<String, String> parts =
                    QuantityText.parts(parameter, file.drive().quantity(parameter), note, system);
            values.put(parameter.term(), parts.size() == 1 ? parts.get("value") : parts);
        }
        return values;
    }
}
