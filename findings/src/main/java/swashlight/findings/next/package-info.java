/**
 * Which reading to take next, by money: how much each usual one is expected to save, less what it costs to take.
 *
 * <p>Idea: an {@link swashlight.findings.next.Errand} is a reading with its time and tools; {@link swashlight.findings.next.Worth} foresees
 * it on every suspect and integrates over what it may show; {@link swashlight.findings.next.Ranking} orders them and says when to stop.
 * Imports {@code choice}, {@code finding} and what they stand on. Begin with {@code Ranking}.
 */
package swashlight.findings.next;
