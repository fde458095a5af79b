package swashlight.desk.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Column;
import swashlight.desk.report.Fact;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Report;
import swashlight.desk.report.Scale;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;

/**
 * A report as JSON: a fact is a field with value and unit, a chapter an object, a table an object with the units of its columns and its
 * rows; sentences are gathered under "says". Written by hand: forty lines that start in no time.
 */
public final class JsonPage {
    private final Writing writing;
    private final String reportKey;

    private JsonPage(Writing writing, String reportKey) {
        this.writing = writing;
        this.reportKey = reportKey;
    }

    /** The whole report in some words and units, ending with a new line. */
    public static String of(Report report, Writing writing) {
        JsonPage page = new JsonPage(writing, report.key());
        List<String> fields = new ArrayList<>();
        fields.add(quoted("report") + ": " + quoted(report.key()));
        fields.addAll(page.fields(report.lines(), "  "));
        return object(fields, "") + "\n";
    }

    private List<String> fields(List<Line> lines, String indent) {
        List<String> fields = new ArrayList<>();
        List<String> says = new ArrayList<>();
        Map<String, List<String>> facts = new LinkedHashMap<>();
        for (Line line : lines) {
            if (line instanceof Sentence sentence) {
                says.add(says(sentence));
            } else if (line instanceof Fact fact) {
                facts.computeIfAbsent(fact.key(), key -> new ArrayList<>()).add(value(fact.value()));
            } else if (line instanceof Chapter chapter) {
                fields.add(quoted(chapter.key()) + ": " + object(fields(chapter.lines(), indent + "  "), indent));
            } else if (line instanceof Table table) {
                fields.add(quoted(table.key()) + ": " + table(table, indent));
            }
        }
        facts.forEach((key, values) -> fields.add(
                quoted(key) + ": " + (values.size() == 1 ? values.get(0) : "[" + String.join(", ", values) + "]")));
        if (!says.isEmpty()) {
            fields.add(quoted("says") + ": " + array(says, indent));
        }
        return fields;
    }

    private String says(Sentence sentence) {
        String text = Words.fill(
                writing.words().say(reportKey + "." + sentence.key(), sentence.key()), sentence.values(), writing::of);
        StringJoiner values = new StringJoiner(", ", "[", "]");
        sentence.values().forEach(value -> values.add(value(value)));
        return "{" + quoted("key") + ": " + quoted(sentence.key()) + ", " + quoted("text") + ": " + quoted(text) + ", "
                + quoted("values") + ": " + values + "}";
    }

    private String table(Table table, String indent) {
        StringJoiner units = new StringJoiner(", ", "{", "}");
        for (Column column : table.columns()) {
            String unit = writing.scale(column.measure()).unit();
            if (!unit.isEmpty()) {
                units.add(quoted(writing.key(column)) + ": " + quoted(unit));
            }
        }
        List<String> rows = new ArrayList<>();
        for (List<Value> row : table.rows()) {
            StringJoiner cells = new StringJoiner(", ", "{", "}");
            for (int i = 0; i < row.size(); i++) {
                cells.add(quoted(writing.key(table.columns().get(i))) + ": "
                        + cell(row.get(i), table.columns().get(i)));
            }
            rows.add(cells.toString());
        }
        return object(
                List.of(quoted("units") + ": " + units, quoted("rows") + ": " + array(rows, indent + "  ")), indent);
    }

    private String cell(Value value, Column column) {
        if (value instanceof Value.Number number && number.measure() == column.measure()) {
            return Digits.machine(writing.scale(column.measure()).shown(number.value()));
        }
        return value(value);
    }

    private String value(Value value) {
        if (value instanceof Value.Number number) {
            return measured(number.measure(), field("value", number.value(), number.measure()));
        }
        if (value instanceof Value.Spread spread) {
            String around = quoted("spread") + ": "
                    + Digits.machine(writing.scale(spread.measure()).shownDifference(spread.spread()));
            return measured(spread.measure(), field("value", spread.value(), spread.measure()), around);
        }
        if (value instanceof Value.Between between) {
            return measured(
                    between.measure(),
                    field("low", between.low(), between.measure()),
                    field("high", between.high(), between.measure()));
        }
        if (value instanceof Value.Several several) {
            StringJoiner all = new StringJoiner(", ", "[", "]");
            several.values().forEach(one -> all.add(value(one)));
            return all.toString();
        }
        if (value instanceof Value.Nothing) {
            return "null";
        }
        return quoted(writing.of(value));
    }

    private String field(String name, double si, Measure measure) {
        return quoted(name) + ": " + Digits.machine(writing.scale(measure).shown(si));
    }

    private String measured(Measure measure, String... numbers) {
        Scale scale = writing.scale(measure);
        return "{" + String.join(", ", numbers) + ", " + quoted("unit") + ": "
                + quoted(scale.unit().isEmpty() ? "1" : scale.unit()) + "}";
    }

    private static String object(List<String> fields, String indent) {
        String inside = "\n" + indent + "  ";
        return fields.isEmpty() ? "{}" : "{" + inside + String.join("," + inside, fields) + "\n" + indent + "}";
    }

    private static String array(List<String> items, String indent) {
        String inside = "\n" + indent + "    ";
        return items.isEmpty() ? "[]" : "[" + inside + String.join("," + inside, items) + "\n" + indent + "  ]";
    }

    /** A JSON string. */
    static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (char c : text.toCharArray()) {
            switch (c) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                case '\n' -> quoted.append("\\n");
                case '\t' -> quoted.append("\\t");
                default ->
                    quoted.append(
                            c < ' ' ? "\\u00" + Character.forDigit(c / 16, 16) + Character.forDigit(c % 16, 16) : c);
            }
        }
        return quoted.append('"').toString();
    }
}
