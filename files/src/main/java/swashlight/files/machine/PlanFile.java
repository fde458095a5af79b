package swashlight.files.machine;

import swashlight.drive.motion.MotionPlan;

/**
 * A duty over time from a file.
 *
 * @param name its author's name for it
 * @param plan what is done, from where, for how long
 */
public record PlanFile(String name, MotionPlan plan) {}
