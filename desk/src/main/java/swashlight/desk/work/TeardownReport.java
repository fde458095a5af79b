package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import swashlight.desk.report.Axis;
import swashlight.desk.report.Bar;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Column;
import swashlight.desk.report.Fact;
import swashlight.desk.report.Figure;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;
import swashlight.files.wear.TeardownFile;
import swashlight.findings.wear.PartFinding;
import swashlight.findings.wear.PartLeak;
import swashlight.findings.wear.PartVerdict;
import swashlight.findings.wear.Requirement;
import swashlight.findings.wear.Span;
import swashlight.findings.wear.TeardownFinding;
import swashlight.findings.wear.WearPart;

/** What measured parts leak and cost, and which of them may stay. */
final class TeardownReport {
    private static final double SURE = 0.9; // share of machines, 1

    private final TeardownFile file;
    private final TeardownFinding finding;
    private final PartLeak leak;

    private TeardownReport(TeardownFile file, TeardownFinding finding, PartLeak leak) {
        this.file = file;
        this.finding = finding;
        this.leak = leak;
    }

    static Outcome of(TeardownFile file, TeardownFinding finding, PartLeak leak) {
        TeardownReport report = new TeardownReport(file, finding, leak);
        return new Outcome.Answered(new Report("teardown", report.lines()), report.pictures());
    }

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>(answer());
        lines.add(parts());
        lines.add(Sentence.of("words"));
        lines.add(required());
        if (finding.reaches() < SURE && !finding.sources().isEmpty()) {
            lines.add(Sentence.of("doubt", sources()));
        }
        if (!finding.unmeasured().isEmpty()) {
            lines.add(Sentence.of("unmeasured", WearWords.names(finding.unmeasured())));
        }
        PapersLines.of(file.papers()).ifPresent(lines::add);
        List<Line> basis = new ArrayList<>(RequirementOfLine.where(leak));
        basis.add(new Fact("machines", Value.of(finding.machines(), Measure.RATIO)));
        basis.add(Sentence.of("basis.words"));
        if (file.invented()) {
            basis.add(Sentence.of("basis.invented"));
        }
        lines.add(new Chapter("basis", basis));
        lines.add(WearWords.care());
        return lines;
    }

    private List<Line> answer() {
        List<Line> lines = new ArrayList<>();
        Value name = Value.text(file.name());
        Value reaches = Value.of(finding.reaches(), Measure.SHARE);
        if (finding.reaches() >= SURE) {
            lines.add(Sentence.of("answer.reuse", name, reaches));
        } else if (finding.reachesNew() < SURE) {
            lines.add(Sentence.of("answer.beyond", name, reaches, Value.of(finding.reachesNew(), Measure.SHARE)));
        } else {
            boolean sure = finding.parts().stream()
                    .anyMatch(part -> part.verdict() == PartVerdict.REPLACE_ALONE
                            || part.verdict() == PartVerdict.REPLACE_TOGETHER);
            lines.add(Sentence.of(
                    sure ? "answer.replace" : "answer.cannot-tell",
                    name,
                    reaches,
                    WearWords.names(finding.renew()),
                    Value.of(finding.reachesAfter(), Measure.SHARE)));
        }
        lines.add(new Fact("reaches", reaches));
        lines.add(new Fact("reachesNew", Value.of(finding.reachesNew(), Measure.SHARE)));
        lines.add(new Fact("reachesAfter", Value.of(finding.reachesAfter(), Measure.SHARE)));
        return lines;
    }

    private Table parts() {
        List<Column> columns = List.of(
                Column.words("part"),
                Column.words("verdict"),
                new Column("shows", Measure.OWN),
                new Column("from", Measure.OWN),
                new Column("to", Measure.OWN),
                new Column("fresh", Measure.OWN),
                new Column("leak", Measure.FLOW),
                new Column("share", Measure.SHARE),
                new Column("cost", Measure.SHARE),
                new Column("costTo", Measure.SHARE),
                new Column("reuse", Measure.OWN),
                new Column("replace", Measure.OWN),
                new Column("leftReuse", Measure.OWN),
                new Column("leftReplace", Measure.OWN),
                Column.words("why"));
        return new Table(
                "parts", columns, finding.parts().stream().map(this::row).toList());
    }

    private List<Value> row(PartFinding each) {
        WearPart part = each.measured().part();
        return List.of(
                Value.text(part.key()),
                Value.word("wear.verdict." + each.verdict().key()),
                WearWords.value(part, each.measured().value()),
                WearWords.value(part, each.worn().low()),
                WearWords.value(part, each.worn().high()),
                WearWords.value(part, each.fresh().middle()),
                Value.of(each.leak().middle(), Measure.FLOW),
                Value.of(each.leakShare(), Measure.SHARE),
                Value.of(each.cost().middle(), Measure.SHARE),
                Value.of(each.cost().high(), Measure.SHARE),
                WearWords.low(part, each.alone()),
                WearWords.high(part, each.alone()),
                WearWords.low(part, each.together()),
                WearWords.high(part, each.together()),
                Value.word("wear.why." + each.verdict().reason()));
    }

    private Chapter required() {
        List<Line> lines = new ArrayList<>();
        for (int r = 0; r < finding.performed().size(); r++) {
            Requirement each = finding.yardstick().requirements().get(r);
            Measure measure = RequirementOfLine.measure(each);
            lines.add(Sentence.of(
                    "required.one",
                    RequirementOfLine.words(finding.yardstick(), r),
                    between(finding.performed().get(r), measure),
                    between(finding.performedNew().get(r), measure)));
        }
        return new Chapter("required", lines);
    }

    private static Value between(Span span, Measure measure) {
        return new Value.Between(span.low(), span.high(), measure);
    }

    private Value sources() {
        return new Value.Several(finding.sources().stream()
                .map(source ->
                        Value.word("wear.source", Value.text(source.name()), Value.of(source.share(), Measure.SHARE)))
                .toList());
    }

    /** Wear beside its limit alone, both in per cent of the middle of that limit. */
    private List<Figure> pictures() {
        List<Bar> bars = new ArrayList<>();
        for (PartFinding each : finding.parts()) {
            double limit = each.alone().wear().middle();
            if (each.alone().decides() && limit > 0) {
                Value name = WearWords.name(each.measured().part());
                bars.add(new Bar(name, each.worn().low() / limit, each.worn().high() / limit, 0));
                bars.add(new Bar(
                        Value.word("wear.bar.limit"),
                        each.alone().wear().low() / limit,
                        each.alone().wear().high() / limit,
                        1));
            }
        }
        if (bars.isEmpty()) {
            return List.of();
        }
        Axis axis = new Axis(Value.word("axis.ofLimit"), Measure.SHARE);
        return List.of(new Figure.Bars(Value.word("picture.teardown", Value.text(file.name())), axis, bars, true));
    }
}
