package swashlight.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.teavm.jso.JSExport;
import swashlight.drive.description.Place;
import swashlight.drive.motion.MotionDuty;
import swashlight.drive.motion.MotionEvent;
import swashlight.drive.motion.MotionRun;
import swashlight.drive.motion.MotionState;
import swashlight.drive.trace.Recorder;
import swashlight.drive.trace.Signal;
import swashlight.drive.trace.Trace;

/** A run in progress. */
public final class PageRun {
    private static final int EVENT_COLUMNS = 4;
    private static final int TOTAL_COLUMNS = 3;

    private final MotionRun run;
    private final UnaryOperator<MotionDuty> felt;
    private final List<Signal> signals;

    /** A run, and what its drive's faults make of a duty. */
    PageRun(MotionRun run, UnaryOperator<MotionDuty> felt) {
        this.run = run;
        this.felt = felt;
        this.signals = ChamberSignals.with(run);
    }

    MotionState state() {
        return MotionState.of(run);
    }

    /** What it can tell of itself: the channels, then what {@link ChamberSignals} has of every chamber. */
    @JSExport
    public PageWords signals() {
        return PageWords.of(signals, Signal::key, signal -> signal.dimension().unit(), Signal::meaning);
    }

    /** Present values in the order of {@link #signals()}, SI. */
    @JSExport
    public double[] values() {
        double[] values = new double[signals.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = signals.get(i).of(run);
        }
        return values;
    }

    /** Present value of one signal by its place in {@link #signals()}, SI. */
    @JSExport
    public double value(int signal) {
        return signals.get(signal).of(run);
    }

    /** Number of pump pistons. */
    @JSExport
    public int pumpPistons() {
        return run.pumpPistons();
    }

    /** Number of motor pistons. */
    @JSExport
    public int motorPistons() {
        return run.motorPistons();
    }

    /** Time reached, s. */
    @JSExport
    public double time() {
        return run.time();
    }

    /** Goes on to a time (s) in steps of its own choice; false when it could not. */
    @JSExport
    public boolean advance(double until) {
        return run.advance(until);
    }

    /** From now on under another duty's controls, whose times are those of the run; what else the duty says stays as it began. */
    @JSExport
    public void redirect(PageDuty duty) {
        run.redirect(felt.apply(duty.duty()));
    }

    /** Goes on until the shaft of pump or motor has turned by an angle (rad), or for at most a time (s); false when it could not. */
    @JSExport
    public boolean turn(String unit, double angle, double within) {
        return run.turn(Key.find(Place.values(), unit, "unit"), angle, within);
    }

    /** The step it would choose now, s. */
    @JSExport
    public double nextStep() {
        return run.nextStep();
    }

    /** Takes one step of at most a length, s; false when it could not. */
    @JSExport
    public boolean step(double length) {
        run.step(length);
        return !run.failed();
    }

    /** Takes steps of given lengths (s) and hands over, after each, time and all signals: a row of 1 + signals numbers a step. */
    @JSExport
    public double[] steps(double[] lengths) {
        int width = 1 + signals.size();
        double[] rows = new double[lengths.length * width];
        for (int n = 0; n < lengths.length; n++) {
            run.step(lengths[n]);
            rows[n * width] = run.time();
            for (int i = 0; i < signals.size(); i++) {
                rows[n * width + 1 + i] = signals.get(i).of(run);
            }
        }
        return rows;
    }

    /**
     * Goes on to a time and hands over even rows of time and some signals, the present state first.
     *
     * @param keys of the signals
     * @param until s
     * @param interval between rows, s
     */
    @JSExport
    public double[] trace(String[] keys, double until, double interval) {
        Recorder recorder = new Recorder(run, chosen(keys), interval);
        run.advance(until, recorder);
        Trace trace = recorder.trace();
        int width = 1 + keys.length;
        double[] rows = new double[trace.rows() * width];
        for (int row = 0; row < trace.rows(); row++) {
            rows[row * width] = trace.time(row);
            for (int column = 0; column < keys.length; column++) {
                rows[row * width + 1 + column] = trace.value(row, column);
            }
        }
        return rows;
    }

    private List<Signal> chosen(String[] keys) {
        List<Signal> chosen = new ArrayList<>();
        for (String key : keys) {
            chosen.add(signals.stream()
                    .filter(signal -> signal.key().equals(key))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException(
                            "there is no signal " + key + "; the list is signals().keys() of the run")));
        }
        return chosen;
    }

    /** True when the run could not go on. */
    @JSExport
    public boolean failed() {
        return run.failed();
    }

    /** Steps taken, steps taken back, and oil that appeared from or vanished to nowhere over all oil in the loop. */
    @JSExport
    public double[] account() {
        return new double[] {run.steps(), run.rejected(), run.oilDrift()};
    }

    /** Events from a number on, oldest first: time (s), kind by its place in {@link Physics#runEvents()}, 1 begins or 0 ends, how long it lasted (s). */
    @JSExport
    public double[] events(int from) {
        List<MotionEvent> events = run.events();
        double[] rows = new double[EVENT_COLUMNS * Math.max(0, events.size() - from)];
        int at = 0;
        for (MotionEvent event : events.subList(Math.min(from, events.size()), events.size())) {
            rows[at++] = event.time();
            rows[at++] = event.kind().ordinal();
            rows[at++] = event.begins() ? 1 : 0;
            rows[at++] = event.lasted();
        }
        return rows;
    }

    /** Of every kind of event: how often it began, when it first did (s), how long it lasted in all (s). */
    @JSExport
    public double[] eventTotals() {
        MotionEvent.Kind[] kinds = MotionEvent.Kind.values();
        double[] totals = new double[TOTAL_COLUMNS * kinds.length];
        int at = 0;
        for (MotionEvent.Kind kind : kinds) {
            totals[at++] = run.count(kind);
            totals[at++] = run.first(kind);
            totals[at++] = run.lasting(kind);
        }
        return totals;
    }
}
