/**
 * What a reading should be on a machine, before anyone takes it.
 *
 * <p>Idea: {@link swashlight.findings.outlook.Outlook} takes one reading on many machines of the described make, everything unknown drawn, and
 * tells the middle, the interval and where it comes from.
 */
package swashlight.findings.outlook;
