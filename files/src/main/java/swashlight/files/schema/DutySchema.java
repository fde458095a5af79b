package swashlight.files.schema;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import swashlight.files.machine.Condition;
import swashlight.files.machine.DutyFiles;

/** The shape of a duty. */
final class DutySchema {
    private DutySchema() {}

    static Map<String, Object> shape() {
        Map<String, Object> properties = DriveSchema.heading("duty");
        properties.put("engine", Shapes.words("whether it runs", List.of("running", "off")));
        for (Condition condition :
                List.of(Condition.THROTTLE, Condition.STROKE, Condition.OIL_TEMPERATURE, Condition.SLOPE)) {
            properties.put(condition.key(), Definitions.measure(condition.meaning(), condition.range()));
        }
        DutyFiles.ranges().forEach((key, range) -> properties.put(key, Definitions.measure(key, range)));
        properties.put("direction", Shapes.words("which way", List.of("forward", "reverse")));
        properties.put("wheels", Shapes.words("what they stand on", List.of("ground", "lifted", "held")));
        properties.put("fromRest", Shapes.flag("it starts from standstill"));
        properties.put("begins", Shapes.words("how a run over time begins", List.of("settled", "atRest")));
        properties.put("lasts", Definitions.measure("how long a run over time is", DutyFiles.duration()));
        properties.put("ambient", Definitions.measure(Condition.AMBIENT.meaning(), Condition.AMBIENT.range()));
        properties.put("over", Shapes.list(moment()));
        return Shapes.keys(properties, List.of());
    }

    /** What has another value from some moment on. */
    private static Map<String, Object> moment() {
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put("at", Definitions.measure("when, from the beginning", DutyFiles.moment()));
        DutyFiles.changing().forEach((key, range) -> properties.put(key, Definitions.measure(key, range)));
        return Shapes.keys(properties, List.of("at"));
    }
}
