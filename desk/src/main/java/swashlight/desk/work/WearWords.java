package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Value;
import swashlight.findings.wear.Limit;
import swashlight.findings.wear.WearKind;
import swashlight.findings.wear.WearPart;

/** Worn parts as values of a report. */
final class WearWords {
    private static final List<String> CARE =
            List.of("chocked", "oil", "springs", "marks", "solvents", "air", "lapping");

    private WearWords() {}

    /** "pump: play of pistons". */
    static Value name(WearPart part) {
        return Value.wordOr("wear.part." + part.key(), part.key());
    }

    static Value names(List<WearPart> parts) {
        return new Value.Several(parts.stream().map(WearWords::name).toList());
    }

    /** How a wear of a part is shown; the same for all its numbers. */
    static Measure measure(WearPart part) {
        return part.kind() == WearKind.SEAT_LEAK ? Measure.FLOW : Measure.FINE_LENGTH;
    }

    static Value value(WearPart part, double number) {
        return Value.of(number, measure(part));
    }

    /** The lower end of a limit; nothing where no wear of the part matters. */
    static Value low(WearPart part, Limit limit) {
        return limit.decides() ? value(part, limit.wear().low()) : Value.nothing();
    }

    static Value high(WearPart part, Limit limit) {
        return limit.decides() ? value(part, limit.wear().high()) : Value.nothing();
    }

    /** What can hurt somebody, or the parts, while a drive is opened. */
    static Chapter care() {
        List<Line> lines = new ArrayList<>();
        for (String each : CARE) {
            lines.add(Sentence.of("care.one", Value.word("wear.care." + each)));
        }
        lines.add(Sentence.of("care.rules"));
        return new Chapter("care", lines);
    }
}
