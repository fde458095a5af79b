package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Value;
import swashlight.findings.finding.CauseFinding;
import swashlight.findings.finding.Verdict;
import swashlight.findings.next.Tool;
import swashlight.findings.tie.Separator;
import swashlight.findings.tie.Tie;
import swashlight.findings.tie.Ties;

/** What the readings so far cannot tell apart, whether it matters, and the cheapest reading that would tell. */
final class TieReport {
    private static final int MOST_TIES = 3;
    private static final int MOST_NAMED = 5;

    private TieReport() {}

    static List<Line> of(Decision decision) {
        if (decision.ties().isEmpty()) {
            return List.of();
        }
        List<Line> lines = new ArrayList<>();
        decision.ties().stream().limit(MOST_TIES).forEach(tie -> lines.addAll(one(decision, tie)));
        return List.of(new Chapter("ties", lines));
    }

    private static List<Line> one(Decision decision, Tie tie) {
        List<Line> lines = new ArrayList<>();
        boolean settled = tie.settled() >= Verdict.ENOUGH;
        String key = !tie.matters() ? "tie.same" : settled ? "tie.settled" : "tie.matters";
        lines.add(Sentence.of(
                key, names(tie), Value.of(tie.probability(), Measure.SHARE), Value.of(tie.settled(), Measure.SHARE)));
        if (tie.matters() && !settled) {
            tie.separator().ifPresent(reading -> {
                boolean decides = reading.decides() >= Ties.WORTH_NAMING;
                lines.addAll(step(decides ? "tie.cheapest" : "tie.narrows", decision, reading));
            });
            tie.better().ifPresent(reading -> lines.addAll(step("tie.better", decision, reading)));
            if (tie.separator().isEmpty() && tie.better().isEmpty()) {
                lines.add(Sentence.of("tie.nothing"));
            }
        }
        return lines;
    }

    private static List<Line> step(String key, Decision decision, Separator reading) {
        List<Line> lines = new ArrayList<>();
        lines.add(Sentence.of(
                key,
                NextReport.words(reading.errand().reading()),
                Value.of(reading.time(), Measure.MINUTES),
                decision.money(reading.cost()),
                Value.of(reading.decides(), Measure.SHARE),
                Value.text(String.join(
                        ", ", reading.lacking().stream().map(Tool::key).sorted().toList())),
                Value.of(reading.right(), Measure.SHARE)));
        lines.addAll(NextReport.cautions(reading.errand().reading()));
        return lines;
    }

    private static Value names(Tie tie) {
        List<Value> names = new ArrayList<>();
        for (CauseFinding cause : tie.causes().stream().limit(MOST_NAMED).toList()) {
            names.add(Value.word("tie.one", FindReport.name(cause), Value.of(cause.probability(), Measure.SHARE)));
        }
        Optional.of(tie.causes().size() - MOST_NAMED)
                .filter(more -> more > 0)
                .ifPresent(more -> names.add(Value.word("tie.more", Value.of(more, Measure.RATIO))));
        return new Value.Several(names);
    }
}
