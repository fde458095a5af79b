package swashlight.desk.report;

/**
 * One column of a table.
 *
 * @param key its stable name; where it has none, its heading serves
 * @param measure of its numbers; {@link Measure#NONE} for words, {@link Measure#OWN} where each row has its own
 * @param heading its heading; nothing for the one that the catalogue has for the key
 * @param unitShown whether the unit stands in the heading for readers too, not only for machines
 */
public record Column(String key, Measure measure, Value heading, boolean unitShown) {
    /** A column with the catalogue's heading. */
    public Column(String key, Measure measure) {
        this(key, measure, Value.nothing(), true);
    }

    /** A column of words. */
    public static Column words(String key) {
        return new Column(key, Measure.NONE);
    }

    /** A column of numbers under a heading of its own. */
    public static Column headed(Value heading, Measure measure) {
        return new Column("", measure, heading, true);
    }

    /** One of many columns with the same unit, which is said elsewhere. */
    public static Column plain(Value heading, Measure measure) {
        return new Column("", measure, heading, false);
    }
}
