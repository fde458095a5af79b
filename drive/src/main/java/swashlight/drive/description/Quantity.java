package swashlight.drive.description;

/**
 * A value with its spread and its origin.
 *
 * @param value SI unit of the parameter's dimension
 * @param spread one standard deviation, SI unit of the parameter's dimension; 0 when exact
 * @param origin where it came from
 */
public record Quantity(double value, double spread, Origin origin) {
    /** @throws IllegalArgumentException when a number is not finite or the spread is negative */
    public Quantity {
        if (!(Math.abs(value) < Double.MAX_VALUE) || !(spread >= 0 && spread < Double.MAX_VALUE)) {
            throw new IllegalArgumentException("value " + value + " with spread " + spread + " is not a quantity");
        }
    }

    /** A stated value, exact (value in the SI unit of its parameter). */
    public static Quantity given(double value) {
        return new Quantity(value, 0, Origin.GIVEN);
    }

    /** A stated value with a stated spread (both in the SI unit of its parameter). */
    public static Quantity given(double value, double spread) {
        return new Quantity(value, spread, Origin.GIVEN);
    }
}
