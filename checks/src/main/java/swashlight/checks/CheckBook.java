package swashlight.checks;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The rows of one theme, read from {@code <theme>.csv} beside this class.
 *
 * @param theme the file's name without its ending
 * @param rows  in the order of the file
 */
public record CheckBook(String theme, List<CheckRow> rows) {

    private static final List<String> THEMES = List.of(
            "units",
            "oil",
            "kinematics",
            "gap",
            "efficiency",
            "circuit",
            "vehicle",
            "heat",
            "gear",
            "numerics",
            "statistics");

    public CheckBook {
        rows = List.copyOf(rows);
    }

    /** All themes there are. */
    public static List<String> themes() {
        return THEMES;
    }

    /** The rows of a theme. */
    public static CheckBook read(String theme) {
        return parse(theme, resource(theme));
    }

    /** The rows no law answers yet, with the room that will. */
    public static List<Later> later() {
        CsvTable table = CsvTable.parse("later.csv", resource("later"));
        List<Later> later = new ArrayList<>();
        for (CsvTable.Line line : table.lines()) {
            later.add(new Later(table.field(line, "id"), table.field(line, "room"), table.field(line, "why")));
        }
        return List.copyOf(later);
    }

    /** Reads a book from its text: for a browser, or a peer that has no class path. */
    public static CheckBook parse(String theme, String text) {
        CsvTable table = CsvTable.parse(theme + ".csv", text);
        List<CheckRow> rows = new ArrayList<>();
        for (CsvTable.Line line : table.lines()) {
            try {
                rows.add(row(table, line));
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(theme + ".csv, line " + line.number() + ": " + e.getMessage(), e);
            }
        }
        return new CheckBook(theme, rows);
    }

    /** The rows that have a law today: all but those listed as later. */
    public List<CheckRow> answered() {
        List<Later> later = later();
        return rows.stream()
                .filter(row -> later.stream().noneMatch(entry -> entry.covers(row)))
                .toList();
    }

    /** The rows that wait for a law. */
    public List<CheckRow> waiting() {
        List<Later> later = later();
        return rows.stream()
                .filter(row -> later.stream().anyMatch(entry -> entry.covers(row)))
                .toList();
    }

    /** The row of that id. */
    public Optional<CheckRow> row(String id) {
        return rows.stream().filter(row -> row.id().equals(id)).findFirst();
    }

    private static CheckRow row(CsvTable table, CsvTable.Line line) {
        return new CheckRow(
                table.field(line, "id"),
                table.field(line, "quantity"),
                inputs(table.field(line, "inputs")),
                Measure.parse(table.field(line, "printed")),
                Double.parseDouble(table.field(line, "expected_si")),
                Measure.parse(table.field(line, "tolerance")).siDifference(),
                table.field(line, "why"),
                table.field(line, "source"),
                Status.of(table.field(line, "status")),
                table.field(line, "note"));
    }

    private static Map<String, String> inputs(String text) {
        Map<String, String> inputs = new LinkedHashMap<>();
        for (String part : text.split(";")) {
            if (part.isBlank()) {
                continue;
            }
            int equals = part.indexOf('=');
            if (equals < 0) {
                throw new IllegalArgumentException("input '" + part.trim() + "': write name=value unit");
            }
            inputs.put(
                    part.substring(0, equals).trim(), part.substring(equals + 1).trim());
        }
        return inputs;
    }

    private static String resource(String name) {
        try (InputStream in = CheckBook.class.getResourceAsStream(name + ".csv")) {
            if (in == null) {
                throw new IllegalArgumentException("no theme '" + name + "'; there are " + THEMES);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
