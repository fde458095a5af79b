package swashlight.checks;

/**
 * A number with its unit, as a source prints it.
 *
 * @param number the digits as printed, kept because they carry the precision
 * @param unit   a unit of {@link CheckUnit}; {@code 1} for a plain number
 */
public record Measure(String number, String unit) {

    public Measure {
        Double.parseDouble(number);
        CheckUnit.of(unit);
    }

    /** Reads {@code 57.6 mm3/s}; a number alone has the unit 1. */
    static Measure parse(String text) {
        String trimmed = text.trim();
        int space = trimmed.indexOf(' ');
        return space < 0
                ? new Measure(trimmed, "1")
                : new Measure(
                        trimmed.substring(0, space),
                        trimmed.substring(space + 1).trim());
    }

    /** The value in SI units (kelvin for temperatures, radian for angles, cubic metre a revolution for displacements). */
    public double si() {
        return CheckUnit.of(unit).toSi(Double.parseDouble(number));
    }

    /** The same number read as a difference: no offset for degrees Celsius or Fahrenheit. */
    double siDifference() {
        return Double.parseDouble(number) * CheckUnit.of(unit).factor();
    }

    /** Half of one unit in the last printed digit, in SI: 57.6 mm3/s gives 0.05e-9. */
    double halfLastDigit() {
        int exponentAt = Math.max(number.indexOf('e'), number.indexOf('E'));
        String digits = exponentAt < 0 ? number : number.substring(0, exponentAt);
        int exponent = exponentAt < 0 ? 0 : Integer.parseInt(number.substring(exponentAt + 1));
        int point = digits.indexOf('.');
        int decimals = point < 0 ? 0 : digits.length() - point - 1;
        return 0.5
                * Double.parseDouble("1e" + (exponent - decimals))
                * CheckUnit.of(unit).factor();
    }

    @Override
    public String toString() {
        return unit.equals("1") ? number : number + " " + unit;
    }
}
