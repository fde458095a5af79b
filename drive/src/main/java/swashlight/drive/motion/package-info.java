/**
 * The piston-by-piston view: every chamber, both sides, shafts and machine in time, from the same numbers as the steady view.
 *
 * <p>Idea: oil mass is the state and pressure follows from it, so nothing is lost on coarse steps; chambers are eliminated one by one.
 * Imports oil, gap, description. Begin with {@link swashlight.drive.motion.MovingDrive}.
 */
package swashlight.drive.motion;
