package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Column;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;
import swashlight.drive.description.DriveDescription;
import swashlight.findings.wear.DrivePapers;
import swashlight.findings.wear.LimitTable;
import swashlight.findings.wear.PartLeak;
import swashlight.findings.wear.PartLimit;
import swashlight.findings.wear.WearPart;

/** How much each part of a drive may wear. */
final class LimitsReport {
    private LimitsReport() {}

    static Outcome of(DriveDescription drive, LimitTable table, PartLeak leak, DrivePapers papers) {
        List<Line> lines = new ArrayList<>();
        lines.add(Sentence.of("answer", Value.text(drive.name())));
        for (int r = 0; r < table.yardstick().requirements().size(); r++) {
            lines.add(Sentence.of("required", RequirementOfLine.words(table.yardstick(), r)));
        }
        boolean told = table.reached() >= 0.9;
        lines.add(Sentence.of(told ? "reached" : "beyond", Value.of(table.reached(), Measure.SHARE)));
        lines.add(table(table));
        lines.add(Sentence.of("words"));
        if (table.rows().stream().anyMatch(row -> row.alone().decides())) {
            PartLimit any = table.rows().get(0);
            lines.add(Sentence.of("alike", Value.of(any.shared().middle(), Measure.SHARE)));
        }
        idle(table).ifPresent(lines::add);
        PapersLines.of(papers).ifPresent(lines::add);
        List<Line> basis = new ArrayList<>(RequirementOfLine.where(leak));
        basis.add(new swashlight.desk.report.Fact("machines", Value.of(table.machines(), Measure.RATIO)));
        basis.add(Sentence.of("basis.words"));
        if (drive.invented()) {
            basis.add(Sentence.of("basis.invented"));
        }
        lines.add(new Chapter("basis", basis));
        lines.add(WearWords.care());
        return new Outcome.Answered(new Report("limits", lines), List.of());
    }

    private static Optional<Line> idle(LimitTable table) {
        List<WearPart> idle = table.rows().stream()
                .filter(row -> !row.alone().decides() && row.alone().beyond() >= 0.5)
                .map(PartLimit::part)
                .toList();
        return idle.isEmpty() ? Optional.empty() : Optional.of(Sentence.of("idle", WearWords.names(idle)));
    }

    private static Table table(LimitTable table) {
        List<Column> columns = List.of(
                Column.words("part"),
                new Column("newLow", Measure.OWN),
                new Column("newHigh", Measure.OWN),
                new Column("reuse", Measure.OWN),
                new Column("middle", Measure.OWN),
                new Column("replace", Measure.OWN),
                new Column("leak", Measure.FLOW),
                new Column("share", Measure.SHARE),
                new Column("alikeReuse", Measure.OWN),
                new Column("alikeReplace", Measure.OWN));
        List<List<Value>> rows = new ArrayList<>();
        for (PartLimit row : table.rows()) {
            WearPart part = row.part();
            boolean decides = row.alone().decides();
            rows.add(List.of(
                    Value.text(part.key()),
                    WearWords.value(part, row.fresh().low()),
                    WearWords.value(part, row.fresh().high()),
                    WearWords.low(part, row.alone()),
                    decides ? WearWords.value(part, row.alone().wear().middle()) : Value.nothing(),
                    WearWords.high(part, row.alone()),
                    decides ? Value.of(row.leak(), Measure.FLOW) : Value.nothing(),
                    decides ? Value.of(row.leakShare(), Measure.SHARE) : Value.nothing(),
                    decides ? WearWords.value(part, row.alike().low()) : Value.nothing(),
                    decides ? WearWords.value(part, row.alike().high()) : Value.nothing()));
        }
        return new Table("limits", columns, rows);
    }
}
