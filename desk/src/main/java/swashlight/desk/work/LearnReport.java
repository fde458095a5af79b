package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Column;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;
import swashlight.drive.description.DriveDescription;
import swashlight.findings.insight.Insight;
import swashlight.findings.insight.Wanted;

/** What usual sets of readings leave unknown on a drive, and what quotients cancel. */
final class LearnReport {
    private LearnReport() {}

    static Outcome of(DriveDescription drive) {
        Insight insight = new Insight(drive);
        List<Line> lines = new ArrayList<>();
        lines.add(Sentence.of("answer", Value.text(drive.name())));
        lines.add(lessons(insight));
        lines.add(Sentence.of("meaning"));
        lines.add(new Chapter("pairs", List.of(Sentence.of("pairs.words"), pairs(insight))));
        return new Outcome.Answered(new Report("learn", lines));
    }

    private static Table lessons(Insight insight) {
        List<Column> columns = new ArrayList<>();
        columns.add(Column.words("lesson"));
        for (Wanted wanted : Wanted.values()) {
            columns.add(new Column(wanted.key(), measure(wanted)));
        }
        List<List<Value>> rows = new ArrayList<>();
        for (Insight.Left left : insight.lessons()) {
            List<Value> row = new ArrayList<>();
            row.add(Value.word("learn.lesson." + left.lesson().key()));
            for (Wanted wanted : Wanted.values()) {
                row.add(Value.of(left.left()[wanted.ordinal()], measure(wanted)));
            }
            rows.add(row);
        }
        return new Table("lessons", columns, rows);
    }

    private static Measure measure(Wanted wanted) {
        return switch (wanted) {
            case LEAK_FORWARD, ASYMMETRY, PUMP_OR_MOTOR -> Measure.FLOW;
            case BELT_SLIP, STROKE -> Measure.SHARE;
            case DRAG -> Measure.FORCE;
        };
    }

    private static Table pairs(Insight insight) {
        List<Column> columns = List.of(
                Column.words("first"),
                Column.words("second"),
                new Column("ofFirst", Measure.SHARE),
                new Column("ofSecond", Measure.SHARE),
                new Column("ofQuotient", Measure.SHARE));
        List<List<Value>> rows = new ArrayList<>();
        for (Insight.Pair pair : insight.pairs()) {
            rows.add(List.of(
                    Value.text(pair.first()),
                    Value.text(pair.second()),
                    Value.of(pair.ofFirst(), Measure.SHARE),
                    Value.of(pair.ofSecond(), Measure.SHARE),
                    Value.of(pair.ofQuotient(), Measure.SHARE)));
        }
        return new Table("pairs", columns, rows);
    }
}
