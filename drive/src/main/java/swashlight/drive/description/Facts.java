package swashlight.drive.description;

/**
 * The fixed facts of one parameter.
 *
 * @param section the part of the drive it belongs to
 * @param name quantity, spelt
 * @param dimension what it measures
 * @param low least allowed value, SI unit of the dimension
 * @param high greatest allowed value, SI unit of the dimension
 * @param typical value where nothing is known, SI unit of the dimension; ignored when {@code sized}
 * @param sized true when the typical value follows from the size of the drive ({@link TypicalDrive})
 * @param spread one standard deviation of a typical value: 1 when relative, else SI unit of the dimension
 * @param relative true when the spread is a share of the value
 * @param meaning one plain line
 */
public record Facts(
        String section,
        String name,
        Dimension dimension,
        double low,
        double high,
        double typical,
        boolean sized,
        double spread,
        boolean relative,
        String meaning) {

    /** A parameter with one typical value for every drive. */
    static Facts fixed(
            String key, Dimension dimension, double low, double high, double typical, double spread, String meaning) {
        return of(key, dimension, low, high, typical, false, spread, meaning);
    }

    /** A parameter whose typical value follows from the size of the drive. */
    static Facts sized(String key, Dimension dimension, double low, double high, double spread, String meaning) {
        return of(key, dimension, low, high, 0, true, spread, meaning);
    }

    /** Spread given in the parameter's own unit instead of as a share. */
    Facts absolute() {
        return new Facts(section, name, dimension, low, high, typical, sized, spread, false, meaning);
    }

    /** The same facts in another section (pump and motor share theirs). */
    Facts in(String otherSection) {
        return new Facts(otherSection, name, dimension, low, high, typical, sized, spread, relative, meaning);
    }

    private static Facts of(
            String key,
            Dimension dimension,
            double low,
            double high,
            double typical,
            boolean sized,
            double spread,
            String meaning) {
        int dot = key.indexOf('.');
        return new Facts(
                key.substring(0, dot),
                key.substring(dot + 1),
                dimension,
                low,
                high,
                typical,
                sized,
                spread,
                true,
                meaning);
    }
}
