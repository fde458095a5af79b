package swashlight.files.drive;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import swashlight.drive.description.Parameter;
import swashlight.files.document.Heading;
import swashlight.files.document.QuotedText;
import swashlight.files.unit.UnitSystem;

/** A complete drive as YAML, one number a line. */
final class DriveYaml {
    private DriveYaml() {}

    static String write(DriveFile file, UnitSystem system) {
        StringBuilder yaml = new StringBuilder();
        line(yaml, "format", Integer.toString(Heading.FORMAT));
        line(yaml, "kind", "drive");
        line(yaml, "name", QuotedText.of(file.drive().name()));
        line(yaml, "invented", Boolean.toString(file.drive().invented()));
        if (!file.about().isEmpty()) {
            line(yaml, "about", QuotedText.of(file.about()));
        }
        line(yaml, "level", file.level().word());
        DriveReader.sections().forEach((section, parameters) -> section(yaml, section, parameters, file, system));
        return yaml.toString();
    }

    private static void section(
            StringBuilder yaml, String section, List<Parameter> parameters, DriveFile file, UnitSystem system) {
        yaml.append(section).append(":\n");
        for (Parameter parameter : parameters) {
            Optional<String> note = Optional.ofNullable(file.notes().get(parameter));
            Map<String, String> parts =
                    QuantityText.parts(parameter, file.drive().quantity(parameter), note, system);
            yaml.append("  ");
            line(yaml, parameter.term(), parts.size() == 1 ? parts.get("value") : flow(parts));
        }
    }

    private static String flow(Map<String, String> parts) {
        return parts.entrySet().stream()
                .map(part -> part.getKey() + ": "
                        + (part.getKey().equals("note") ? QuotedText.of(part.getValue()) : part.getValue()))
                .collect(Collectors.joining(", ", "{", "}"));
    }

    private static void line(StringBuilder yaml, String key, String value) {
        yaml.append(key).append(": ").append(value).append('\n');
    }
}
