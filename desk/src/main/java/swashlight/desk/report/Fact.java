package swashlight.desk.report;

/**
 * One named value: "Speed over ground 2.31 m/s".
 *
 * @param key its stable name
 * @param value what it is
 */
public record Fact(String key, Value value) implements Line {}
