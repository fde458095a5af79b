package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Place;
import swashlight.drive.motion.MotionChannel;
import swashlight.drive.motion.MotionPlan;
import swashlight.drive.motion.MotionRun;
import swashlight.drive.motion.MotionWatcher;
import swashlight.drive.motion.MovingDrive;
import swashlight.drive.trace.CavitationMeter;
import swashlight.drive.trace.CycleMean;
import swashlight.drive.trace.CycleMeter;
import swashlight.drive.trace.Cycles;
import swashlight.drive.trace.OrderMeter;
import swashlight.drive.trace.OrderSpectrum;
import swashlight.drive.trace.Pace;
import swashlight.drive.trace.Recorder;
import swashlight.drive.trace.Signal;
import swashlight.drive.trace.Trace;

/** One run of one drive, with everything that watched it. */
final class MovingResult {
    /** The signals whose orders are told. */
    static final List<Signal> HEARD = Signal.all(
            MotionChannel.PRESSURE_A, MotionChannel.PRESSURE_B, MotionChannel.PUMP_TORQUE, MotionChannel.MOTOR_TORQUE);

    /** The channels that are summed up. */
    static final List<MotionChannel> SUMMED = List.of(
            MotionChannel.GROUND_SPEED,
            MotionChannel.PRESSURE_A,
            MotionChannel.PRESSURE_B,
            MotionChannel.GALLERY_PRESSURE,
            MotionChannel.ENGINE_SPEED,
            MotionChannel.PUMP_SPEED,
            MotionChannel.MOTOR_SPEED,
            MotionChannel.INPUT_TORQUE,
            MotionChannel.OUTPUT_TORQUE,
            MotionChannel.GROUND_FORCE,
            MotionChannel.PUSH_FORCE,
            MotionChannel.BELT_SLIP,
            MotionChannel.WHEEL_SLIP,
            MotionChannel.PUMP_FLOW,
            MotionChannel.MOTOR_FLOW,
            MotionChannel.MAKE_UP_FLOW,
            MotionChannel.CASE_LEAK,
            MotionChannel.LOWEST_CHAMBER,
            MotionChannel.SWASH_MOMENT,
            MotionChannel.PUMP_HOLD_DOWN,
            MotionChannel.MOTOR_HOLD_DOWN,
            MotionChannel.OIL_TEMPERATURE);

    private static final int SLICES = 200; // looks at whoever waits
    private static final int TIMES = 250; // equal times of a run
    private static final int TURNS = 16; // whole turns at the end that are summed up
    private static final double LATE = 0.05; // s: turns that ended longer ago are not the end
    private static final double ZOOM = 0.06; // s at the end drawn in full
    private static final int ZOOM_ROWS = 600;

    /** Rows of traces and frames that are wanted besides, s between them; 0 for none. */
    record Kept(double every, double frameEvery) {}

    final MotionPlan plan;
    final MotionRun run;
    final CavitationMeter cavitation;
    final Optional<Trace> trace;
    final Optional<Trace> frames;
    final Trace zoom;
    private final CycleMeter passes;
    private final CycleMeter times;
    private final OrderMeter orders;
    private final int pistons;

    private MovingResult(MotionPlan plan, MotionRun run, Kept kept, RunWatch watch) {
        this.plan = plan;
        this.run = run;
        pistons = run.chambers(Place.PUMP).count();
        List<Signal> summed = Signal.all(SUMMED.toArray(MotionChannel[]::new));
        cavitation = new CavitationMeter(run);
        passes = new CycleMeter(run, summed, Pace.PUMP_SHAFT, 2 * Math.PI / pistons);
        times = new CycleMeter(run, summed, Pace.TIME, plan.duration() / TIMES * (1 - 1e-9));
        boolean turns = Math.abs(run.value(MotionChannel.PUMP_SPEED)) > 0;
        orders = new OrderMeter(run, HEARD, turns ? Pace.PUMP_SHAFT : Pace.MOTOR_SHAFT, TURNS);
        List<MotionWatcher> watchers = new ArrayList<>(List.of(cavitation, passes, times, orders));
        Optional<Recorder> rows = recorder(kept.every(), TraceText.signals(run), watchers);
        Optional<Recorder> pictures = recorder(kept.frameEvery(), FramesText.signals(run), watchers);
        double end = plan.duration();
        advance(end - Math.min(ZOOM, end), MotionWatcher.all(watchers.toArray(MotionWatcher[]::new)), watch);
        Recorder fine = new Recorder(
                run, Signal.all(MotionChannel.PRESSURE_A, MotionChannel.PRESSURE_B), Math.min(ZOOM, end) / ZOOM_ROWS);
        watchers.add(fine);
        advance(end, MotionWatcher.all(watchers.toArray(MotionWatcher[]::new)), watch);
        trace = rows.map(Recorder::trace);
        frames = pictures.map(Recorder::trace);
        zoom = fine.trace();
    }

    /** Runs to the end, to where the run cannot go on, or until whoever waits has enough: then empty. */
    static Optional<MovingResult> of(
            DriveDescription drive, MotionPlan plan, double tolerance, Kept kept, RunWatch watch) {
        MotionRun run = new MovingDrive(drive).start(plan.duty(), plan.start(), tolerance);
        MovingResult result = new MovingResult(plan, run, kept, watch);
        return watch.stopped() ? Optional.empty() : Optional.of(result);
    }

    private Optional<Recorder> recorder(double every, List<Signal> signals, List<MotionWatcher> watchers) {
        if (every <= 0) {
            return Optional.empty();
        }
        Recorder recorder = new Recorder(run, signals, every);
        watchers.add(recorder);
        return Optional.of(recorder);
    }

    private void advance(double until, MotionWatcher watcher, RunWatch watch) {
        double slice = plan.duration() / SLICES;
        while (run.time() < until && !run.failed() && !watch.stopped()) {
            double next = (Math.floor(run.time() / slice + 1e-6) + 1) * slice;
            run.advance(next > until - 1e-9 * slice ? until : next, watcher);
            watch.reached(run.time() / plan.duration());
        }
    }

    /** Cycles in the order of time: piston passes of the pump while it turns to the end, else equal times. */
    Cycles cycles() {
        return turnsToTheEnd() ? passes.cycles() : times.cycles();
    }

    private boolean turnsToTheEnd() {
        Cycles cycles = passes.cycles();
        return cycles.count() >= 2 * pistons && cycles.end(cycles.count() - 1) > run.time() - LATE;
    }

    /** How many of the last cycles are summed up: whole turns of the pump, or a tenth of the time. */
    int last() {
        if (!turnsToTheEnd()) {
            return TIMES / 10;
        }
        int turns = Math.min(TURNS, passes.cycles().count() / pistons / 2);
        return Math.max(1, turns) * pistons;
    }

    /** One of the summed channels over the whole run; empty when it broke off at once. */
    Optional<CycleMean> whole(int signal) {
        Cycles all = times.cycles();
        return all.count() > 0 ? Optional.of(all.last(signal, all.count())) : Optional.empty();
    }

    /** Orders over the last turns; empty when nothing turned. */
    Optional<OrderSpectrum> orders() {
        return orders.spectrum();
    }
}
