package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import swashlight.desk.report.Axis;
import swashlight.desk.report.Bar;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Fact;
import swashlight.desk.report.Figure;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Value;
import swashlight.findings.cause.Action;
import swashlight.findings.cause.Part;
import swashlight.findings.finding.ActionFinding;
import swashlight.findings.finding.CauseFinding;
import swashlight.findings.finding.Conclusion;
import swashlight.findings.finding.Finding;
import swashlight.findings.finding.SeverityRange;

/** What a case comes to: the answer first, what it stands on one step behind. */
final class FindReport {
    private static final int MOST_BARS = 12;
    private static final double SMALLEST_BAR = 0.001; // probability, 1

    private final Finding finding;
    private final Conclusion conclusion;

    private FindReport(Finding finding) {
        this.finding = finding;
        this.conclusion = finding.conclusion();
    }

    static Outcome of(Decision decision) {
        Finding finding = decision.found().finding();
        FindReport report = new FindReport(finding);
        List<Line> lines = new ArrayList<>(report.answer());
        lines.addAll(report.inShort(decision.machine().complaint()));
        lines.addAll(NextReport.of(decision));
        lines.addAll(StepReport.of(decision));
        lines.addAll(TieReport.of(decision));
        lines.add(new Chapter("money", NextAnswer.inShort(decision)));
        lines.addAll(FindWorkings.of(finding));
        return new Outcome.Answered(new Report("find", lines), List.of(report.picture()));
    }

    private List<Line> answer() {
        List<Line> lines = new ArrayList<>();
        ActionFinding best = finding.actions().get(0);
        lines.add(Sentence.of(
                "answer." + conclusion.verdict().key(),
                Value.text(finding.caseName()),
                words(best.action()),
                chance(best.probability(), best.error())));
        if (conclusion.contradiction()) {
            lines.add(Sentence.of("contradiction"));
        }
        return lines;
    }

    private List<Line> inShort(String complaint) {
        List<Line> lines = new ArrayList<>();
        ActionFinding best = finding.actions().get(0);
        CauseFinding cause = finding.causes().get(0);
        if (!complaint.isEmpty()) {
            lines.add(new Fact("complaint", Value.text(complaint)));
        }
        lines.add(
                new Fact("verdict", Value.word("verdict." + conclusion.verdict().key())));
        lines.add(new Fact("action", words(best.action())));
        lines.add(new Fact("actionProbability", chance(best.probability(), best.error())));
        lines.add(new Fact("cause", name(cause)));
        lines.add(new Fact("causeProbability", chance(cause.probability(), cause.error())));
        cause.severity().forEach(range -> lines.add(new Fact("severity", severity(range))));
        return lines;
    }

    private static Value severity(SeverityRange range) {
        Measure measure = FaultWords.measure(range.fault());
        return Value.word(
                "find.severity.words",
                FaultWords.meaning(range.fault()),
                Value.of(range.middle(), measure),
                new Value.Between(range.low(), range.high(), measure));
    }

    static Value name(CauseFinding cause) {
        List<Part> parts = cause.cause().parts();
        if (parts.isEmpty()) {
            return Value.wordOr("cause.healthy", cause.cause().words());
        }
        Value first = FaultWords.name(parts.get(0).fault());
        return parts.size() == 1
                ? first
                : Value.word("cause.pair", first, FaultWords.name(parts.get(1).fault()));
    }

    static Value words(Action action) {
        return Value.wordOr("action." + action.key(), action.words());
    }

    static Value chance(double probability, double error) {
        return new Value.Spread(probability, error, Measure.CHANCE);
    }

    private Figure picture() {
        List<Bar> bars = new ArrayList<>();
        for (CauseFinding cause : finding.causes()) {
            if (bars.size() < MOST_BARS && (bars.isEmpty() || cause.probability() > SMALLEST_BAR)) {
                boolean same = cause.cause().action() == conclusion.action();
                bars.add(new Bar(Value.text(cause.cause().key()), 0, cause.probability(), same ? 0 : 1));
            }
        }
        Axis axis = new Axis(Value.word("axis.probability"), Measure.SHARE);
        return new Figure.Bars(Value.word("picture.causes", Value.text(finding.caseName())), axis, bars);
    }
}
