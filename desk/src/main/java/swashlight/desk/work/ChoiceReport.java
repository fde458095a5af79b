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
import swashlight.findings.choice.Choice;
import swashlight.findings.choice.OptionFinding;
import swashlight.findings.choice.RepairOption;
import swashlight.findings.cost.Job;

/** What to do about a machine, cheapest in the end first. */
final class ChoiceReport {
    private static final int MOST = 12;

    private ChoiceReport() {}

    static Outcome of(Decision decision) {
        Choice choice = decision.choice();
        List<Line> lines = new ArrayList<>(answer(decision));
        lines.add(options(choice));
        lines.add(Sentence.of("words"));
        List<Line> basis = new ArrayList<>(decision.basis());
        basis.add(Sentence.of("basis.words"));
        lines.add(new Chapter("basis", basis));
        return new Outcome.Answered(new Report("choose", lines), List.of());
    }

    /** The best, by how much, and whether that matters. */
    static List<Line> answer(Decision decision) {
        Choice choice = decision.choice();
        OptionFinding best = choice.best();
        OptionFinding second = choice.options().get(1);
        List<Line> lines = new ArrayList<>();
        lines.add(Sentence.of(
                "choice.best",
                Value.text(decision.machine().name()),
                words(best.option()),
                decision.money(best.total()),
                Value.of(best.comeback(), Measure.SHARE)));
        lines.add(Sentence.of(
                choice.matters() ? "choice.matters" : "choice.even",
                words(second.option()),
                decision.money(choice.margin()),
                decision.money(choice.marginError())));
        lines.add(Sentence.of("choice.perfect", decision.money(choice.perfect())));
        return lines;
    }

    private static Table options(Choice choice) {
        List<Column> columns = List.of(
                Column.words("option"),
                new Column("total", Measure.RATIO),
                new Column("error", Measure.RATIO),
                new Column("direct", Measure.RATIO),
                new Column("time", Measure.MINUTES),
                new Column("comeback", Measure.SHARE),
                new Column("slow", Measure.SPEED),
                new Column("middle", Measure.SPEED),
                new Column("fast", Measure.SPEED));
        List<List<Value>> rows = new ArrayList<>();
        for (OptionFinding option : choice.options()) {
            if (rows.size() < MOST || option.option().jobs().size() < 2) {
                rows.add(List.of(
                        Value.text(option.option().key()),
                        Value.of(Math.rint(option.total()), Measure.RATIO),
                        Value.of(Math.rint(option.error()), Measure.RATIO),
                        Value.of(Math.rint(option.direct()), Measure.RATIO),
                        Value.of(option.time(), Measure.MINUTES),
                        Value.of(option.comeback(), Measure.SHARE),
                        Value.of(option.slow(), Measure.SPEED),
                        Value.of(option.middle(), Measure.SPEED),
                        Value.of(option.fast(), Measure.SPEED)));
            }
        }
        return new Table("options", columns, rows);
    }

    static Value words(RepairOption option) {
        List<Job> jobs = option.jobs();
        if (jobs.isEmpty()) {
            return Value.word("job." + RepairOption.LEAVE_ALONE);
        }
        Value first = Value.word("job." + jobs.get(0).key());
        return jobs.size() == 1
                ? first
                : Value.word(
                        "cause.pair", first, Value.word("job." + jobs.get(1).key()));
    }
}
