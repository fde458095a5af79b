package swashlight.findings.cause;

import swashlight.drive.fault.Fault;

/**
 * One fault within a cause.
 *
 * @param fault what is wrong
 * @param severity how severe before reading
 * @param action what it calls for
 */
public record Part(Fault fault, SeverityPrior severity, Action action) {}
