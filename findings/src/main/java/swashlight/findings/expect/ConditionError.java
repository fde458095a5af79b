package swashlight.findings.expect;

/**
 * An error of a condition that one or more readings share.
 *
 * @param name the same for all readings that share it
 * @param condition as stated or usual
 */
public record ConditionError(String name, Condition condition) {}
