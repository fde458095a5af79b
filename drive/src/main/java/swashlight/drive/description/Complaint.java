package swashlight.drive.description;

/**
 * One thing wrong with a description, for people and programs.
 *
 * @param key stable name of the fault: {@code out-of-range}, {@code radii-order}, …
 * @param field key of the parameter at fault
 * @param given what stands there, SI unit of the field
 * @param low least value that would be right, SI unit of the field
 * @param high greatest value that would be right, SI unit of the field
 * @param text what is wrong and what would be right
 */
public record Complaint(String key, String field, double given, double low, double high, String text) {}
