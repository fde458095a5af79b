package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import swashlight.desk.report.Axis;
import swashlight.desk.report.Bar;
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
import swashlight.findings.drain.DrainFinding;
import swashlight.findings.fit.Account;
import swashlight.findings.fit.Estimate;
import swashlight.findings.losses.LossFinding;
import swashlight.findings.losses.TermSet;
import swashlight.findings.rig.CycleLeak;
import swashlight.findings.rig.RigFinding;

/** What a fit found, as a report: the answer, the numbers with their intervals, what was assumed. */
final class FitReport {
    private static final double BAR = 1e5; // Pa
    private static final double LITRE_PER_MINUTE = 1e-3 / 60; // m³/s
    private static final int MOST_SETS = 5;

    private FitReport() {}

    static Outcome drain(String file, DrainFinding finding, List<Estimate> delivery) {
        List<Line> lines = new ArrayList<>();
        if (!finding.outcome().converged()) {
            lines.add(Sentence.of("answer.lost", Value.text(finding.outcome().line())));
            lines.addAll(account(finding.account()));
            return new Outcome.NotConverged(new Report("fit", lines));
        }
        finding.estimate("pressure-exponent")
                .ifPresent(exponent -> lines.add(Sentence.of("answer.drain", Value.text(file), between(exponent))));
        finding.estimates().stream()
                .filter(estimate -> estimate.key().startsWith("leak-ratio-"))
                .forEach(ratio -> lines.add(Sentence.of(
                        "answer.drain.ratio",
                        Value.text(ratio.key().substring("leak-ratio-".length())),
                        Value.of(ratio.value(), Measure.RATIO),
                        between(ratio))));
        lines.add(estimates("values", finding.estimates()));
        if (!delivery.isEmpty()) {
            lines.add(new Chapter("delivery", List.of(estimates("delivered", delivery))));
        }
        lines.addAll(account(finding.account()));
        return new Outcome.Answered(new Report("fit", lines), drainPicture(finding));
    }

    private static List<Figure> drainPicture(DrainFinding finding) {
        double leak = finding.estimate("leak").map(Estimate::value).orElse(0.0);
        double exponent =
                finding.estimate("pressure-exponent").map(Estimate::value).orElse(1.0);
        List<Curve> curves = new ArrayList<>();
        curves.add(law(Value.word("fit.first"), 0, leak, exponent));
        for (Estimate ratio : finding.estimates()) {
            if (ratio.key().startsWith("leak-ratio-")) {
                String state = ratio.key().substring("leak-ratio-".length());
                double own = finding.estimate("pressure-exponent-" + state)
                        .map(Estimate::value)
                        .orElse(exponent);
                curves.add(law(Value.text(state), curves.size(), leak * ratio.value(), own));
            }
        }
        return List.of(new Figure.Curves(
                Value.word("picture.fit.drain"),
                new Axis(Value.word("fit.axis.pressure"), Measure.PRESSURE),
                new Axis(Value.word("fit.axis.leak"), Measure.FLOW),
                curves));
    }

    /** A fitted power law through its value at 100 bar. */
    private static Curve law(Value name, int number, double at100, double exponent) {
        double[] pressures = new double[49];
        double[] leaks = new double[pressures.length];
        for (int i = 0; i < pressures.length; i++) {
            pressures[i] = 5 * i * BAR;
            leaks[i] = at100 * LITRE_PER_MINUTE * Math.pow(pressures[i] / (100 * BAR), exponent);
        }
        return new Curve(name, number, number, pressures, leaks);
    }

