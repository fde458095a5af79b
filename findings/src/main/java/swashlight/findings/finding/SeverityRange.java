package swashlight.findings.finding;

import swashlight.drive.fault.Fault;

/**
 * How severe, if this is the cause; all in the SI unit of the fault's dimension.
 *
 * @param fault which
 * @param low 5 % lie below, own unit
 * @param middle half lie below, own unit
 * @param high 5 % lie above, own unit
 */
public record SeverityRange(Fault fault, double low, double middle, double high) {}
