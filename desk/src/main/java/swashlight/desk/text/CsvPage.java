package swashlight.desk.text;

import java.util.List;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import swashlight.desk.report.Column;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;

/** A table as CSV (RFC 4180, comma, UTF-8): one header line with units, numbers with a point and no unit. */
public final class CsvPage {
    private final Writing writing;

    /** A page in some words and units. */
    public CsvPage(Writing writing) {
        this.writing = writing;
    }

    /** The whole table, header first. */
    public String of(Table table) {
        StringBuilder page = new StringBuilder();
        page.append(table.columns().stream().map(this::header).collect(Collectors.joining(",")))
                .append("\r\n");
        for (List<Value> row : table.rows()) {
            page.append(row(table.columns(), row)).append("\r\n");
        }
        return page.toString();
    }

    private String header(Column column) {
        if (column.measure() == Measure.OWN) {
            return writing.key(column) + "," + writing.key(column) + " unit";
        }
        String unit = writing.scale(column.measure()).unit();
        return quoted(unit.isEmpty() ? writing.key(column) : writing.key(column) + " (" + unit + ")");
    }

    private String row(List<Column> columns, List<Value> row) {
        StringJoiner cells = new StringJoiner(",");
        for (int i = 0; i < row.size(); i++) {
            cells.add(columns.get(i).measure() == Measure.OWN ? withOwnUnit(row.get(i)) : cell(row.get(i)));
        }
        return cells.toString();
    }

    private String withOwnUnit(Value value) {
        String unit = value instanceof Value.Number number
                ? writing.scale(number.measure()).unit()
                : "";
        return cell(value) + "," + unit;
    }

    private String cell(Value value) {
        return value instanceof Value.Number number
                ? number(number.value(), number.measure())
                : quoted(writing.of(value));
    }

    private String number(double si, Measure measure) {
        return Digits.machine(writing.scale(measure).shown(si));
    }

    private static String quoted(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
