package swashlight.files.document;

/**
 * A place in a file.
 *
 * @param line from 1
 * @param column from 1
 */
public record Spot(int line, int column) {
    /** The beginning of a file. */
    public static final Spot START = new Spot(1, 1);
}
