package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Value;
import swashlight.findings.finding.Candidate;
import swashlight.findings.finding.Verdict;
import swashlight.findings.next.Ranking;
import swashlight.findings.next.ReadingWorth;

/** Which reading to take next, by money, each with the cautions of that step. */
final class NextReport {
    private static final int MOST_OTHERS = 3;

    private NextReport() {}

    static List<Line> of(Decision decision) {
        List<ReadingWorth> worth = decision.ranking().map(Ranking::possible).orElse(List.of()).stream()
                .filter(reading -> reading.net() > 0)
                .toList();
        boolean enough = decision.found().finding().conclusion().verdict() == Verdict.THIS;
        if (worth.isEmpty()) {
            return List.of(Chapter.of("next", Sentence.of(enough ? "next.stop" : "next.none")));
        }
        List<Line> lines = new ArrayList<>();
        lines.addAll(step("next.first", decision, worth.get(0)));
        for (int i = 1; i < worth.size() && i <= MOST_OTHERS; i++) {
            lines.addAll(step("next.other", decision, worth.get(i)));
        }
        lines.add(Sentence.of("next.rules"));
        return List.of(new Chapter(enough ? "confirm" : "next", lines));
    }

    private static List<Line> step(String key, Decision decision, ReadingWorth worth) {
        List<Line> lines = new ArrayList<>();
        Candidate reading = worth.errand().reading();
        lines.add(Sentence.of(
                key,
                words(reading),
                decision.money(worth.saving()),
                decision.money(worth.cost()),
                Value.of(worth.time(), Measure.MINUTES)));
        lines.addAll(cautions(reading));
        return lines;
    }

    /** What to read, in words. */
    static Value words(Candidate reading) {
        return Value.wordOr("next.reading." + reading.key(), reading.words());
    }

    /** The cautions of the step. */
    static List<Line> cautions(Candidate reading) {
        List<Line> lines = new ArrayList<>();
        for (Caution caution : Caution.of(reading.kind(), reading.setup())) {
            lines.add(Sentence.of("next.caution", Value.word(caution.words())));
        }
        return lines;
    }
}
