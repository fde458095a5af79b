package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import swashlight.desk.report.Axis;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Column;
import swashlight.desk.report.Curve;
import swashlight.desk.report.Fact;
import swashlight.desk.report.Figure;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;
import swashlight.drive.description.DriveDescription;
import swashlight.findings.study.StudySummary;

/** Whether findings kept their promises on simulated machines. */
final class StudyReport {
    private StudyReport() {}

    static Outcome of(DriveDescription drive, StudyAsked asked, StudySummary summary) {
        List<Line> lines = new ArrayList<>();
        lines.add(Sentence.of(
                "answer",
                Value.text(drive.name()),
                Value.of(summary.machines(), Measure.RATIO),
                Value.of(summary.right(), Measure.SHARE),
                new Value.Spread(summary.promised(), summary.rightError(), Measure.SHARE)));
        boolean even = summary.square() < StudySummary.squareLimit();
        lines.add(Sentence.of(even ? "even" : "uneven"));
        lines.add(new Fact("calibrationError", Value.of(summary.calibrationError(), Measure.SHARE)));
        lines.add(new Fact("surprise", Value.of(summary.surprise(), Measure.RATIO)));
        lines.add(new Fact("square", Value.of(summary.square(), Measure.RATIO)));
        lines.add(new Fact("squareLimit", Value.of(StudySummary.squareLimit(), Measure.RATIO)));
        lines.add(new Fact("seed", Value.text(String.valueOf(asked.seed()))));
        lines.add(new Chapter("reliability", List.of(table("reliability", summary.reliability()))));
        lines.add(new Chapter("every", List.of(table("every", summary.everyAction()))));
        lines.add(new Chapter("ranks", List.of(Sentence.of("ranks.words"), ranks(summary))));
        return new Outcome.Answered(new Report("study", lines), List.of(picture(drive, summary)));
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
        double expected = summary.ranks().stream().mapToInt(Integer::intValue).sum()
                / (double) summary.ranks().size();
        for (int bin = 0; bin < summary.ranks().size(); bin++) {
            rows.add(List.of(
                    new Value.Between(
                            bin / (double) summary.ranks().size(),
                            (bin + 1.0) / summary.ranks().size(),
                            Measure.SHARE),
                    Value.of(summary.ranks().get(bin), Measure.RATIO),
                    Value.of(expected, Measure.RATIO)));
        }
        return new Table(
                "ranks",
                List.of(
                        new Column("rank", Measure.SHARE),
                        new Column("count", Measure.RATIO),
                        new Column("expected", Measure.RATIO)),
                rows);
    }

    private static Figure picture(DriveDescription drive, StudySummary summary) {
        List<StudySummary.Bin> bins =
                summary.reliability().stream().filter(bin -> bin.count() > 0).toList();
        double[] chance = bins.stream().mapToDouble(StudySummary.Bin::chance).toArray();
        double[] share = bins.stream().mapToDouble(StudySummary.Bin::share).toArray();
        double[] low =
                bins.stream().mapToDouble(bin -> bin.chance() - 2 * bin.error()).toArray();
        double[] high =
                bins.stream().mapToDouble(bin -> bin.chance() + 2 * bin.error()).toArray();
        return new Figure.Curves(
                Value.word("picture.study", Value.text(drive.name()), Value.of(summary.machines(), Measure.RATIO)),
                new Axis(Value.word("axis.promised"), Measure.SHARE),
                new Axis(Value.word("axis.came"), Measure.SHARE),
                List.of(
                        new Curve(Value.word("curve.found"), 0, 0, chance, share),
                        new Curve(Value.word("curve.honest"), 1, 1, new double[] {0, 1}, new double[] {0, 1}),
                        new Curve(Value.word("curve.chanceLow"), 2, 2, chance, low),
                        new Curve(Value.word("curve.chanceHigh"), 2, 2, chance, high)));
    }
}
