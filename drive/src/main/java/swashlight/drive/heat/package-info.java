/**
 * Where lost power goes: oil that warms, a case that gives off heat.
 *
 * <p>Idea: each path is a film coefficient or a rise. Imports nothing but the JDK. Begin with
 * {@link swashlight.drive.heat.ThrottleHeat}.
 */
package swashlight.drive.heat;
