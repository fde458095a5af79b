/**
 * The oil: viscosity, density, compressibility, free air.
 *
 * <p>Idea: {@link swashlight.drive.oil.Oil} is what a can says; {@link swashlight.drive.oil.OilAt} is that oil at one
 * temperature, ready for hot loops. Imports nothing but the JDK. Begin with {@code Oil}.
 */
package swashlight.drive.oil;
