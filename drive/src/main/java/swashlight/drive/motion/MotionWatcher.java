package swashlight.drive.motion;

/** Looks at a run after every step; it reads and never changes it. */
@FunctionalInterface
public interface MotionWatcher {
    /** Called when the run has taken a step. */
    void stepped(MotionRun run);

    /** Several watchers as one, called in order. */
    static MotionWatcher all(MotionWatcher... watchers) {
        MotionWatcher[] each = watchers.clone();
        return run -> {
            for (MotionWatcher watcher : each) {
                watcher.stepped(run);
            }
        };
    }
}
