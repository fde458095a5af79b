package swashlight.checks;

import java.util.ArrayList;
import java.util.List;

/** A comma-separated text with a header line, quoted fields and doubled quotes (RFC 4180); lines starting with # are remarks. */
final class CsvTable {

    private final String name;
    private final List<String> header;
    private final List<Line> lines;

    private CsvTable(String name, List<String> header, List<Line> lines) {
        this.name = name;
        this.header = header;
        this.lines = lines;
    }

    /** One line of the table; {@code number} counts from 1 as an editor does. */
    record Line(int number, List<String> fields) {}

    static CsvTable parse(String name, String text) {
        List<String> header = null;
        List<Line> lines = new ArrayList<>();
        int number = 0;
        for (String raw : text.split("\n")) {
            number++;
            String line = raw.endsWith("\r") ? raw.substring(0, raw.length() - 1) : raw;
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            List<String> fields = fields(name, number, line);
            if (header == null) {
                header = fields;
            } else if (fields.size() != header.size()) {
                throw new IllegalArgumentException(
                        name + ", line " + number + ": " + fields.size() + " fields, the header has " + header.size());
            } else {
                lines.add(new Line(number, fields));
            }
        }
        return new CsvTable(name, header == null ? List.of() : header, lines);
    }

    List<Line> lines() {
        return lines;
    }

    String field(Line line, String column) {
        int at = header.indexOf(column);
        if (at < 0) {
            throw new IllegalArgumentException(name + ": no column '" + column + "', there are " + header);
        }
        return line.fields().get(at);
    }

    private static List<String> fields(String name, int number, String line) {
        List<String> fields = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                field.append('"');
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                fields.add(field.toString());
                field.setLength(0);
            } else {
                field.append(c);
            }
        }
        if (quoted) {
            throw new IllegalArgumentException(name + ", line " + number + ": a quote is not closed");
        }
        fields.add(field.toString());
        return fields;
    }
}
