package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Column;
import swashlight.desk.report.Fact;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;
import swashlight.drive.description.Dimension;
import swashlight.drive.description.Place;
import swashlight.drive.motion.MotionChannel;
import swashlight.drive.motion.MotionDuty;
import swashlight.drive.motion.MotionEvent;
import swashlight.drive.motion.PortZone;
import swashlight.drive.trace.Cavity;
import swashlight.drive.trace.CycleMean;
import swashlight.drive.trace.OrderSpectrum;

/** What a run in time came to, beside the same run of the sound drive where there are faults. */
final class RunReport {
    private static final double SAME = 1e-9; // share by which a fault must move some mean to show, 1

    private final SickDrive drive;
    private final PlanShelf plan;
    private final double tolerance; // 1
    private final MovingResult sick;
    private final Optional<MovingResult> sound;
    private final double ambient; // Pa

    private RunReport(
            SickDrive drive, PlanShelf plan, double tolerance, MovingResult sick, Optional<MovingResult> sound) {
        this.drive = drive;
        this.plan = plan;
        this.tolerance = tolerance;
        this.sick = sick;
        this.sound = sound;
        ambient = plan.plan().duty().ambientPressure();
    }

    static Outcome of(
            SickDrive drive,
            PlanShelf plan,
            double tolerance,
            MovingResult sick,
            Optional<MovingResult> sound,
            List<Line> written) {
        return new RunReport(drive, plan, tolerance, sick, sound).answer(written);
    }

    private Outcome answer(List<Line> written) {
        List<Line> lines = new ArrayList<>();
        boolean broke = sick.run.failed();
        lines.add(Sentence.of(
                broke ? "broke" : "answer",
                Value.text(drive.sound().name()),
                Value.text(plan.name()),
                Value.of(sick.run.time(), Measure.TIME),
                Value.of(sick.run.value(MotionChannel.GROUND_SPEED), Measure.SPEED)));
        if (sound.isPresent() && !faultShows()) {
            lines.add(Sentence.of("unmoved"));
        }
        List<Line> conditions = new ArrayList<>(plan.lines());
        conditions.addAll(FaultWords.lines(drive));
        lines.add(new Chapter("conditions", conditions));
        if (sick.cycles().count() >= sick.last()) {
            CycleMean window = sick.cycles().last(0, sick.last());
            lines.add(Sentence.of(
                    "window", Value.of(window.begin(), Measure.TIME), Value.of(window.end(), Measure.TIME)));
            lines.add(values());
        }
        sick.orders().ifPresent(orders -> lines.add(Chapter.of("tones", orders(orders))));
        lines.add(missing());
        lines.add(events());
        lines.add(account());
        lines.addAll(written);
        Report report = new Report("run", lines);
        return broke
                ? new Outcome.NotConverged(report)
                : new Outcome.Answered(report, new RunFigures(drive, plan, sick, sound).all());
    }

    private boolean faultShows() {
        MovingResult other = sound.orElseThrow();
        for (int i = 0; i < MovingResult.SUMMED.size(); i++) {
            Optional<CycleMean> sickMean = sick.whole(i);
            Optional<CycleMean> soundMean = other.whole(i);
            if (sickMean.isEmpty() || soundMean.isEmpty()) {
                return true;
            }
            double here = sickMean.get().mean();
            double there = soundMean.get().mean();
            if (Math.abs(here - there) > SAME * Math.max(Math.abs(there), 1e-6)) {
                return true;
            }
        }
        return false;
    }

    private Table values() {
        List<Column> columns = new ArrayList<>(List.of(
                Column.words("quantity"),
                new Column("mean", Measure.OWN),
                new Column("ripple", Measure.OWN),
                new Column("rms", Measure.OWN),
                new Column("least", Measure.OWN),
                new Column("greatest", Measure.OWN)));
        if (sound.isPresent()) {
            columns.add(new Column("soundMean", Measure.OWN));
            columns.add(new Column("soundRipple", Measure.OWN));
        }
        List<List<Value>> rows = new ArrayList<>();
        for (int i = 0; i < MovingResult.SUMMED.size(); i++) {
            MotionChannel channel = MovingResult.SUMMED.get(i);
            if (channel == MotionChannel.PUSH_FORCE && plan.plan().duty().footing() != MotionDuty.Footing.PUSHED) {
                continue;
            }
            rows.add(row(channel, i));
        }
        return new Table("values", columns, rows);
    }

    private List<Value> row(MotionChannel channel, int signal) {
        Measure measure = measure(channel);
        Measure size = measure == Measure.TEMPERATURE ? Measure.WARMTH : measure;
        CycleMean mean = sick.cycles().last(signal, sick.last());
        List<Value> row = new ArrayList<>();
        row.add(word(channel));
        row.add(Value.of(shown(channel, mean.mean()), measure));
        row.add(Value.of(mean.ripple(), size));
        row.add(Value.of(mean.rms(), size));
        Optional<CycleMean> all = sick.whole(signal);
        row.add(all.map(cycle -> Value.of(shown(channel, cycle.least()), measure))
                .orElse(Value.nothing()));
        row.add(all.map(cycle -> Value.of(shown(channel, cycle.greatest()), measure))
                .orElse(Value.nothing()));
        sound.ifPresent(other -> {
            boolean there = other.cycles().count() >= other.last();
            CycleMean beside = there ? other.cycles().last(signal, other.last()) : mean;
            row.add(there ? Value.of(shown(channel, beside.mean()), measure) : Value.nothing());
            row.add(there ? Value.of(beside.ripple(), size) : Value.nothing());
        });
        return row;
    }

