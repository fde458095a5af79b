package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Value;
import swashlight.findings.next.StepWorth;

/** Looking, listening, asking and opening the drive, by money, each with its cautions. */
final class StepReport {
    private static final int MOST = 3;
    private static final Map<String, List<Caution>> CAUTIONS = Map.of(
            "look-belt", List.of(Caution.ENGINE_OFF),
            "look-cooling", List.of(Caution.ENGINE_OFF, Caution.HOT),
            "look-oil-level", List.of(Caution.ENGINE_OFF, Caution.HOT),
            "look-oil-sample", List.of(Caution.ENGINE_OFF, Caution.HOT),
            "listen", List.of(Caution.DRIVEN),
            "strain-oil", List.of(Caution.ENGINE_OFF, Caution.HOT));
    private static final List<String> OPENED = List.of("chocked", "oil", "springs", "marks", "solvents", "air");

    private StepReport() {}

    /** The step to take before anything else; none where no step pays. */
    static Optional<StepWorth> best(Decision decision) {
        return decision.steps().stream().filter(step -> step.net() > 0).findFirst();
    }

    /** Those that pay, cheap looks by what they pay; and what opening the drive would come to. */
    static List<Line> of(Decision decision) {
        List<Line> lines = new ArrayList<>();
        int told = 0;
        for (StepWorth step : decision.steps()) {
            if (!step.opens() && step.net() > 0 && told < MOST) {
                lines.addAll(one("steps.one", decision, step));
                told++;
            }
        }
        if (told == 0) {
            lines.add(Sentence.of("steps.none"));
        }
        decision.steps().stream()
                .filter(step -> step.opens() && step.part().isEmpty())
                .findFirst()
                .ifPresent(step -> lines.addAll(opening(decision, step)));
        return lines.isEmpty() ? List.of() : List.of(new Chapter("steps", lines));
    }

    private static List<Line> opening(Decision decision, StepWorth step) {
        return step.net() > 0
                ? one("steps.open", decision, step)
                : List.of(Sentence.of("steps.shut", decision.money(step.saving()), decision.money(step.cost())));
    }

    private static List<Line> one(String key, Decision decision, StepWorth step) {
        List<Line> lines = new ArrayList<>();
        lines.add(Sentence.of(
                key,
                words(step),
                decision.money(step.saving()),
                decision.money(step.cost()),
                Value.of(step.time(), Measure.MINUTES)));
        lines.addAll(cautions("steps.caution", step));
        return lines;
    }

    /** What to do, in words. */
    static Value words(StepWorth step) {
        return step.part()
                .map(part -> Value.word("step.measure", WearWords.name(part)))
                .orElseGet(() -> Value.wordOr("next.reading." + step.key(), step.words()));
    }

    /** What can hurt somebody in that step. */
    static List<Line> cautions(String key, StepWorth step) {
        List<Line> lines = new ArrayList<>();
        CAUTIONS.getOrDefault(step.key(), List.of())
                .forEach(caution -> lines.add(Sentence.of(key, Value.word(caution.words()))));
        if (step.opens()) {
            OPENED.forEach(care -> lines.add(Sentence.of(key, Value.word("wear.care." + care))));
        }
        return lines;
    }
}
