package swashlight.drive.trace;

import java.util.List;
import swashlight.drive.motion.MotionRun;

/** The values of some signals before and after the last step. */
final class Reading {
    final List<Signal> signals;
    double[] before; // SI
    double[] now; // SI

    Reading(List<Signal> signals, MotionRun run) {
        this.signals = List.copyOf(signals);
        before = new double[signals.size()];
        now = new double[signals.size()];
        read(run);
        System.arraycopy(now, 0, before, 0, now.length);
    }

    void step(MotionRun run) {
        double[] old = before;
        before = now;
        now = old;
        read(run);
    }

    private void read(MotionRun run) {
        for (int i = 0; i < now.length; i++) {
            now[i] = signals.get(i).of(run);
        }
    }

    /** Value of a signal so far (share of the step, 1) into the step, straight between both ends. */
    double between(int signal, double share) {
        return before[signal] + share * (now[signal] - before[signal]);
    }
}
