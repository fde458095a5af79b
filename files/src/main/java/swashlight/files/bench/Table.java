package swashlight.files.bench;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A CSV file in memory: its header, its rows with their lines, and the faults met while reading it. */
final class Table {
    private final String file;
    private final List<String> header;
    private final List<Row> rows;
    private final List<TableFault.Fault> faults = new ArrayList<>();

    private Table(String file, List<String> header, List<Row> rows) {
        this.file = file;
        this.header = List.copyOf(header);
        this.rows = List.copyOf(rows);
    }

    /** One row. */
    record Row(long line, List<String> cells) {}

    static Table of(Path path) {
        try (Reader reader = Files.newBufferedReader(path, StandardCharsets.UTF_8)) {
            return of(path.getFileName().toString(), reader);
        } catch (IOException broken) {
            throw new TableFault(List.of(new TableFault.Fault(
                    "no-header",
                    path.toString(),
                    1,
                    "file",
                    broken.getMessage(),
                    "a readable CSV file in UTF-8 is needed")));
        }
    }

    static Table of(String file, Reader reader) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setCommentMarker('#')
                .setIgnoreEmptyLines(true)
                .setIgnoreSurroundingSpaces(true)
                .get();
        List<String> header = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(reader, format)) {
            for (CSVRecord row : parser) {
                if (header.isEmpty()) {
                    row.forEach(header::add);
                } else {
                    rows.add(new Row(parser.getCurrentLineNumber(), row.toList()));
                }
            }
        } catch (CSVException | UncheckedIOException broken) {
            throw broken(file, rows.size() + 2, broken.getMessage());
        } catch (IOException broken) {
            throw broken(file, rows.size() + 2, String.valueOf(broken.getMessage()));
        }
        if (header.isEmpty()) {
            throw broken(file, 1, "");
        }
        if (!header.get(0).isEmpty() && header.get(0).charAt(0) == '\uFEFF') {
            header.set(0, header.get(0).substring(1));
        }
        return new Table(file, header, rows);
    }

    private static TableFault broken(String file, long line, String given) {
        return new TableFault(List.of(new TableFault.Fault(
                "no-header",
                file,
                line,
                "file",
                given,
                "a header line and rows of comma-separated values are needed")));
    }

    List<String> header() {
        return header;
    }

    List<Row> rows() {
        return rows;
    }

    /** The place of a column, or a fault and −1. */
    int column(String name) {
        int index = header.indexOf(name);
        if (index < 0) {
            fault("missing-column", 1, name, String.join(",", header), "this column is needed");
        }
        return index;
    }

    /** The text of a cell; empty where the column or the cell is missing (that fault is noted). */
    String text(Row row, int column) {
        if (column < 0) {
            return "";
        }
        if (column >= row.cells().size()) {
            fault(
                    "short-row",
                    row.line(),
                    header.get(column),
                    String.join(",", row.cells()),
                    "the row ends before this column");
            return "";
        }
        return row.cells().get(column);
    }

    /** The number in a cell within limits; the lower limit where there is none (that fault is noted). */
    double number(Row row, int column, double low, double high) {
        String text = text(row, column);
        if (column < 0 || column >= row.cells().size()) {
            return low;
        }
        double value;
        try {
            value = Double.parseDouble(text);
        } catch (NumberFormatException unread) {
            fault(
                    "not-a-number",
                    row.line(),
                    header.get(column),
                    text,
                    "a number is needed, with a point for decimals");
            return low;
        }
        if (!(value >= low && value <= high)) {
            fault(
                    "out-of-range",
                    row.line(),
                    header.get(column),
                    text,
                    "a number from " + low + " to " + high + " is needed");
            return low;
        }
        return value;
    }

    void fault(String key, long line, String field, String given, String right) {
        faults.add(new TableFault.Fault(key, file, line, field, given, right));
    }

    /** Throws what was found, if anything was. */
    void check() {
        if (rows.isEmpty()) {
            fault("no-rows", 1, "file", "", "at least one row below the header is needed");
        }
        if (!faults.isEmpty()) {
            throw new TableFault(faults);
        }
    }
}
