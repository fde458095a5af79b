package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Value;
import swashlight.findings.expect.Condition;

/** Under which conditions a reading is taken: those stated, and those taken as usual. */
final class HowTaken {
    private HowTaken() {}

    static Sentence of(Value name, List<Condition> conditions) {
        List<Value> words = new ArrayList<>();
        for (Condition condition : conditions) {
            words.add(Value.word(
                    condition.stated() ? "taken.stated" : "taken.usual",
                    ReadingWords.condition(condition.kind()),
                    ReadingWords.condition(condition)));
        }
        return words.isEmpty()
                ? Sentence.of("how.plain", name)
                : Sentence.of("how.one", name, new Value.Several(words));
    }
}
