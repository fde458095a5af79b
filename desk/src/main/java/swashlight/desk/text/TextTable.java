package swashlight.desk.text;

import java.util.ArrayList;
import java.util.List;
import swashlight.desk.report.Column;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;
import swashlight.files.unit.UnitSystem;

/** A table as lines of text: words to the left, numbers to the right with equal decimals, units in the heading. */
final class TextTable {
    private static final String GAP = "  ";
    private static final int LEAST_WORDS = 24; // characters for a last column of words
    private static final int DIGITS = 5; // of the largest number of a column
    private static final double WIDE = 1e3; // pure numbers that differ by more are not lined up, 1
    private static final int EACH_ITS_OWN = -1;
    private static final double NOTHING = 1e-9; // what rounding leaves of a sum, in any shown unit

    private final Writing writing;
    private final Ink ink;
    private final Table table;
    private final String reportKey;
    private final int width;
    private final List<List<String>> cells = new ArrayList<>();
    private final int[] widths;

    TextTable(Writing writing, Ink ink, String reportKey, Table table, int width) {
        this.writing = writing;
        this.ink = ink;
        this.table = table;
        this.reportKey = reportKey;
        this.width = width;
        this.widths = new int[table.columns().size()];
        fill();
    }

    /** The lines, heading first; where the table is too wide, a last column of words is broken. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        int last = widths.length - 1;
        for (List<String> row : cells) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < last; i++) {
                line.append(padded(row, i)).append(GAP);
            }
            boolean words = table.columns().get(last).measure() == Measure.NONE;
            List<String> broken = words && last > 0
                    ? TextPage.hanging(line.toString(), row.get(last), Math.max(LEAST_WORDS, width - line.length()))
                    : List.of(line + padded(row, last));
            boolean heading = lines.isEmpty();
            broken.forEach(text -> lines.add(heading ? ink.faint(text.stripTrailing()) : text.stripTrailing()));
        }
        return lines;
    }

    private String padded(List<String> row, int i) {
        String pad = " ".repeat(widths[i] - row.get(i).length());
        return table.columns().get(i).measure() == Measure.NONE ? row.get(i) + pad : pad + row.get(i);
    }

    private void fill() {
        List<String> heading = new ArrayList<>();
        int[] decimals = new int[widths.length];
        for (int i = 0; i < widths.length; i++) {
            Column column = table.columns().get(i);
            String unit = writing.scale(column.measure()).unit();
            String name = heading(column);
            heading.add(withUnit(column, name, unit));
            decimals[i] = decimals(i, column.measure());
        }
        add(heading);
        for (List<Value> row : table.rows()) {
            List<String> line = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                line.add(cell(row.get(i), table.columns().get(i).measure(), decimals[i]));
            }
            add(line);
        }
    }

    private static String withUnit(Column column, String name, String unit) {
        if (unit.isEmpty() || !column.unitShown()) {
            return name;
        }
        return column.heading() instanceof Value.Nothing ? name + " " + unit : name + ", " + unit;
    }

    private String heading(Column column) {
        return column.heading() instanceof Value.Nothing
                ? writing.words()
                        .say(reportKey + "." + table.key() + "." + column.key(), "column." + column.key(), column.key())
                : writing.of(column.heading());
    }

    private void add(List<String> row) {
        cells.add(row);
        for (int i = 0; i < widths.length; i++) {
            widths[i] = Math.max(widths[i], row.get(i).length());
        }
    }

    private String cell(Value value, Measure measure, int decimals) {
        if (decimals != EACH_ITS_OWN && value instanceof Value.Number number && number.measure() == measure) {
            return Digits.fixed(writing.scale(measure).shown(number.value()), decimals);
        }
        return measure == Measure.OWN && value instanceof Value.Number number
                ? writing.withUnit(writing.shortest(number.value(), number.measure()), number.measure())
                : writing.of(value);
    }

    private int decimals(int column, Measure measure) {
        double largest = 0;
        double smallest = Double.MAX_VALUE;
        boolean whole = true;
        for (List<Value> row : table.rows()) {
            if (row.get(column) instanceof Value.Number number && number.measure() == measure) {
                double shown = writing.scale(measure).shown(number.value());
                largest = Math.max(largest, Math.abs(shown));
                smallest = shown == 0 ? smallest : Math.min(smallest, Math.abs(shown));
                whole &= Writing.whole(shown) || Math.abs(shown) < NOTHING;
            }
        }
        if (whole) {
            return 0;
        }
        if (measure == Measure.RATIO && largest > WIDE * smallest) {
            return EACH_ITS_OWN;
        }
        int power = (int) Math.floor(Math.log10(largest));
        return Math.max(0, Math.min(mostDecimals(measure), DIGITS - 1 - power));
    }

    private int mostDecimals(Measure measure) {
        return switch (measure) {
            case TEMPERATURE, SHARE, CHANCE, DEVIATIONS, ROTATION, FORCE, WARMTH -> 1;
            case POWER -> writing.units() == UnitSystem.US ? 3 : 1; // a horsepower is a large unit
            case PRESSURE, TORQUE, ANGLE -> 2;
            default -> 4;
        };
    }
}
