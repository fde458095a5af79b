/**
 * What can be wrong with a drive, as changes of its numbers.
 *
 * <p>Idea: a {@link swashlight.drive.fault.Fault} names one thing a technician could find; its severity has its own unit and moves one or
 * more parameters (or the duty), never a result. Imports description, steady and motion. Begin with {@code Faults}.
 */
package swashlight.drive.fault;
