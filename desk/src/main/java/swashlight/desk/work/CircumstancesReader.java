package swashlight.desk.work;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import swashlight.files.machine.DutyFiles;

/** Circumstances from what somebody stated: condition names, and the words wheels, engine, fromRest. */
final class CircumstancesReader {
    private static final List<String> WHEELS = List.of("ground", "lifted", "held");
    private static final List<String> ENGINE = List.of("running", "off");
    private static final List<String> YES_NO = List.of("yes", "no");

    private CircumstancesReader() {}

    static Circumstances read(CircumstancesAsked asked, Inspection inspection) {
        Circumstances filed = asked.duty()
                .map(file -> inspection.filed(() -> DutyFiles.read(Path.of(file.text()))))
                .map(Circumstances::of)
                .orElse(Circumstances.usual());
        Map<String, Stated> stated = asked.stated();
        Map<Condition, Double> values = new EnumMap<>(Condition.class);
        values.putAll(filed.stated());
        stated.forEach((key, text) -> Condition.find(key)
                .ifPresentOrElse(
                        condition -> inspection
                                .number(text, condition.dimension(), condition.low(), condition.high())
                                .ifPresent(value -> values.put(condition, value)),
                        () -> unknown(key, text, inspection)));
        return new Circumstances(
                values,
                word(stated, "wheels", WHEELS, inspection)
                        .map(word -> Circumstances.Wheels.valueOf(word.toUpperCase(Locale.ROOT)))
                        .orElse(filed.wheels()),
                word(stated, "engine", ENGINE, inspection).map("off"::equals).orElse(filed.engineOff()),
                word(stated, "fromRest", YES_NO, inspection).map("yes"::equals).orElse(filed.fromRest()));
    }

    private static Optional<String> word(
            Map<String, Stated> stated, String key, List<String> words, Inspection inspection) {
        return Optional.ofNullable(stated.get(key)).flatMap(text -> inspection.oneOf(text, words));
    }

    private static void unknown(String key, Stated text, Inspection inspection) {
        List<String> known = new ArrayList<>(List.of("wheels", "engine", "fromRest"));
        if (known.contains(key)) {
            return;
        }
        for (Condition condition : Condition.values()) {
            known.add(condition.key());
        }
        inspection.refuse("unknown-field", text, "no condition is called " + key, Inspection.choice(key, known));
    }
}
