package swashlight.files.unit;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import swashlight.drive.description.Dimension;

/**
 * Reads a number with its unit, and a spread behind ± where there is one: {@code 7.1 cm3/rev}, {@code 80 ± 3 °C},
 * {@code 12 µm ± 20 %}. A bare number is a plain number and nothing else.
 */
public final class UnitText {
    /** Characters in the longest text that can be a number with a unit, unit 1. */
    private static final int LONGEST = 80;

    private static final Pattern NUMBER = Pattern.compile(
            "^([+-]?(?:\\d{1,40}(?:\\.\\d{0,40})?|\\.\\d{1,40})(?:[eE][+-]?\\d{1,3})?)(.*)$", Pattern.DOTALL);
    private static final Pattern COMMA = Pattern.compile("^[+-]?\\d+,\\d+");
    private static final Pattern GAP = Pattern.compile("^[+-]?\\d{1,3}(?:[\\s'_]\\d{3})+\\b");
    private static final Pattern SPREAD = Pattern.compile("±|\\+/-|\\+-");
    private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");

    private UnitText() {}

    /** The value a text states for a dimension. */
    public static UnitAnswer read(String text, Dimension dimension) {
        return read(text, dimension, false);
    }

    /** A slope: an angle, or a grade in per cent, {@code 10 %} = atan 0.1. */
    public static UnitAnswer readSlope(String text) {
        return read(text, Dimension.ANGLE, true);
    }

    private static UnitAnswer read(String text, Dimension dimension, boolean gradeAllowed) {
        String line = text.strip().replace('\u2212', '-').replace('\u00a0', ' ').replace('\u202f', ' ');
        if (line.isEmpty()) {
            return new UnitAnswer.Refused("empty", "nothing stands here", right(dimension));
        }
        if (line.length() > LONGEST) {
            return notANumber(line, dimension);
        }
        String[] sides = SPREAD.split(line, 2);
        Part value = Part.of(sides[0]);
        if (sides.length == 1) {
            return value.number().isEmpty() ? notANumber(line, dimension) : single(value, dimension, gradeAllowed);
        }
        Part spread = Part.of(sides[1]);
        if (value.number().isEmpty() || spread.number().isEmpty()) {
            return notANumber(line, dimension);
        }
        return pair(value, spread, dimension, gradeAllowed);
    }

    /** A spread or an error given on its own: a difference, so 3 °C is 3 K. A share in per cent where the value is known. */
    public static UnitAnswer readDifference(String text, Dimension dimension) {
        UnitAnswer answer = read(text, dimension, false);
        if (answer instanceof UnitAnswer.Understood understood) {
            return new UnitAnswer.Understood(
                    understood.unit().differenceToSi(understood.number()),
                    OptionalDouble.empty(),
                    understood.number(),
                    understood.unit());
        }
        return answer;
    }

    private static UnitAnswer single(Part part, Dimension dimension, boolean gradeAllowed) {
        if (gradeAllowed && part.unit().equals("%")) {
            double grade = part.number().get().multiply(HUNDREDTH).doubleValue();
            return new UnitAnswer.Understood(
                    Math.atan(grade), OptionalDouble.empty(), part.number().get(), degrees());
        }
        Optional<Unit> unit = UnitTable.find(dimension, part.unit());
        return unit.isEmpty()
                ? refusal(part, dimension)
                : new UnitAnswer.Understood(
                        unit.get().toSi(part.number().get()),
                        OptionalDouble.empty(),
                        part.number().get(),
                        unit.get());
    }

