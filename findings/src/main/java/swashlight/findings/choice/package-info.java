/**
 * What to do about a machine, by money: every kind of work on every suspect, with the machine computed after it.
 *
 * <p>Idea: a {@link swashlight.findings.choice.Ledger} holds what each {@link swashlight.findings.choice.RepairOption} would cost on each
 * suspect of a belief, comebacks included; a {@link swashlight.findings.choice.Choice} ranks them. Imports drive, {@code belief}, {@code
 * cost} and what they stand on. Begin with {@code Choice}.
 */
package swashlight.findings.choice;
