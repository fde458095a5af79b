package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import swashlight.desk.report.Axis;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Column;
import swashlight.desk.report.Curve;
import swashlight.desk.report.Fact;
import swashlight.desk.report.Figure;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;
import swashlight.drive.heat.HeatedDrive;
import swashlight.drive.heat.SettledTemperature;
import swashlight.drive.heat.WarmPoint;
import swashlight.drive.heat.WarmUp;
import swashlight.drive.oil.Oil;
import swashlight.drive.steady.Duty;

/** How oil temperature and speed go while a duty is held. */
final class WarmUpReport {
    private final SickDrive drive;
    private final Circumstances when;
    private final double air; // K
    private final double duration; // s

    private WarmUpReport(SickDrive drive, Circumstances when, double duration) {
        this.drive = drive;
        this.when = when;
        this.air = when.value(Condition.AIR_TEMPERATURE);
        this.duration = duration;
    }

    static Outcome of(SickDrive drive, Circumstances when, double duration) {
        return new WarmUpReport(drive, when, duration).answer();
    }

    private Outcome answer() {
        HeatedDrive heated = new HeatedDrive(drive.drive());
        Duty duty = drive.on(when.duty());
        WarmUp warmUp = heated.follow(duty, air, duration);
        List<WarmPoint> points = warmUp.points();
        if (points.isEmpty()) {
            return new Outcome.NotConverged(new Report("warmup", List.of(Sentence.of("lost"))));
        }
        WarmPoint first = points.get(0);
        WarmPoint last = points.get(points.size() - 1);
        List<Line> lines = new ArrayList<>();
        lines.add(Sentence.of(
                "answer",
                Value.text(drive.sound().name()),
                Value.of(first.temperature(), Measure.TEMPERATURE),
                Value.of(last.temperature(), Measure.TEMPERATURE),
                Value.of(last.time(), Measure.MINUTES)));
        if (Math.abs(first.groundSpeed()) > 1e-6) {
            double kept = last.groundSpeed() / first.groundSpeed();
            lines.add(Sentence.of("fade", Value.of(kept, Measure.SHARE)));
        }
        lines.add(settles(heated.settle(duty, air)));
        if (warmUp instanceof WarmUp.Stopped stopped) {
            lines.add(Sentence.of("stopped", Value.text(stopped.reason())));
        }
        List<Line> conditions = new ArrayList<>(when.linesWithout(Set.of(Condition.AIR_TEMPERATURE)));
        conditions.add(new Fact(Condition.AIR_TEMPERATURE.key(), Value.of(air, Measure.TEMPERATURE)));
        drive.ails().forEach(ail -> conditions.add(new Fact("fault", FaultWords.of(ail))));
        lines.add(new Chapter("conditions", conditions));
        lines.add(table(points));
        return new Outcome.Answered(new Report("warmup", lines), figures(points));
    }

    private static Sentence settles(SettledTemperature settled) {
        return settled instanceof SettledTemperature.Settled at
                ? Sentence.of("settles", Value.of(at.temperature(), Measure.TEMPERATURE))
                : Sentence.of(
                        "unsettled", Value.of(((SettledTemperature.Unsettled) settled).hottest(), Measure.TEMPERATURE));
    }

    private static Table table(List<WarmPoint> points) {
        List<Column> columns = List.of(
                new Column("time", Measure.MINUTES),
                new Column("oilTemperature", Measure.TEMPERATURE),
                new Column("groundSpeed", Measure.SPEED),
                new Column("axleSpeed", Measure.ROTATION),
                new Column("highPressure", Measure.PRESSURE),
                new Column("heat", Measure.POWER));
        List<List<Value>> rows = points.stream()
                .map(point -> List.of(
                        Value.of(point.time(), Measure.MINUTES),
                        Value.of(point.temperature(), Measure.TEMPERATURE),
                        Value.of(point.groundSpeed(), Measure.SPEED),
                        Value.of(point.axleSpeed(), Measure.ROTATION),
                        Value.of(point.highPressure() - Oil.ATMOSPHERE, Measure.PRESSURE),
                        Value.of(point.heat(), Measure.POWER)))
                .toList();
        return new Table("values", columns, rows);
    }

    private List<Figure> figures(List<WarmPoint> points) {
        return points.size() < 2 ? List.of() : List.of(warming(points), fading(points));
    }

    private static Figure fading(List<WarmPoint> points) {
        return new Figure.Curves(
                Value.word("picture.fade"),
                new Axis(Value.word("column.time"), Measure.MINUTES),
                new Axis(Value.word("shown.speed"), Measure.SPEED),
                List.of(new Curve(
                        Value.word("shown.speed"),
                        0,
                        0,
                        points.stream().mapToDouble(WarmPoint::time).toArray(),
                        points.stream().mapToDouble(WarmPoint::groundSpeed).toArray())));
    }

    private Figure warming(List<WarmPoint> points) {
        double[] times = points.stream().mapToDouble(WarmPoint::time).toArray();
        double[] temperatures =
                points.stream().mapToDouble(WarmPoint::temperature).toArray();
        Value title = Value.word("picture.warmup", Value.text(drive.sound().name()));
        return new Figure.Curves(
                title,
                new Axis(Value.word("column.time"), Measure.MINUTES),
                new Axis(Value.word("shown.temperature"), Measure.TEMPERATURE),
                List.of(new Curve(Value.word("shown.temperature"), 1, 0, times, temperatures)));
    }
}
