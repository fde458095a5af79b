package swashlight.files.unit;

import java.math.BigDecimal;
import java.util.OptionalDouble;

/** What a text with a unit said: a value, or why it says none. */
public sealed interface UnitAnswer {
    /**
     * A value.
     *
     * @param value SI unit of the dimension asked for
     * @param spread one standard deviation when one stands behind ±, same unit
     * @param number the number as written
     * @param unit the unit as written
     */
    record Understood(double value, OptionalDouble spread, BigDecimal number, Unit unit) implements UnitAnswer {}

    /**
     * No value.
     *
     * @param key stable name: empty, not-a-number, decimal-comma, no-unit, unknown-unit, wrong-dimension, mixed-spread
     * @param wrong what is wrong with it
     * @param right what would be right
     */
    record Refused(String key, String wrong, String right) implements UnitAnswer {}
}
