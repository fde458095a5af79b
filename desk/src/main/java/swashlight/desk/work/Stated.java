package swashlight.desk.work;

/**
 * A text somebody gave, and where, so that a complaint can point there.
 *
 * @param where the option, or file, line and field
 * @param text as given, number with unit
 */
public record Stated(String where, String text) {}
