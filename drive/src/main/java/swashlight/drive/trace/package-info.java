/**
 * What a run in time yields: traces, means over whole cycles with their ripple, orders of the shaft, and where oil was missing.
 *
 * <p>Idea: each is a {@link swashlight.drive.motion.MotionWatcher} that sees every step and keeps plain {@code double[]}; a run may have
 * several. Nothing is judged here. Imports motion and description. Begin with {@link swashlight.drive.trace.Recorder}.
 */
package swashlight.drive.trace;
