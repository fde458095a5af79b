package swashlight.drive.trace;

import java.util.List;
import swashlight.drive.motion.MotionRun;
import swashlight.drive.motion.MotionWatcher;

/**
 * Keeps signals at even times, from the moment it is made; between two steps it goes straight. It never makes a run step otherwise.
 */
public final class Recorder implements MotionWatcher {
    private static final double LATE = 1e-9; // of an interval that a row may be late, 1

    private final double interval; // s
    private final double start; // s
    private final Reading reading;
    private final Series times = new Series();
    private final Series[] columns;
    private double before; // s

    /**
     * Begins with the run's present state as first row.
     *
     * @param signals columns
     * @param interval between rows, s
     */
    public Recorder(MotionRun run, List<Signal> signals, double interval) {
        if (!(interval > 0)) {
            throw new IllegalArgumentException("interval is " + interval + " s; it must be positive");
        }
        this.interval = interval;
        start = run.time();
        before = start;
        reading = new Reading(signals, run);
        columns = new Series[signals.size()];
        times.add(start);
        for (int i = 0; i < columns.length; i++) {
            columns[i] = new Series();
            columns[i].add(reading.now[i]);
        }
    }

    @Override
    public void stepped(MotionRun run) {
        reading.step(run);
        double now = run.time();
        double next = start + times.size() * interval;
        while (next <= now + LATE * interval) {
            double share = now > before ? Math.min(1, (next - before) / (now - before)) : 1;
            times.add(next);
            for (int i = 0; i < columns.length; i++) {
                columns[i].add(reading.between(i, share));
            }
            next = start + times.size() * interval;
        }
        before = now;
    }

    /** What has been kept so far. */
    public Trace trace() {
        double[][] values = new double[columns.length][];
        for (int i = 0; i < values.length; i++) {
            values[i] = columns[i].toArray();
        }
        return new Trace(reading.signals, times.toArray(), values);
    }
}
