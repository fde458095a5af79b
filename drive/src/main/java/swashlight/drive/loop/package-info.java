/**
 * The loop as a whole in its simplest forms: a leak between ideal units, an oil spring.
 *
 * <p>Idea: yardsticks the full views must meet when everything else is taken away. Imports nothing but the JDK. Begin with
 * {@link swashlight.drive.loop.LinearLoop}.
 */
package swashlight.drive.loop;