    static Value word(MotionChannel channel) {
        return Value.wordOr("channel." + channel.name(), channel.meaning());
    }

    static Measure measure(MotionChannel channel) {
        return switch (channel) {
            case BELT_SLIP, WHEEL_SLIP -> Measure.SHARE;
            default -> Measure.of(channel.dimension(), 0);
        };
    }

    private double shown(MotionChannel channel, double value) {
        return channel.dimension() == Dimension.PRESSURE ? value - ambient : value;
    }

    private static Table orders(OrderSpectrum spectrum) {
        List<Column> columns = new ArrayList<>(List.of(
                Column.words("tone"), new Column("order", Measure.RATIO), new Column("frequency", Measure.FREQUENCY)));
        List<MotionChannel> heard = List.of(
                MotionChannel.PRESSURE_A,
                MotionChannel.PRESSURE_B,
                MotionChannel.PUMP_TORQUE,
                MotionChannel.MOTOR_TORQUE);
        heard.forEach(channel -> columns.add(Column.headed(word(channel), measure(channel))));
        List<List<Value>> rows = new ArrayList<>();
        rows.add(tone(spectrum, Value.word("tone.shaft"), 1, heard.size()));
        for (OrderSpectrum.Named named : spectrum.named()) {
            Value name = Value.word("tone." + named.place().name() + "." + named.multiple());
            rows.add(tone(spectrum, name, named.order(), heard.size()));
        }
        return new Table("orders", columns, rows);
    }

    private static List<Value> tone(OrderSpectrum spectrum, Value name, double order, int heard) {
        List<Value> row = new ArrayList<>();
        row.add(name);
        row.add(Value.of(order, Measure.RATIO));
        row.add(Value.of(order * spectrum.speed() / (2 * Math.PI), Measure.FREQUENCY));
        for (int i = 0; i < heard; i++) {
            row.add(Value.of(spectrum.at(i, order), i < 2 ? Measure.PRESSURE : Measure.TORQUE));
        }
        return row;
    }

    private Chapter missing() {
        List<Cavity> found = sick.cavitation.found();
        if (found.isEmpty()) {
            return Chapter.of("missing", Sentence.of("missing.nowhere"));
        }
        List<Column> columns = List.of(
                Column.words("place"),
                new Column("first", Measure.TIME),
                new Column("last", Measure.TIME),
                new Column("lasting", Measure.TIME),
                new Column("times", Measure.RATIO),
                new Column("worst", Measure.SHARE));
        List<List<Value>> rows = found.stream()
                .map(cavity -> List.of(
                        place(cavity),
                        Value.of(cavity.first(), Measure.TIME),
                        Value.of(cavity.last(), Measure.TIME),
                        Value.of(cavity.lasting(), Measure.TIME),
                        Value.of(cavity.times(), Measure.RATIO),
                        Value.of(cavity.worst(), Measure.SHARE)))
                .toList();
        List<Line> lines = new ArrayList<>();
        lines.add(new Table("places", columns, rows));
        for (Place place : List.of(Place.PUMP, Place.MOTOR)) {
            for (PortZone zone : PortZone.values()) {
                double lasting = sick.cavitation.lasting(place, zone);
                if (lasting > 0) {
                    lines.add(Sentence.of(
                            "missing.zone",
                            Value.word("unit." + place.name()),
                            Value.wordOr("zone." + zone.name(), zone.meaning()),
                            Value.of(lasting, Measure.TIME)));
                }
            }
        }
        return new Chapter("missing", lines);
    }

    private static Value place(Cavity cavity) {
        String key = cavity.place().key();
        return Value.wordOr("place." + key, key.replace("_pressure", "").replace('_', ' '));
    }

    private Chapter events() {
        List<List<Value>> rows = new ArrayList<>();
        for (MotionEvent.Kind kind : MotionEvent.Kind.values()) {
            if (sick.run.count(kind) > 0) {
                rows.add(List.of(
                        Value.wordOr("moving." + kind.name(), kind.meaning()),
                        Value.of(sick.run.first(kind), Measure.TIME),
                        Value.of(sick.run.count(kind), Measure.RATIO),
                        Value.of(sick.run.lasting(kind), Measure.TIME)));
            }
        }
        if (rows.isEmpty()) {
            return Chapter.of("events", Sentence.of("events.none"));
        }
        List<Column> columns = List.of(
                Column.words("event"),
                new Column("first", Measure.TIME),
                new Column("times", Measure.RATIO),
                new Column("lasting", Measure.TIME));
        return Chapter.of("events", new Table("list", columns, rows));
    }

    private Chapter account() {
        return Chapter.of(
                "account",
                new Fact("converged", Value.word(sick.run.failed() ? "no" : "yes")),
                new Fact("tolerance", Value.of(tolerance, Measure.RATIO)),
                new Fact("stepsTaken", Value.of(sick.run.steps(), Measure.RATIO)),
                new Fact("stepsTakenBack", Value.of(sick.run.rejected(), Measure.RATIO)),
                new Fact("oilDrift", Value.of(sick.run.oilDrift(), Measure.RATIO)));
    }
}
