package swashlight.desk.report;

import java.util.List;

/** What a line says. */
public sealed interface Value {
    /** A number: SI value of the measure. */
    record Number(double value, Measure measure) implements Value {
        public Number {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("a report never carries " + value);
            }
        }
    }

    /** A number with its spread (one standard deviation), both SI of the measure. */
    record Spread(double value, double spread, Measure measure) implements Value {}

    /** An interval between two numbers, SI of the measure. */
    record Between(double low, double high, Measure measure) implements Value {}

    /** A word of the catalogue under its full key, with values in its gaps; where the catalogue has none, the plain word. */
    record Word(String key, String plain, List<Value> values) implements Value {
        public Word {
            values = List.copyOf(values);
        }
    }

    /** Text that nobody translates: a name, a file, a key. */
    record Text(String text) implements Value {}

    /** Several values, one after the other. */
    record Several(List<Value> values) implements Value {
        public Several {
            values = List.copyOf(values);
        }
    }

    /** The sign of a measure's unit alone. */
    record Unit(Measure measure) implements Value {}

    /** Nothing to say here: an empty place in a table. */
    record Nothing() implements Value {}

    /** A number, SI of the measure. */
    static Value of(double value, Measure measure) {
        return new Number(value, measure);
    }

    /** A word of the catalogue. */
    static Value word(String key, Value... values) {
        return new Word(key, "", List.of(values));
    }

    /** A word of the catalogue, or this plain one where the catalogue has none. */
    static Value wordOr(String key, String plain) {
        return new Word(key, plain, List.of());
    }

    /** Text as it is. */
    static Value text(String text) {
        return new Text(text);
    }

    /** The sign of a measure's unit. */
    static Value unit(Measure measure) {
        return new Unit(measure);
    }

    /** An empty place. */
    static Value nothing() {
        return new Nothing();
    }
}
