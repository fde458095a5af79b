package swashlight.drive.trace;

import java.util.List;
import swashlight.drive.motion.MotionRun;
import swashlight.drive.motion.MotionWatcher;

/**
 * Means and ripple of signals over whole cycles: revolutions, piston passes, or equal times.
 *
 * <pre>
 *   mean  = (1/T) ∫ v dt        exact for v straight between steps; a step over the end of a cycle is cut there
 *   rms²  = (1/T) ∫ (v − mean)² dt
 * </pre>
 *
 * Cycles are counted from the moment it is made; a shaft that turns back counts its way, not its angle.
 */
public final class CycleMeter implements MotionWatcher {
    private final Pace pace;
    private final double size; // rad or s
    private final Reading reading;
    private final Cycles cycles;
    private final double[] sum; // ∫ (v − v₀) dt
    private final double[] square; // ∫ (v − v₀)² dt
    private final double[] origin; // v₀, value at the cycle's beginning
    private final double[] least;
    private final double[] greatest;
    private double paceBefore;
    private double way; // rad or s since the cycle began
    private double time; // s reached
    private double begun; // s

    /**
     * Begins now.
     *
     * @param size of one cycle, rad of the shaft or s
     */
    public CycleMeter(MotionRun run, List<Signal> signals, Pace pace, double size) {
        if (!(size > 0)) {
            throw new IllegalArgumentException("a cycle of " + size + " is none; its size must be positive");
        }
        this.pace = pace;
        this.size = size;
        reading = new Reading(signals, run);
        cycles = new Cycles(reading.signals, run.time());
        int count = signals.size();
        sum = new double[count];
        square = new double[count];
        origin = new double[count];
        least = new double[count];
        greatest = new double[count];
        paceBefore = pace.of(run);
        time = run.time();
        begun = time;
        for (int i = 0; i < count; i++) {
            begin(i, reading.now[i]);
        }
    }

    private void begin(int signal, double value) {
        sum[signal] = 0;
        square[signal] = 0;
        origin[signal] = value;
        least[signal] = value;
        greatest[signal] = value;
    }

    @Override
    public void stepped(MotionRun run) {
        reading.step(run);
        double now = run.time();
        double length = now - time; // s
        double went = Math.abs(pace.of(run) - paceBefore);
        paceBefore = pace.of(run);
        double from = 0; // share of the step used up
        while (went > 0 && way + (1 - from) * went >= size) {
            double share = Math.min(1, from + (size - way) / went);
            add(from, share, length);
            close(time + share * length, share);
            from = share;
            way = 0;
        }
        add(from, 1, length);
        way += (1 - from) * went;
        time = now;
    }

    private void add(double from, double to, double length) {
        double part = (to - from) * length; // s
        for (int i = 0; i < sum.length; i++) {
            double a = reading.between(i, from) - origin[i];
            double b = reading.between(i, to) - origin[i];
            sum[i] += part * (a + b) / 2;
            square[i] += part * (a * a + a * b + b * b) / 3;
            least[i] = Math.min(least[i], origin[i] + b);
            greatest[i] = Math.max(greatest[i], origin[i] + b);
        }
    }

    private void close(double end, double share) {
        double lasted = end - begun; // s
        for (int i = 0; i < sum.length; i++) {
            double off = lasted > 0 ? sum[i] / lasted : 0;
            double spread = lasted > 0 ? Math.max(0, square[i] / lasted - off * off) : 0;
            cycles.add(i, origin[i] + off, spread, least[i], greatest[i]);
            begin(i, reading.between(i, share));
        }
        cycles.end(end);
        begun = end;
    }

    /** The cycles closed so far; it goes on growing. */
    public Cycles cycles() {
        return cycles;
    }
}
