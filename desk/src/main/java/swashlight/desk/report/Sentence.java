package swashlight.desk.report;

import java.util.List;

/**
 * A sentence of the catalogue with values in its gaps.
 *
 * @param key its stable name
 * @param values for the gaps {0}, {1}, …
 */
public record Sentence(String key, List<Value> values) implements Line {
    public Sentence {
        values = List.copyOf(values);
    }

    /** A sentence with the values for its gaps. */
    public static Sentence of(String key, Value... values) {
        return new Sentence(key, List.of(values));
    }
}