    private static UnitAnswer pair(Part value, Part spread, Dimension dimension, boolean gradeAllowed) {
        boolean share = spread.unit().equals("%") && !value.unit().equals("%");
        boolean shared = value.unit().isEmpty() && !share;
        Part full = shared ? new Part(value.number(), spread.unit()) : value;
        UnitAnswer answer = single(full, dimension, gradeAllowed);
        if (!(answer instanceof UnitAnswer.Understood understood)) {
            return answer;
        }
        BigDecimal number = spread.number().get();
        if (share && dimension == Dimension.NUMBER) {
            return new UnitAnswer.Refused(
                    "mixed-spread",
                    "it is not clear what the per cent are of",
                    "write both alike, for example 0.9 ± 0.03 or 90 ± 3 %");
        }
        if (share) {
            double width = Math.abs(understood
                    .unit()
                    .differenceToSi(understood.number().multiply(number).multiply(HUNDREDTH)));
            return withSpread(understood, width);
        }
        Part difference = spread.unit().isEmpty() ? new Part(spread.number(), value.unit()) : spread;
        if (gradeAllowed && difference.unit().equals("%")) {
            double grade = full.number().get().multiply(HUNDREDTH).doubleValue();
            return withSpread(understood, number.multiply(HUNDREDTH).doubleValue() / (1 + grade * grade));
        }
        Optional<Unit> unit = UnitTable.find(dimension, difference.unit());
        return unit.isEmpty()
                ? refusal(difference, dimension)
                : withSpread(understood, unit.get().differenceToSi(number));
    }

    private static UnitAnswer withSpread(UnitAnswer.Understood value, double spread) {
        return new UnitAnswer.Understood(value.value(), OptionalDouble.of(spread), value.number(), value.unit());
    }

    private static UnitAnswer refusal(Part part, Dimension dimension) {
        String written = part.unit();
        if (written.isEmpty()) {
            return new UnitAnswer.Refused("no-unit", "the unit is missing", right(dimension));
        }
        if (Character.isDigit(written.charAt(0)) || written.charAt(0) == ',') {
            return new UnitAnswer.Refused("not-a-number", "this is not one number", right(dimension));
        }
        Optional<Dimension> other = UnitMeaning.of(written, dimension);
        if (other.isPresent()) {
            return new UnitAnswer.Refused(
                    "wrong-dimension",
                    written + " measures " + UnitMeaning.words(other.get()) + ", not " + UnitMeaning.words(dimension),
                    right(dimension));
        }
        List<String> labels = UnitTable.of(dimension).stream().map(Unit::label).toList();
        String meant = Nearest.to(written, labels)
                .filter(label -> !label.isEmpty())
                .map(label -> ". Did you mean " + part.number().get() + " " + label + "?")
                .orElse("");
        return new UnitAnswer.Refused(
                "unknown-unit", "the unit " + written + " is not known here", right(dimension) + meant);
    }

    private static UnitAnswer notANumber(String line, Dimension dimension) {
        if (COMMA.matcher(line).find()) {
            return new UnitAnswer.Refused(
                    "decimal-comma",
                    "a comma stands in the number",
                    "write a point for decimals and nothing between thousands: 7.1, 1500");
        }
        if (GAP.matcher(line).find()) {
            return new UnitAnswer.Refused(
                    "thousands-gap", "thousands are set apart", "write the digits together: 3000, not 3 000");
        }
        return new UnitAnswer.Refused("not-a-number", "this does not begin with a number", right(dimension));
    }

    private static Unit degrees() {
        return UnitTable.find(Dimension.ANGLE, "deg").orElseThrow();
    }

    /** The units that are right for a dimension, in words. */
    public static String right(Dimension dimension) {
        if (dimension == Dimension.NUMBER) {
            return "a plain number, or one in %";
        }
        return "a number with one of the units "
                + UnitTable.of(dimension).stream().map(Unit::label).collect(Collectors.joining(", "));
    }

    /** A number and what stands behind it. */
    private record Part(Optional<BigDecimal> number, String unit) {
        static Part of(String text) {
            String plain = text.strip();
            Matcher matcher = NUMBER.matcher(plain);
            if (COMMA.matcher(plain).find() || GAP.matcher(plain).find() || !matcher.matches()) {
                return new Part(Optional.empty(), plain);
            }
            return new Part(
                    Optional.of(new BigDecimal(matcher.group(1))),
                    matcher.group(2).strip());
        }
    }
}
