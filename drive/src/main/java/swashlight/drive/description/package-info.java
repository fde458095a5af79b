/**
 * What is known of a drive: every number, where it came from and how sure it is.
 *
 * <p>Idea: one closed list of {@link swashlight.drive.description.Parameter}s (in sections: oil, pump, motor, loop, ...); a
 * {@link swashlight.drive.description.DriveDescription} gives each a value, a spread and an origin. Faults, fits and spreads all
 * change these numbers and nothing else. Imports the JDK only. Begin with {@code Parameters}.
 */
package swashlight.drive.description;
