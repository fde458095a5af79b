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
import swashlight.findings.choice.RepairOption;
import swashlight.findings.finding.ActionFinding;
import swashlight.findings.proof.PlannedReading;
import swashlight.findings.proof.ProofFinding;
import swashlight.findings.proof.ProofVerdict;
import swashlight.findings.proof.ProvedReading;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;

/** Whether a repair did what it should: before and after under common conditions, beside what a good one shows. */
final class ProofReport {
    private static final int MOST_POINTED = 3;
    private static final double WORTH = 0.05; // probability, 1

    private ProofReport() {}

    static Outcome of(MachineCase before, RepairOption done, ProofFinding finding) {
        List<Line> lines = new ArrayList<>();
        lines.add(
                Sentence.of("answer." + finding.verdict().key(), Value.text(before.name()), ChoiceReport.words(done)));
        if (finding.verdict() != ProofVerdict.FAIL && finding.notices() < ProofFinding.NOTICES_ENOUGH) {
            lines.add(Sentence.of("blind", Value.of(finding.notices(), Measure.SHARE)));
        }
        for (PlannedReading each : finding.lacking()) {
            lines.add(Sentence.of("lacking", Value.text(each.asked().label())));
            lines.addAll(ProofWords.careHere("lackingCare", each.asked()));
        }
        lines.add(new Fact(
                "verdict", Value.word("proof.verdict." + finding.verdict().key())));
        lines.add(new Fact("notices", Value.of(finding.notices(), Measure.CHANCE)));
        lines.add(new Fact("cures", Value.of(finding.cures(), Measure.CHANCE)));
        lines.add(new Fact("asBad", Value.of(finding.asBad(), Measure.CHANCE)));
        lines.add(table(finding));
        lines.add(Sentence.of("words"));
        if (finding.verdict() != ProofVerdict.PASS) {
            lines.add(pointing(finding));
        }
        List<Line> how = new ArrayList<>();
        for (ProvedReading each : finding.readings()) {
            how.add(HowTaken.of(
                    Value.text(each.after().label()), each.common().conditions().all()));
        }
        lines.add(new Chapter("common", how));
        lines.add(ProofWords.also(done));
        lines.add(ProofWords.care(
                finding.readings().stream().map(ProvedReading::after).toList()));
        return new Outcome.Answered(new Report("proof", lines), figures(finding));
    }

    /** What the readings after the repair say on their own. */
    private static Chapter pointing(ProofFinding finding) {
        List<Line> lines = new ArrayList<>();
        for (ActionFinding action : finding.after().actions()) {
            if (lines.isEmpty() || (lines.size() < MOST_POINTED && action.probability() >= WORTH)) {
                lines.add(Sentence.of(
                        "pointing.one",
                        FindReport.words(action.action()),
                        FindReport.chance(action.probability(), action.error()),
                        FindReport.name(action.causes().get(0))));
            }
        }
        finding.after()
                .worst()
                .filter(worst -> worst.distrust())
                .ifPresent(worst -> lines.add(
                        Sentence.of("pointing.wrong", Value.text(worst.reading().label()))));
        return new Chapter("pointing", lines);
    }

    private static Table table(ProofFinding finding) {
        List<Column> columns = List.of(
                Column.words("reading"),
                Column.words("verdict"),
                new Column("read", Measure.OWN),
                new Column("after", Measure.OWN),
                new Column("error", Measure.OWN),
                new Column("low", Measure.OWN),
                new Column("middle", Measure.OWN),
                new Column("high", Measure.OWN),
                new Column("before", Measure.OWN),
                new Column("gain", Measure.OWN),
                new Column("gainError", Measure.OWN));
        return new Table(
                "readings",
                columns,
                finding.readings().stream().map(ProofReport::row).toList());
    }

    private static List<Value> row(ProvedReading each) {
        Reading after = each.after();
        Measure compared = ProofWords.compared(after);
        Measure difference = ProofWords.difference(after);
        return List.of(
                Value.text(after.label()),
                Value.word("proof.verdict." + each.verdict().key()),
                Value.of(after.value(), ReadingWords.measure(after)),
                Value.of(each.shown().value(), compared),
                Value.of(each.shown().error(), difference),
                Value.of(each.good().low(), compared),
                Value.of(each.good().middle(), compared),
                Value.of(each.good().high(), compared),
                each.beforeShown()
                        .map(shown -> Value.of(shown.value(), compared))
                        .orElseGet(Value::nothing),
                each.gain().map(gain -> Value.of(gain.value(), difference)).orElseGet(Value::nothing),
                each.gain().map(gain -> Value.of(gain.error(), difference)).orElseGet(Value::nothing));
    }

    /** One a reading: before, after, and what good repairs show. */
    private static List<Figure> figures(ProofFinding finding) {
        List<Figure> figures = new ArrayList<>();
        for (ProvedReading each : finding.readings()) {
            List<Bar> bars = new ArrayList<>();
            bars.add(new Bar(
                    Value.word("proof.bar.good"), each.good().low(), each.good().high(), 0));
            bars.add(bar("proof.bar.after", each.shown(), 2));
            each.beforeShown().ifPresent(shown -> bars.add(bar("proof.bar.before", shown, 1)));
            Axis axis = new Axis(ReadingWords.kind(each.after().kind()), ProofWords.compared(each.after()));
            figures.add(new Figure.Bars(Value.text(each.after().label()), axis, bars, true));
        }
        return figures;
    }

    private static Bar bar(String name, ProvedReading.Figure shown, int kind) {
        return new Bar(Value.word(name), shown.value() - shown.error(), shown.value() + shown.error(), kind);
    }
}
