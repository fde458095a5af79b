/**
 * Where lost power goes: oil that warms, a case that gives off heat.
 *
 * <p>Idea: each path is a film coefficient or a rise; {@link swashlight.drive.heat.HeatedDrive} lets a whole drive warm itself. Imports
 * description and steady. Begin with {@code HeatedDrive}.
 */
package swashlight.drive.heat;
