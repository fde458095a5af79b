package swashlight.desk.report;

/** One element of a report. */
public sealed interface Line permits Fact, Sentence, Chapter, Table {
    /** Its stable name: the field in JSON, and where the catalogue keeps its words. */
    String key();
}
