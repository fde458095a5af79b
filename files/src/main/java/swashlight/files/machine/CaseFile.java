package swashlight.files.machine;

import swashlight.findings.reading.MachineCase;

/**
 * What a case file says beyond the case.
 *
 * @param machineCase the case
 * @param about a sentence on it; empty when there is none
 */
public record CaseFile(MachineCase machineCase, String about) {}
