package swashlight.desk.work;

import java.util.ArrayList;
import java.util.Comparator;
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
import swashlight.findings.choice.OptionFinding;
import swashlight.findings.finding.Candidate;
import swashlight.findings.next.Ranking;
import swashlight.findings.next.ReadingWorth;
import swashlight.findings.next.StepWorth;
import swashlight.findings.next.Tool;

/** What to look at or to read next, by money, each with its cautions; or that nothing pays any more. */
final class NextAnswer {
    private NextAnswer() {}

    static Outcome of(Decision decision) {
        Ranking ranking = decision.ranking().orElseThrow();
        List<Line> lines = new ArrayList<>(first(decision, ranking));
        lines.add(new Chapter("choice", ChoiceReport.answer(decision)));
        lines.addAll(StepReport.of(decision));
        lines.add(table(decision, ranking));
        lines.add(Sentence.of("words"));
        lines.addAll(TieReport.of(decision));
        List<Line> basis = new ArrayList<>(decision.basis());
        basis.add(Sentence.of("basis.words"));
        lines.add(new Chapter("basis", basis));
        return new Outcome.Answered(new Report("next", lines), List.of());
    }

    /** Best work in two sentences. */
    static List<Line> inShort(Decision decision) {
        OptionFinding best = decision.choice().best();
        return List.of(
                Sentence.of(
                        "money.work",
                        ChoiceReport.words(best.option()),
                        decision.money(best.total()),
                        Value.of(best.comeback(), Measure.SHARE)),
                Sentence.of("money.words"));
    }

    private static List<Line> first(Decision decision, Ranking ranking) {
        List<Line> lines = new ArrayList<>();
        Optional<ReadingWorth> next = ranking.next();
        Optional<StepWorth> step = StepReport.best(decision)
                .filter(best -> best.net() > next.map(ReadingWorth::net).orElse(0.0));
        step.ifPresent(best -> {
            lines.add(Sentence.of(
                    "take",
                    Value.text(decision.machine().name()),
                    StepReport.words(best),
                    decision.money(best.saving()),
                    decision.money(best.cost())));
            lines.addAll(StepReport.cautions("caution", best));
        });
        if (next.isEmpty() && step.isPresent()) {
            lines.add(Sentence.of("rules"));
        } else if (next.isEmpty()) {
            lines.add(Sentence.of("stop", Value.text(decision.machine().name())));
        } else {
            ReadingWorth worth = next.get();
            Candidate reading = worth.errand().reading();
            lines.add(Sentence.of(
                    step.isPresent() ? "number" : "take",
                    Value.text(decision.machine().name()),
                    Value.wordOr("next.reading." + reading.key(), reading.words()),
                    decision.money(worth.saving()),
                    decision.money(worth.cost())));
            for (Caution caution : Caution.of(reading.kind(), reading.setup())) {
                lines.add(Sentence.of("caution", Value.word(caution.words())));
            }
            lines.add(Sentence.of("rules"));
        }
        for (ReadingWorth better : ranking.impossible()) {
            boolean pays =
                    better.net() > Math.max(0, next.map(ReadingWorth::net).orElse(0.0));
            if (pays) {
                lines.add(Sentence.of(
                        "lacking",
                        Value.wordOr(
                                "next.reading." + better.errand().reading().key(),
                                better.errand().reading().words()),
                        decision.money(better.net()),
                        tools(better)));
                break;
            }
        }
        return lines;
    }

    private static Value tools(ReadingWorth worth) {
        return Value.text(String.join(
                ", ", worth.lacking().stream().map(Tool::key).sorted().toList()));
    }

    private static Table table(Decision decision, Ranking ranking) {
        List<Column> columns = List.of(
                Column.words("reading"),
                new Column("net", Measure.RATIO),
                new Column("saving", Measure.RATIO),
                new Column("cost", Measure.RATIO),
                new Column("time", Measure.MINUTES),
                new Column("gain", Measure.RATIO),
                Column.words("lacking"));
        List<Row> possible = new ArrayList<>();
        ranking.possible().forEach(worth -> possible.add(new Row(worth.net(), row(worth))));
        decision.steps().forEach(step -> possible.add(new Row(step.net(), row(step))));
        possible.sort(Comparator.comparingDouble(Row::net).reversed());
        List<List<Value>> rows = new ArrayList<>();
        possible.forEach(row -> rows.add(row.cells()));
        ranking.impossible().forEach(worth -> rows.add(row(worth)));
        return new Table("readings", columns, rows);
    }

    private static List<Value> row(ReadingWorth worth) {
        return List.of(
                Value.text(worth.errand().reading().key()),
                Value.of(whole(worth.net()), Measure.RATIO),
                Value.of(whole(worth.saving()), Measure.RATIO),
                Value.of(whole(worth.cost()), Measure.RATIO),
                Value.of(worth.time(), Measure.MINUTES),
                Value.of(Math.rint(1000 * worth.gain()) / 1000, Measure.RATIO),
                tools(worth));
    }

    private static List<Value> row(StepWorth step) {
        return List.of(
                Value.text(step.key()),
                Value.of(whole(step.net()), Measure.RATIO),
                Value.of(whole(step.saving()), Measure.RATIO),
                Value.of(whole(step.cost()), Measure.RATIO),
                Value.of(step.time(), Measure.MINUTES),
                Value.of(Math.rint(1000 * step.gain()) / 1000, Measure.RATIO),
                Value.text(""));
    }

    private record Row(double net, List<Value> cells) {}

    private static double whole(double money) {
        return Math.rint(money) + 0.0;
    }
}