    static Outcome rig(String file, RigFinding finding) {
        List<Line> lines = new ArrayList<>();
        String classes = finding.verdicts().stream()
                .collect(Collectors.groupingBy(verdict -> verdict.words(), Collectors.counting()))
                .entrySet()
                .stream()
                .map(entry -> entry.getValue() + " " + entry.getKey())
                .sorted()
                .collect(Collectors.joining(", "));
        lines.add(Sentence.of(
                "answer.rig", Value.text(file), Value.of(finding.cycles().size(), Measure.RATIO), Value.text(classes)));
        lines.add(estimates("values", finding.estimates()));
        List<Column> columns = List.of(
                new Column("cycle", Measure.RATIO),
                new Column("oilTemperature", Measure.TEMPERATURE),
                new Column("pressure", Measure.PRESSURE),
                new Column("leak", Measure.FLOW),
                new Column("low", Measure.FLOW),
                new Column("high", Measure.FLOW),
                Column.words("class"));
        List<List<Value>> rows = new ArrayList<>();
        for (int i = 0; i < finding.cycles().size(); i++) {
            CycleLeak cycle = finding.cycles().get(i);
            Estimate leak = cycle.estimate();
            rows.add(List.of(
                    Value.of(cycle.cycle(), Measure.RATIO),
                    Value.of(cycle.temperature(), Measure.TEMPERATURE),
                    Value.of(cycle.pressure(), Measure.PRESSURE),
                    Value.of(leak.value() * LITRE_PER_MINUTE, Measure.FLOW),
                    Value.of(leak.low() * LITRE_PER_MINUTE, Measure.FLOW),
                    Value.of(leak.high() * LITRE_PER_MINUTE, Measure.FLOW),
                    Value.text(finding.verdicts().get(i).words())));
        }
        lines.add(new Table("cycles", columns, rows));
        lines.addAll(account(finding.account()));
        double[] cycles =
                finding.cycles().stream().mapToDouble(CycleLeak::cycle).toArray();
        double[] leaks = finding.cycles().stream().mapToDouble(CycleLeak::leak).toArray();
        Figure figure = new Figure.Curves(
                Value.word("picture.fit.rig"),
                new Axis(Value.word("column.cycle"), Measure.RATIO),
                new Axis(Value.word("fit.axis.leak"), Measure.FLOW),
                List.of(new Curve(Value.word("fit.axis.leak"), 0, 0, cycles, leaks)));
        return new Outcome.Answered(new Report("fit", lines), List.of(figure));
    }

    static Outcome losses(String file, LossFinding finding) {
        List<Line> lines = new ArrayList<>();
        lines.add(Sentence.of(
                "answer.losses",
                Value.text(file),
                Value.text(words(finding.flowSets())),
                Value.text(words(finding.torqueSets()))));
        lines.add(estimates("values", finding.estimates()));
        List<List<Value>> rows = new ArrayList<>();
        sets(rows, "fit.flow", finding.flowSets());
        sets(rows, "fit.torque", finding.torqueSets());
        lines.add(new Table(
                "sets", List.of(Column.words("of"), Column.words("terms"), new Column("belief", Measure.SHARE)), rows));
        lines.addAll(account(finding.account()));
        List<Bar> bars = new ArrayList<>();
        for (TermSet set : finding.flowSets()
                .subList(0, Math.min(MOST_SETS, finding.flowSets().size()))) {
            bars.add(new Bar(Value.text(terms(set)), 0, set.weight(), 0));
        }
        Figure figure = new Figure.Bars(
                Value.word("picture.fit.losses"), new Axis(Value.word("column.belief"), Measure.SHARE), bars);
        return new Outcome.Answered(new Report("fit", lines), List.of(figure));
    }

    private static void sets(List<List<Value>> rows, String of, List<TermSet> sets) {
        sets.stream()
                .limit(MOST_SETS)
                .forEach(set -> rows.add(
                        List.of(Value.word(of), Value.text(terms(set)), Value.of(set.weight(), Measure.SHARE))));
    }

    private static String words(List<TermSet> sets) {
        return sets.isEmpty() ? "nothing, for want of torque readings" : terms(sets.get(0));
    }

    private static String terms(TermSet set) {
        return set.terms().isEmpty() ? "no loss" : String.join(" + ", set.terms());
    }

    private static Value between(Estimate estimate) {
        return Value.text(short4(estimate.low()) + " to " + short4(estimate.high()));
    }

    private static String short4(double number) {
        return String.format(Locale.ROOT, "%.3g", number);
    }

    private static Table estimates(String key, List<Estimate> estimates) {
        List<Column> columns = List.of(
                Column.words("quantity"),
                new Column("value", Measure.RATIO),
                new Column("low", Measure.RATIO),
                new Column("high", Measure.RATIO),
                Column.words("unit"),
                Column.words("meaning"));
        List<List<Value>> rows = estimates.stream()
                .map(estimate -> List.<Value>of(
                        Value.text(estimate.key()),
                        Value.of(estimate.value(), Measure.RATIO),
                        Value.of(estimate.low(), Measure.RATIO),
                        Value.of(estimate.high(), Measure.RATIO),
                        Value.text(estimate.unit().equals("1") ? "" : estimate.unit()),
                        Value.text(estimate.meaning())))
                .toList();
        return new Table(key, columns, rows);
    }

    private static List<Line> account(Account account) {
        List<Line> lines = new ArrayList<>();
        for (Account.Kind kind : Account.Kind.values()) {
            List<Line> of = account.lines().stream()
                    .filter(line -> line.kind() == kind)
                    .map(line -> (Line) new Fact(line.key(), Value.text(line.text())))
                    .toList();
            if (!of.isEmpty()) {
                lines.add(new Chapter("account." + kind.name(), of));
            }
        }
        return lines;
    }
}
