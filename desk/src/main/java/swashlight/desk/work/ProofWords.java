package swashlight.desk.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Value;
import swashlight.findings.choice.RepairOption;
import swashlight.findings.cost.Job;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;

/** Repairs and their proof as values of a report. */
final class ProofWords {
    private static final Map<String, List<Caution>> ALWAYS = ordered(
            Map.entry("neutral", List.of(Caution.RAISED)),
            Map.entry("stop", List.of(Caution.DRIVEN)),
            Map.entry("brake", List.of(Caution.ROLLS)),
            Map.entry("interlocks", List.of(Caution.DRIVEN)));
    private static final Map<String, List<Caution>> OPENED = ordered(
            Map.entry("torque", List.of(Caution.ENGINE_OFF)),
            Map.entry("turn", List.of(Caution.ENGINE_OFF)),
            Map.entry("purge", List.of(Caution.RAISED, Caution.SHAFT)),
            Map.entry("leaks", List.of(Caution.HOT, Caution.PRESSURE)));

    private ProofWords() {}

    /** How a reading is shown where it is compared: a timed run as a speed. */
    static Measure compared(Reading reading) {
        return switch (reading.kind()) {
            case RUN_TIME, GROUND_SPEED -> Measure.SPEED;
            case ROLL_TIME, ROLL_SPEED -> Measure.CREEP;
            default -> ReadingWords.measure(reading);
        };
    }

    /** The same for errors and gains: a temperature is a difference there. */
    static Measure difference(Reading reading) {
        return compared(reading) == Measure.TEMPERATURE ? Measure.WARMTH : compared(reading);
    }

    /** What must work before the machine leaves, whatever was read. */
    static Chapter also(RepairOption done) {
        List<Line> lines = new ArrayList<>();
        boolean opened = done.jobs().stream().anyMatch(job -> job.renews() != Job.Renews.NOTHING);
        if (opened) {
            OPENED.forEach((step, cautions) -> add(lines, step, cautions));
        }
        ALWAYS.forEach((step, cautions) -> add(lines, step, cautions));
        return new Chapter("also", lines);
    }

    private static void add(List<Line> lines, String step, List<Caution> cautions) {
        lines.add(Sentence.of("also.one", Value.word("proof.also." + step)));
        lines.add(careHere("also.care", cautions));
    }

    @SafeVarargs
    private static Map<String, List<Caution>> ordered(Map.Entry<String, List<Caution>>... steps) {
        Map<String, List<Caution>> all = new LinkedHashMap<>();
        for (Map.Entry<String, List<Caution>> step : steps) {
            all.put(step.getKey(), step.getValue());
        }
        return Collections.unmodifiableMap(all);
    }

    /** The cautions of one reading in few words, to stand at its step; none where nothing can hurt. */
    static List<Line> careHere(String key, Reading reading) {
        List<Caution> cautions = Caution.of(reading.kind(), reading.setup());
        return cautions.isEmpty() ? List.of() : List.of(careHere(key, cautions));
    }

    private static Line careHere(String key, List<Caution> cautions) {
        Value all = Value.word(cautions.get(0).words() + ".short");
        for (Caution caution : cautions.subList(1, cautions.size())) {
            all = Value.word("proof.careAnd", all, Value.word(caution.words() + ".short"));
        }
        return Sentence.of(key, all);
    }

    static Chapter care(List<Reading> readings) {
        Set<Caution> all = new LinkedHashSet<>();
        for (Reading reading : readings) {
            if (reading.kind() != ReadingKind.PART_DIMENSION) {
                all.addAll(Caution.of(reading.kind(), reading.setup()));
            }
        }
        List<Line> lines = new ArrayList<>();
        all.forEach(caution -> lines.add(Sentence.of("care.one", Value.word(caution.words()))));
        lines.add(Sentence.of("care.rules"));
        return new Chapter("care", lines);
    }
}
