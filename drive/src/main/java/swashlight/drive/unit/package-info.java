/**
 * Rotating groups seen from outside: geometry, ripple, efficiencies, loss models.
 *
 * <p>Idea: a unit is measured against what it would do without loss. Imports nothing but the JDK. Begin with
 * {@link swashlight.drive.unit.PistonGroup}.
 */
package swashlight.drive.unit;
