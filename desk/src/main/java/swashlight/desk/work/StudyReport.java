package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Column;
import swashlight.desk.report.Fact;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;
import swashlight.drive.description.DriveDescription;
import swashlight.findings.study.Spending;
import swashlight.findings.study.StudySummary;
import swashlight.findings.study.WildCount;

/** Whether findings kept their promises on simulated machines. */
final class StudyReport {
    private StudyReport() {}

    static Outcome of(DriveDescription drive, StudyAsked asked, List<StudyPart> parts) {
        StudySummary summary = StudySummary.of(
                parts.stream().flatMap(part -> part.rows().stream()).toList());
        Value name = parts.size() == 1
                ? Value.text(drive.name())
                : Value.word("study.several", Value.of(parts.size(), Measure.RATIO));
        List<Line> lines = new ArrayList<>();
        lines.add(Sentence.of(
                "answer",
                name,
                Value.of(summary.machines(), Measure.RATIO),
                Value.of(summary.right(), Measure.SHARE),
                new Value.Spread(summary.promised(), summary.rightError(), Measure.SHARE)));
        boolean even = summary.square() < StudySummary.squareLimit();
        lines.add(Sentence.of(even ? "even" : "uneven"));
        lines.add(new Fact("calibrationError", Value.of(summary.calibrationError(), Measure.SHARE)));
        lines.add(new Fact("luck", Value.of(summary.luck(), Measure.SHARE)));
        lines.add(new Fact("surprise", Value.of(summary.surprise(), Measure.RATIO)));
        lines.add(new Fact("square", Value.of(summary.square(), Measure.RATIO)));
        lines.add(new Fact("squareLimit", Value.of(StudySummary.squareLimit(), Measure.RATIO)));
        lines.add(new Fact("seed", Value.text(String.valueOf(asked.seed()))));
        lines.add(new Chapter("reliability", List.of(table("reliability", summary.reliability()))));
        lines.add(new Chapter("every", List.of(table("every", summary.everyAction()))));
        lines.add(new Chapter("ranks", List.of(Sentence.of("ranks.words"), ranks(summary))));
        summary.spending().map(StudyReport::costs).ifPresent(lines::add);
        summary.wild().map(StudyReport::wild).ifPresent(lines::add);
        if (parts.size() > 1) {
            lines.add(new Chapter("parts", List.of(parts(parts))));
        }
        Value title = Value.word("picture.study", name, Value.of(summary.machines(), Measure.RATIO));
        return new Outcome.Answered(new Report("study", lines), StudyPictures.of(title, summary));
    }

    private static Chapter costs(Spending spending) {
        List<List<Value>> rows = new ArrayList<>();
        for (Spending.Share share : spending.shares()) {
            rows.add(List.of(
                    Value.word("study.by." + share.by().key()),
                    tenths(share.mean()),
                    tenths(share.error()),
                    tenths(share.dearer()),
                    tenths(share.dearerError())));
        }
        Table table = new Table(
                "costs",
                List.of(
                        Column.words("by"),
                        new Column("mean", Measure.RATIO),
                        new Column("error", Measure.RATIO),
                        new Column("dearer", Measure.RATIO),
                        new Column("dearerError", Measure.RATIO)),
                rows);
        return Chapter.of(
                "costs",
                Sentence.of("costs.words", Value.of(spending.machines(), Measure.RATIO), tenths(spending.promised())),
                table);
    }

    private static Value tenths(double money) {
        return Value.of(Math.rint(10 * money) / 10, Measure.RATIO);
    }

    private static Chapter wild(WildCount wild) {
        return Chapter.of(
                "wild",
                Sentence.of(
                        "wild.words",
                        count(wild.machines()),
                        count(wild.wild()),
                        count(wild.loud()),
                        count(wild.loudMachines()),
                        count(wild.caught()),
                        count(wild.named()),
                        count(wild.namedRight())));
    }

    private static Value count(int number) {
        return Value.of(number, Measure.RATIO);
    }

    private static Table parts(List<StudyPart> parts) {
        List<List<Value>> rows = new ArrayList<>();
        for (StudyPart part : parts) {
            StudySummary own = StudySummary.of(part.rows());
            rows.add(List.of(
                    Value.text(part.name()),
                    count(own.machines()),
                    Value.of(own.right(), Measure.SHARE),
                    Value.of(own.promised(), Measure.SHARE),
                    Value.of(own.rightError(), Measure.SHARE),
                    Value.of(own.calibrationError(), Measure.SHARE),
                    Value.of(own.luck(), Measure.SHARE),
                    own.evenCount() > 0 ? Value.of(own.square(), Measure.RATIO) : Value.nothing()));
        }
        return new Table(
                "parts",
                List.of(
                        Column.words("part"),
                        new Column("machines", Measure.RATIO),
                        new Column("right", Measure.SHARE),
                        new Column("promised", Measure.SHARE),
                        new Column("error", Measure.SHARE),
                        new Column("calibrationError", Measure.SHARE),
                        new Column("luck", Measure.SHARE),
                        new Column("square", Measure.RATIO)),
                rows);
    }

    private static Table table(String key, List<StudySummary.Bin> bins) {
        List<Column> columns = List.of(
                new Column("count", Measure.RATIO),
                new Column("chance", Measure.SHARE),
                new Column("share", Measure.SHARE),
                new Column("error", Measure.SHARE));
        List<List<Value>> rows = new ArrayList<>();
        for (StudySummary.Bin bin : bins) {
            if (bin.count() > 0) {
                rows.add(List.of(
                        Value.of(bin.count(), Measure.RATIO),
                        Value.of(bin.chance(), Measure.SHARE),
                        Value.of(bin.share(), Measure.SHARE),
                        Value.of(bin.error(), Measure.SHARE)));
            }
        }
        return new Table(key, columns, rows);
    }

    private static Table ranks(StudySummary summary) {
        List<List<Value>> rows = new ArrayList<>();
        for (int bin = 0; bin < summary.ranks().size(); bin++) {
            rows.add(List.of(
                    new Value.Between(
                            bin / (double) summary.ranks().size(),
                            (bin + 1.0) / summary.ranks().size(),
                            Measure.SHARE),
                    Value.of(summary.ranks().get(bin), Measure.RATIO),
                    Value.of(summary.evenCount(), Measure.RATIO),
                    Value.of(summary.evenBand(), Measure.RATIO)));
        }
        return new Table(
                "ranks",
                List.of(
                        new Column("rank", Measure.SHARE),
                        new Column("count", Measure.RATIO),
                        new Column("expected", Measure.RATIO),
                        new Column("band", Measure.RATIO)),
                rows);
    }
}
