/**
 * Gears, tyres and ground.
 *
 * <p>Idea: ratios of force to load, and of power out to power in. Imports nothing but the JDK. Begin with
 * {@link swashlight.drive.machine.SoilTraction}.
 */
package swashlight.drive.machine;
