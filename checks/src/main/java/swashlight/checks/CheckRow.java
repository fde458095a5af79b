package swashlight.checks;

import java.util.Map;

/**
 * One published value: what goes in, what should come out, how closely, and who says so.
 *
 * @param id        unique over all themes, {@code family/case}; rows of one family are answered by one law
 * @param quantity  what is computed, in words
 * @param inputs    what goes in, by name
 * @param printed   what should come out, as printed
 * @param expected  the same in SI
 * @param tolerance largest difference that still agrees, SI
 * @param why       why that tolerance
 * @param source    author or body, title, year, page or clause
 * @param status    how far the row may be trusted
 * @param note      errata and remarks, empty if none
 */
public record CheckRow(
        String id,
        String quantity,
        Map<String, String> inputs,
        Measure printed,
        double expected,
        double tolerance,
        String why,
        String source,
        Status status,
        String note) {

    public CheckRow {
        inputs = Map.copyOf(inputs);
        if (id.isBlank() || quantity.isBlank() || why.isBlank() || source.isBlank()) {
            throw new IllegalArgumentException("check '" + id + "': id, quantity, why and source must be filled in");
        }
        if (!(tolerance > 0)) {
            throw new IllegalArgumentException("check '" + id + "': tolerance must be more than zero, is " + tolerance);
        }
    }

    /** The part of the id before the stroke: the law that answers this row. */
    public String family() {
        int stroke = id.indexOf('/');
        return stroke < 0 ? id : id.substring(0, stroke);
    }

    /** The input of that name in SI. */
    public double si(String name) {
        return given(name).si();
    }

    /** The input of that name with its unit, as printed. */
    public Measure given(String name) {
        return Measure.parse(text(name));
    }

    /** The input of that name as written: for grades and other inputs that are words. */
    public String text(String name) {
        String value = inputs.get(name);
        if (value == null) {
            throw new IllegalArgumentException(
                    "check '" + id + "' has no input '" + name + "'; it has " + inputs.keySet());
        }
        return value;
    }

    /** Whether a computed SI value agrees; a NaN never does. */
    public boolean agrees(double got) {
        return Math.abs(got - expected) <= tolerance;
    }

    /** Fails, with everything needed to judge it, when a computed SI value does not agree. */
    public void assertAgrees(double got) {
        if (!agrees(got)) {
            throw new AssertionError(verdict(got));
        }
    }

    /** One line: id, expected, got, tolerance, source. */
    public String verdict(double got) {
        String unit = CheckUnit.of(printed.unit()).si();
        return id + ": " + quantity + ": expected " + expected + " " + unit + " (printed " + printed + "), got " + got
                + ", off by " + Math.abs(got - expected) + ", allowed " + tolerance + " (" + why + "). Source: "
                + source
                + " [" + status.word() + "]" + (note.isEmpty() ? "" : ". Note: " + note);
    }

    @Override
    public String toString() {
        return id;
    }
}
