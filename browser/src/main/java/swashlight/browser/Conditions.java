package swashlight.browser;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import swashlight.drive.description.Parameter;
import swashlight.findings.reading.Setup;

/** Conditions by key, gathered into the setup of a reading. */
final class Conditions {
    private final Map<Stated, Double> values = new EnumMap<>(Stated.class);

    /** Keys with their values, SI. */
    Conditions(String[] keys, double[] numbers) {
        if (keys.length != numbers.length) {
            throw new IllegalArgumentException(numbers.length + " values for " + keys.length + " conditions");
        }
        for (int i = 0; i < keys.length; i++) {
            values.put(find(keys[i]), numbers[i]);
        }
    }

    private static Stated find(String key) {
        for (Stated condition : Stated.values()) {
            if (condition.key().equals(key)) {
                return condition;
            }
        }
        throw new IllegalArgumentException(
                "there is no condition " + key + "; the list is conditions().keys(), for example oilTemperature");
    }

    Setup setup(Optional<Parameter> part) {
        return new Setup(
                number(Stated.STROKE),
                number(Stated.THROTTLE),
                number(Stated.INPUT_SPEED),
                number(Stated.OIL_TEMPERATURE),
                number(Stated.TEMPERATURE_ERROR),
                number(Stated.SLOPE),
                number(Stated.SLOPE_ERROR),
                number(Stated.DISTANCE),
                number(Stated.LOAD),
                number(Stated.SINCE),
                number(Stated.AMBIENT),
                part,
                holds(Stated.LIFTED),
                holds(Stated.HELD),
                holds(Stated.BACKWARDS));
    }

    private OptionalDouble number(Stated condition) {
        Double value = values.get(condition);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private boolean holds(Stated condition) {
        return values.getOrDefault(condition, 0.0) != 0;
    }
}
