package swashlight.files.bench;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import swashlight.files.document.FileComplaint;
import swashlight.files.document.InputFault;

/** A CSV file in memory: its header, its rows with their lines, and what is wrong with it. */
final class Table {
    private final String file;
    private final List<String> header;
    private final List<Row> rows;
    private final List<FileComplaint> complaints = new ArrayList<>();

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
            throw broken(path.toString(), 1, String.valueOf(broken.getMessage()));
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
            throw broken(file, rows.size() + 2, given(broken.getCause() == null ? broken : broken.getCause()));
        } catch (IOException broken) {
            throw broken(file, rows.size() + 2, given(broken));
        }
        if (header.isEmpty()) {
            throw broken(file, 1, "");
        }
        if (!header.get(0).isEmpty() && header.get(0).charAt(0) == '\uFEFF') {
            header.set(0, header.get(0).substring(1));
        }
        return new Table(file, header, rows);
    }

    /** What stands there; bytes that are no text have no words. */
    private static String given(Throwable broken) {
        return broken instanceof CharacterCodingException ? "" : String.valueOf(broken.getMessage());
    }

    private static InputFault broken(String file, long line, String given) {
        return new InputFault(List.of(new FileComplaint(
                "no-table",
                file,
                (int) line,
                1,
                "",
                given,
                "this is not a table",
                "a header line and rows of comma-separated values in UTF-8 are needed")));
    }

    List<String> header() {
        return header;
    }

    List<Row> rows() {
        return rows;
    }

    /** The place of a column, or a complaint and −1. */
    int column(String name) {
        int index = header.indexOf(name);
        if (index < 0) {
            complain(
                    "missing-column",
                    1,
                    name,
                    String.join(",", header),
                    "the column is missing",
                    "add it to the header");
        }
        return index;
    }

    /** The text of a cell; empty where the column or the cell is missing (that is complained of). */
    String text(Row row, int column) {
        if (column < 0) {
            return "";
        }
        if (column >= row.cells().size()) {
            complain(
                    "short-row",
                    row.line(),
                    header.get(column),
                    String.join(",", row.cells()),
                    "the row ends before this column",
                    "give each row as many cells as the header");
            return "";
        }
        return row.cells().get(column);
    }

    /** The number in a cell within limits; the lower limit where there is none (that is complained of). */
    double number(Row row, int column, double low, double high) {
        return reading(row, column, low, high).orElse(low);
    }

    /** The number in a cell within limits, if there is one (that there is none is complained of). */
    OptionalDouble reading(Row row, int column, double low, double high) {
        String text = text(row, column);
        if (column < 0 || column >= row.cells().size()) {
            return OptionalDouble.empty();
        }
        double value;
        try {
            value = Double.parseDouble(text);
        } catch (NumberFormatException unread) {
            complain(
                    "not-a-number", row.line(), header.get(column), text, "this is no number", "write it with a point");
            return OptionalDouble.empty();
        }
        if (!(value >= low && value <= high)) {
            complain(
                    "out-of-range",
                    row.line(),
                    header.get(column),
                    text,
                    "this is outside what can be",
                    "from " + low + " to " + high + " is possible");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(value);
    }

    void complain(String key, long line, String field, String given, String wrong, String right) {
        complaints.add(new FileComplaint(key, file, (int) line, 1, field, given, wrong, right));
    }

    /** Throws what was found, if anything was. */
    void check() {
        if (rows.isEmpty()) {
            complain("no-rows", 1, "", "", "there is no row below the header", "at least one is needed");
        }
        if (!complaints.isEmpty()) {
            throw new InputFault(complaints);
        }
    }
}
