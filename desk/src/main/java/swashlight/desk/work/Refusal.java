package swashlight.desk.work;

/**
 * One thing wrong with the input.
 *
 * @param key stable name of the fault
 * @param where file, line and field, or the option
 * @param given what stands there
 * @param wrong what is wrong with it
 * @param right what would be right
 */
public record Refusal(String key, String where, String given, String wrong, String right) {}
