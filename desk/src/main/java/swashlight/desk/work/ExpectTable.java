package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import swashlight.desk.report.Axis;
import swashlight.desk.report.Bar;
import swashlight.desk.report.Column;
import swashlight.desk.report.Figure;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;
import swashlight.findings.outlook.Outlook;

/**
 * Readings and what they should be as a table, and as pictures of their intervals.
 *
 * @param rows one a reading
 * @param measured whether they have been taken
 * @param sick whether a sick machine stands beside the sound one
 */
record ExpectTable(List<ExpectRow> rows, boolean measured, boolean sick) {
    Table table() {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.words("reading"));
        if (measured) {
            columns.add(new Column("measured", Measure.OWN));
        }
        for (String key : List.of("low", "middle", "high")) {
            columns.add(new Column(key, Measure.OWN));
        }
        columns.add(new Column("instrument", Measure.OWN));
        if (measured) {
            columns.add(new Column("off", Measure.DEVIATIONS));
        }
        if (sick) {
            for (String key : List.of("sickLow", "sick", "sickHigh")) {
                columns.add(new Column(key, Measure.OWN));
            }
        }
        return new Table("expected", columns, rows.stream().map(this::cells).toList());
    }

    private List<Value> cells(ExpectRow row) {
        List<Value> cells = new ArrayList<>();
        cells.add(row.name());
        if (measured) {
            cells.add(Value.of(row.reading().value(), row.measure()));
        }
        cells.addAll(interval(row, row.sound()));
        cells.add(row.instrument());
        if (measured) {
            OptionalDouble off = row.off();
            cells.add(off.isPresent() ? Value.of(off.getAsDouble(), Measure.DEVIATIONS) : Value.nothing());
        }
        if (sick) {
            cells.addAll(interval(row, row.sick()));
        }
        return cells;
    }

    private static List<Value> interval(ExpectRow row, Outlook outlook) {
        return List.of(row.told(outlook.low()), row.told(outlook.middle()), row.told(outlook.high()));
    }

    /** One a reading, since each has its own unit; none for a reading whose interval has an open end. */
    List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        for (ExpectRow row : rows) {
            List<Bar> bars = new ArrayList<>();
            bar(bars, "expect.bar.sound", row.sound(), 0);
            if (sick) {
                bar(bars, "expect.bar.sick", row.sick(), 1);
            }
            if (!bars.isEmpty() && measured) {
                double reach = row.reading().standardError();
                double value = row.reading().value();
                bars.add(new Bar(Value.word("expect.bar.measured"), value - reach, value + reach, 2));
            }
            if (!bars.isEmpty()) {
                Axis axis = new Axis(ReadingWords.kind(row.reading().kind()), row.measure());
                figures.add(new Figure.Bars(row.name(), axis, bars, true));
            }
        }
        return figures;
    }

    private static void bar(List<Bar> bars, String name, Outlook outlook, int kind) {
        OptionalDouble low = ExpectRow.number(outlook.low());
        OptionalDouble high = ExpectRow.number(outlook.high());
        if (low.isPresent() && high.isPresent()) {
            bars.add(new Bar(Value.word(name), low.getAsDouble(), high.getAsDouble(), kind));
        }
    }
}
