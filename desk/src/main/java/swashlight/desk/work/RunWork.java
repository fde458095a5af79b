package swashlight.desk.work;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import swashlight.desk.report.Line;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Value;
import swashlight.drive.description.Dimension;
import swashlight.drive.motion.MotionPlan;
import swashlight.drive.motion.NoSettledStart;

/** A run in time from what was asked to its files: runs first, and writes only when everything has been worked out. */
final class RunWork {
    private static final double MOST_ROWS = 200_000;

    private final RunAsked asked;
    private final Inspection inspection;
    private final RunWatch watch;

    RunWork(RunAsked asked, Inspection inspection, RunWatch watch) {
        this.asked = asked;
        this.inspection = inspection;
        this.watch = watch;
    }

    Outcome answer(SickDrive drive) {
        PlanShelf opened = PlanShelf.open(asked, inspection);
        double duration = asked.duration()
                .map(stated -> inspection
                        .number(stated, Dimension.TIME, 1e-3, MotionPlan.LONGEST)
                        .orElse(opened.plan().duration()))
                .orElse(opened.plan().duration());
        double tolerance = inspection
                .number(asked.tolerance(), Dimension.NUMBER, 1e-6, 1e-2)
                .orElse(1e-3);
        double every = interval(asked.traces().isPresent(), asked.every(), duration);
        double frameEvery = interval(asked.frames().isPresent(), asked.frameEvery(), duration);
        inspection.close();
        PlanShelf plan = opened.lasting(duration);
        MovingResult.Kept kept = new MovingResult.Kept(every, frameEvery);
        int runs = drive.ails().isEmpty() ? 1 : 2;
        try {
            Optional<MovingResult> sick = MovingResult.of(
                    drive.drive(), plan.plan().with(drive.on(plan.plan().duty())), tolerance, kept, part(0, runs));
            if (sick.isEmpty()) {
                return new Outcome.Stopped();
            }
            Optional<MovingResult> sound = Optional.empty();
            if (runs == 2) {
                sound = MovingResult.of(
                        drive.sound(), plan.plan(), tolerance, new MovingResult.Kept(0, 0), part(1, runs));
                if (sound.isEmpty()) {
                    return new Outcome.Stopped();
                }
            }
            return RunReport.of(drive, plan, tolerance, sick.get(), sound, write(sick.get(), drive, plan, frameEvery));
        } catch (NoSettledStart unsettled) {
            return new Outcome.NotConverged(new Report("run", List.of(Sentence.of("unsettled"))));
        }
    }

    private double interval(boolean wanted, Stated stated, double duration) {
        double interval = inspection.number(stated, Dimension.TIME, 1e-6, 10).orElse(1e-3);
        if (wanted && duration / interval > MOST_ROWS) {
            inspection.refuse(
                    "too-many-rows",
                    stated,
                    "these would be more than 200000 rows",
                    "a longer time between two of them, or a shorter run");
        }
        return wanted ? interval : 0;
    }

    /** This run's part of the whole progress. */
    private RunWatch part(int number, int of) {
        return new RunWatch() {
            @Override
            public void reached(double share) {
                watch.reached((number + share) / of);
            }

            @Override
            public boolean stopped() {
                return watch.stopped();
            }
        };
    }

    private List<Line> write(MovingResult result, SickDrive drive, PlanShelf plan, double frameEvery) {
        List<Line> written = new ArrayList<>();
        asked.traces()
                .ifPresent(
                        file -> write(file, () -> TraceText.of(result.trace.orElseThrow()), "tracesWritten", written));
        asked.frames()
                .ifPresent(file -> write(
                        file,
                        () -> FramesText.of(result.frames.orElseThrow(), drive.drive(), plan.name(), frameEvery),
                        "framesWritten",
                        written));
        asked.events()
                .ifPresent(file -> write(file, () -> EventsText.of(result.run.events()), "eventsWritten", written));
        asked.orders().ifPresent(file -> {
            if (result.orders().isPresent()) {
                write(file, () -> OrdersText.of(result.orders().get()), "ordersWritten", written);
            } else {
                written.add(Sentence.of("ordersNone"));
            }
        });
        inspection.close();
        return written;
    }

    private void write(Path file, Supplier<String> text, String key, List<Line> written) {
        List<Refusal> refusals = Paper.write(file, text.get());
        inspection.refuse(refusals);
        if (refusals.isEmpty()) {
            written.add(Sentence.of(key, Value.text(file.toString())));
        }
    }
}
