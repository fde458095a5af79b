package swashlight.desk.report;

/**
 * One column of a table.
 *
 * @param key its stable name
 * @param measure of its numbers; {@link Measure#NONE} for words, {@link Measure#OWN} where each row has its own
 */
public record Column(String key, Measure measure) {
    /** A column of words. */
    public static Column words(String key) {
        return new Column(key, Measure.NONE);
    }
}
