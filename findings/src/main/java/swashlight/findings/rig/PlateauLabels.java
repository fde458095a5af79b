package swashlight.findings.rig;

/**
 * What the rig's keepers say of a cycle.
 *
 * @param leakClass 0 none, 1 weak, 2 severe
 * @param valve condition of the load valve, 1, 0 … 1
 * @param accumulator gas charge of the accumulator, Pa
 * @param unstable whether the rig had not settled
 */
public record PlateauLabels(int leakClass, double valve, double accumulator, boolean unstable) {}
