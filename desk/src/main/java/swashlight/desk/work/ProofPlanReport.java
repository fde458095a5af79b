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
import swashlight.findings.choice.RepairOption;
import swashlight.findings.expect.Expected;
import swashlight.findings.finding.Found;
import swashlight.findings.proof.PlannedReading;
import swashlight.findings.proof.ProofPlan;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;

/** What to read after a repair, and what a good one shows. */
final class ProofPlanReport {
    private ProofPlanReport() {}

    static Outcome of(MachineCase before, Found found, RepairOption done, ProofPlan plan) {
        List<Line> lines = new ArrayList<>();
        lines.add(Sentence.of("plan.answer", Value.text(before.name()), ChoiceReport.words(done)));
        lines.add(new Fact("notices", Value.of(plan.notices(), Measure.CHANCE)));
        lines.add(new Fact("cures", Value.of(plan.cures(), Measure.CHANCE)));
        lines.add(new Fact(
                "foundAction", FindReport.words(found.finding().conclusion().action())));
        lines.add(table(plan));
        lines.add(Sentence.of("plan.words"));
        List<Line> how = new ArrayList<>();
        for (PlannedReading each : plan.all()) {
            how.add(HowTaken.of(name(each), each.conditions()));
            how.addAll(ProofWords.careHere("how.care", each.asked()));
        }
        lines.add(new Chapter("how", how));
        lines.add(ProofWords.also(done));
        lines.add(ProofWords.care(plan.all().stream().map(PlannedReading::asked).toList()));
        return new Outcome.Answered(new Report("proof", lines), List.of());
    }

    private static Value name(PlannedReading each) {
        return each.candidate()
                .map(candidate -> Value.word(
                        "proof.named",
                        Value.text(candidate.key()),
                        Value.wordOr("next.reading." + candidate.key(), candidate.words())))
                .orElseGet(() -> Value.text(each.asked().label()));
    }

    private static Table table(ProofPlan plan) {
        List<Column> columns = List.of(
                Column.words("reading"),
                new Column("before", Measure.OWN),
                new Column("low", Measure.OWN),
                new Column("middle", Measure.OWN),
                new Column("high", Measure.OWN),
                new Column("instrument", Measure.OWN),
                new Column("notices", Measure.SHARE));
        return new Table(
                "readings",
                columns,
                plan.all().stream().map(ProofPlanReport::row).toList());
    }

    private static List<Value> row(PlannedReading each) {
        Reading asked = each.asked();
        Measure measure = ReadingWords.measure(asked);
        return List.of(
                Value.text(asked.label()),
                each.before().map(reading -> Value.of(reading.value(), measure)).orElseGet(Value::nothing),
                told(asked, each.low()),
                told(asked, each.middle()),
                told(asked, each.high()),
                Value.of(each.instrument(), measure == Measure.TEMPERATURE ? Measure.WARMTH : measure),
                Value.of(each.notices(), Measure.SHARE));
    }

    private static Value told(Reading asked, Expected expected) {
        return expected instanceof Expected.Value value
                ? Value.of(value.value(), ReadingWords.measure(asked))
                : ReadingWords.expected(asked, expected, 0);
    }
}
