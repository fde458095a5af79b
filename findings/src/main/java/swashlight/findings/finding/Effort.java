package swashlight.findings.finding;

/**
 * What the answer cost, so that it can be had again.
 *
 * @param seed of all chance
 * @param causes weighed
 * @param machines drawn and weighed
 * @param unsolved machines among them with a reading for which no settled state was found
 * @param leastEffectiveSize smallest effective sample size among causes above 5 %, 1
 */
public record Effort(long seed, int causes, int machines, int unsolved, double leastEffectiveSize) {}
