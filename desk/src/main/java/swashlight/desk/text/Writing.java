package swashlight.desk.text;

import java.util.List;
import java.util.stream.Collectors;
import swashlight.desk.report.Column;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Scale;
import swashlight.desk.report.Value;
import swashlight.files.unit.UnitSystem;

/** Values as words and digits of one language and one system of units. */
public record Writing(Words words, UnitSystem units) {
    private static final int DIGITS = 4;
    private static final int MOST_DIGITS = 5; // of a number with its spread
    private static final double SUREST = 99.95; // %, above it nothing is said to be sure
    private static final double SMALLEST = 1e-6; // in any shown unit

    /** A value as it stands in running text, number with unit. */
    public String of(Value value) {
        if (value instanceof Value.Number number) {
            return withUnit(number(number.value(), number.measure()), number.measure());
        }
        if (value instanceof Value.Spread spread) {
            return spread(spread);
        }
        if (value instanceof Value.Between between) {
            return withUnit(
                    number(between.low(), between.measure()) + " … " + number(between.high(), between.measure()),
                    between.measure());
        }
        if (value instanceof Value.Word word) {
            String found = words.find(word.key()).orElse(word.plain().isEmpty() ? word.key() : word.plain());
            return Words.fill(found, word.values(), this::of);
        }
        if (value instanceof Value.Unit unit) {
            return scale(unit.measure()).unit();
        }
        if (value instanceof Value.Text text) {
            return text.text();
        }
        if (value instanceof Value.Several several) {
            return several.values().stream().map(this::of).collect(Collectors.joining(", "));
        }
        return "";
    }

    /** A column's name for machines. */
    public String key(Column column) {
        return column.key().isEmpty() ? of(column.heading()) : column.key();
    }

    /** An SI number in its unit's digits, without the unit. */
    public String number(double si, Measure measure) {
        double shown = scale(measure).shown(si);
        return switch (measure) {
            case DEVIATIONS -> Digits.fixed(shown, 1);
            case TEMPERATURE, SHARE, CHANCE -> Digits.fixed(shown, Math.abs(shown) < 100 ? 1 : 0);
            case ROTATION -> Digits.fixed(shown, Math.abs(shown) < 100 ? 1 : 0);
            default -> whole(shown) ? Digits.fixed(shown, 0) : Digits.significant(shown, DIGITS);
        };
    }

    /** The same without zeros at the end. */
    public String shortest(double si, Measure measure) {
        String digits = number(si, measure);
        return digits.contains(".") && !digits.contains("·")
                ? digits.replaceAll("0+$", "").replaceAll("\\.$", "")
                : digits;
    }

    /** The unit a measure is shown in. */
    public Scale scale(Measure measure) {
        return measure.scale(units);
    }

    /** Digits followed by the unit: "12 %", "10°", "3 bar". */
    public String withUnit(String digits, Measure measure) {
        String unit = scale(measure).unit();
        if (unit.isEmpty()) {
            return digits;
        }
        return unit.equals("°") ? digits + unit : digits + " " + unit;
    }

    private String spread(Value.Spread given) {
        double shown = scale(given.measure()).shown(given.value());
        double around = scale(given.measure()).shownDifference(given.spread());
        if (given.measure() == Measure.CHANCE && shown > SUREST) {
            return Words.fill(
                    words.say("chance.over"), List.of(Value.text(withUnit("99.9", given.measure()))), this::of);
        }
        if (around == 0) {
            return withUnit(number(given.value(), given.measure()), given.measure());
        }
        int decimals = Math.min(Digits.decimalsFor(around), mostDecimals(shown, given.measure()));
        String text = Digits.fixed(shown, decimals) + " ± " + Digits.fixed(around, decimals);
        return withUnit(text, given.measure());
    }

    /** A spread far below the number is not worth more digits. */
    private static int mostDecimals(double shown, Measure measure) {
        double size = Math.max(Math.abs(shown), SMALLEST);
        return measure == Measure.SHARE || measure == Measure.CHANCE
                ? 1
                : Math.max(0, MOST_DIGITS - 1 - (int) Math.floor(Math.log10(size)));
    }

    /** Whether a number is whole but for rounding; a tiny one is not nothing. */
    static boolean whole(double shown) {
        double size = Math.abs(shown);
        return shown == 0 || (size > 0.5 && size < 1e6 && Math.abs(shown - Math.rint(shown)) < 1e-9 * size);
    }
}
