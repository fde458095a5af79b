package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Value;
import swashlight.findings.finding.Finding;
import swashlight.findings.finding.NextReading;
import swashlight.findings.finding.Verdict;

/** Which reading to take next, each with the cautions of that step. */
final class NextReport {
    private static final double WORTH = 0.02; // gain from which a reading is worth naming, nat
    private static final int MOST_OTHERS = 3;

    private NextReport() {}

    static List<Line> of(Finding finding) {
        List<NextReading> worth = finding.missing().readings().stream()
                .filter(next -> next.gain() > WORTH)
                .toList();
        if (worth.isEmpty()) {
            boolean open = finding.conclusion().verdict() == Verdict.CANNOT_TELL;
            return open ? List.of(Chapter.of("next", Sentence.of("next.none"))) : List.of();
        }
        List<Line> lines = new ArrayList<>();
        lines.addAll(step("next.first", worth.get(0)));
        for (int i = 1; i < worth.size() && i <= MOST_OTHERS; i++) {
            lines.addAll(step("next.other", worth.get(i)));
        }
        lines.add(Sentence.of("next.rules"));
        boolean enough = finding.conclusion().verdict() == Verdict.THIS;
        return List.of(new Chapter(enough ? "confirm" : "next", lines));
    }

    private static List<Line> step(String key, NextReading next) {
        List<Line> lines = new ArrayList<>();
        Value what = Value.wordOr("next.reading." + next.key(), next.words());
        lines.add(Sentence.of(key, what, Value.of(next.gain(), Measure.RATIO)));
        for (Caution caution : Caution.of(next.kind(), next.setup())) {
            lines.add(Sentence.of("next.caution", Value.word(caution.words())));
        }
        return lines;
    }
}
