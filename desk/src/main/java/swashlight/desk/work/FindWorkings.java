package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Column;
import swashlight.desk.report.Fact;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;
import swashlight.findings.cause.Action;
import swashlight.findings.finding.CauseFinding;
import swashlight.findings.finding.Finding;
import swashlight.findings.finding.MissingCondition;
import swashlight.findings.finding.Prediction;
import swashlight.findings.finding.ReadingFinding;
import swashlight.findings.finding.SeverityRange;
import swashlight.findings.finding.UnusedReading;
import swashlight.findings.finding.WorstFit;

/** What a finding stands on: causes, readings beside what they should be, what is missing, the account. */
final class FindWorkings {
    private static final double WORTH_SHOWING = 0.005; // probability, 1
    private static final int LEADING = 3;
    private static final double FEW = 20; // effective machines below which their spread is not to be trusted

    private FindWorkings() {}

    static List<Line> of(Finding finding) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Chapter("causes", causes(finding)));
        lines.add(new Chapter("readings", readings(finding)));
        if (!finding.readings().isEmpty()) {
            lines.add(new Chapter("how", how(finding)));
        }
        List<Line> missing = missing(finding);
        if (!missing.isEmpty()) {
            lines.add(new Chapter("missing", missing));
        }
        lines.add(new Chapter("account", account(finding)));
        return lines;
    }

    private static List<Line> causes(Finding finding) {
        List<Column> columns = List.of(
                Column.words("key"),
                new Column("probability", Measure.SHARE),
                new Column("error", Measure.SHARE),
                new Column("prior", Measure.SHARE),
                new Column("low", Measure.OWN),
                new Column("severity", Measure.OWN),
                new Column("high", Measure.OWN),
                Column.words("action"));
        List<List<Value>> rows = new ArrayList<>();
        double rest = 0;
        for (CauseFinding cause : finding.causes()) {
            if (rows.isEmpty() || cause.probability() >= WORTH_SHOWING) {
                rows.add(row(cause));
            } else {
                rest += cause.probability();
            }
        }
        int others = finding.causes().size() - rows.size();
        return List.of(
                new Table("causes", columns, rows),
                Sentence.of("causes.rest", Value.of(others, Measure.RATIO), Value.of(rest, Measure.SHARE)));
    }

    private static List<Value> row(CauseFinding cause) {
        Optional<SeverityRange> range =
                cause.severity().size() == 1 ? Optional.of(cause.severity().get(0)) : Optional.empty();
        return List.of(
                Value.text(cause.cause().key()),
                Value.of(cause.probability(), Measure.SHARE),
                Value.of(cause.error(), Measure.SHARE),
                Value.of(cause.prior(), Measure.SHARE),
                severity(range, SeverityRange::low),
                severity(range, SeverityRange::middle),
                severity(range, SeverityRange::high),
                Value.text(String.join(
                        ", ", cause.cause().actions().stream().map(Action::key).toList())));
    }

    private static Value severity(Optional<SeverityRange> range, ToDoubleFunction<SeverityRange> end) {
        return range.map(each -> FaultWords.severity(each.fault(), end.applyAsDouble(each)))
                .orElse(Value.nothing());
    }

    private static List<Line> readings(Finding finding) {
        if (finding.readings().isEmpty()) {
            return List.of(Sentence.of("readings.none"));
        }
        List<Prediction> leading = finding.readings().get(0).predictions();
        int shown = Math.min(LEADING, leading.size());
        List<Column> columns = new ArrayList<>();
        columns.add(Column.words("reading"));
        columns.add(new Column("measured", Measure.OWN));
        for (Prediction prediction : leading.subList(0, shown)) {
            columns.add(new Column(prediction.cause(), Measure.OWN));
        }
        columns.add(new Column("off", Measure.DEVIATIONS));
        List<List<Value>> rows = new ArrayList<>();
        for (ReadingFinding reading : finding.readings()) {
            rows.add(row(reading, shown));
        }
        List<Line> lines = new ArrayList<>();
        lines.add(new Table("readings", columns, rows));
        lines.add(Sentence.of("readings.words"));
        finding.worst().map(FindWorkings::worst).ifPresent(lines::add);
        return lines;
    }

    private static List<Value> row(ReadingFinding reading, int shown) {
        List<Value> row = new ArrayList<>();
        row.add(Value.text(reading.reading().label()));
        row.add(ReadingWords.measured(reading.reading()));
        for (Prediction prediction : reading.predictions().subList(0, shown)) {
            row.add(ReadingWords.expected(reading.reading(), prediction.expected(), prediction.spread()));
        }
        row.add(Value.of(reading.predictions().get(0).standardised(), Measure.DEVIATIONS));
        return row;
    }

    private static Sentence worst(WorstFit worst) {
        return Sentence.of(
                worst.distrust() ? "worst.distrust" : "worst",
                Value.text(worst.reading().label()),
                ReadingWords.measured(worst.reading()),
                ReadingWords.expected(
                        worst.reading(),
                        worst.prediction().expected(),
                        worst.prediction().spread()),
                Value.text(worst.prediction().cause()));
    }

    private static List<Line> how(Finding finding) {
        List<Line> lines = new ArrayList<>();
        for (ReadingFinding reading : finding.readings()) {
            lines.add(HowTaken.of(Value.text(reading.reading().label()), reading.conditions()));
            if (reading.implied()) {
                lines.add(Sentence.of("how.implied"));
            }
        }
        lines.add(Sentence.of("how.shared"));
        return lines;
    }

    private static List<Line> missing(Finding finding) {
        List<Line> lines = new ArrayList<>();
        for (UnusedReading unused : finding.missing().unused()) {
            lines.add(Sentence.of("missing.unused", Value.text(unused.reading().label()), Value.text(unused.lacks())));
        }
        for (MissingCondition condition : finding.missing().conditions()) {
            lines.add(Sentence.of(
                    "missing.condition",
                    Value.text(condition.reading().label()),
                    ReadingWords.condition(condition.assumed().kind()),
                    ReadingWords.condition(condition.assumed()),
                    Value.of(condition.widening(), Measure.DEVIATIONS)));
        }
        return lines;
    }

    private static List<Line> account(Finding finding) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Fact("seed", Value.text(String.valueOf(finding.effort().seed()))));
        lines.add(new Fact("machines", Value.of(finding.effort().machines(), Measure.RATIO)));
        lines.add(new Fact("unsolved", Value.of(finding.effort().unsolved(), Measure.RATIO)));
        double size = finding.effort().leastEffectiveSize();
        lines.add(new Fact("effectiveSize", Value.of(Math.rint(size), Measure.RATIO)));
        if (size < FEW) {
            lines.add(Sentence.of("account.few"));
        }
        lines.addAll(AccountLines.of(finding.account()));
        return lines;
    }
}
