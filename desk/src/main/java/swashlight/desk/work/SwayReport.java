package swashlight.desk.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import swashlight.desk.report.Axis;
import swashlight.desk.report.Bar;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Column;
import swashlight.desk.report.Fact;
import swashlight.desk.report.Figure;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;
import swashlight.drive.description.DescriptionFault;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.drive.description.Quantity;

/** How far one quantity sways when each number of the drive moves by its own spread, one at a time. */
final class SwayReport {
    private static final int MOST_BARS = 15;

    private record Swing(Parameter parameter, Quantity quantity, double down, double up) {
        double reach() {
            return Math.max(Math.abs(down), Math.abs(up));
        }
    }

    private final SickDrive drive;
    private final Circumstances when;
    private final Shown shown;

    private SwayReport(SickDrive drive, Circumstances when, Shown shown) {
        this.drive = drive;
        this.when = when;
        this.shown = shown;
    }

    static Outcome of(SickDrive drive, Circumstances when, Shown shown) {
        return new SwayReport(drive, when, shown).answer();
    }

    private Outcome answer() {
        OptionalDouble middle = shown.of(drive, when);
        if (middle.isEmpty()) {
            return new Outcome.NotConverged(new Report("sway", List.of(Sentence.of("lost"))));
        }
        double base = middle.getAsDouble();
        List<Swing> swings = swings(base);
        double all = Math.sqrt(swings.stream()
                .mapToDouble(swing -> (swing.up() - swing.down()) * (swing.up() - swing.down()) / 4)
                .sum());
        List<Line> lines = new ArrayList<>();
        lines.add(Sentence.of(
                "answer",
                Value.text(drive.sound().name()),
                Value.word("shown." + shown.key()),
                new Value.Spread(base, all, shown.measure())));
        lines.add(Sentence.of("meaning"));
        List<Line> conditions = new ArrayList<>(when.lines());
        drive.ails().forEach(ail -> conditions.add(new Fact("fault", FaultWords.of(ail))));
        lines.add(new Chapter("conditions", conditions));
        lines.add(table(base, swings));
        return new Outcome.Answered(new Report("sway", lines), List.of(figure(swings)));
    }

    private List<Swing> swings(double base) {
        List<Swing> swings = new ArrayList<>();
        for (Parameter parameter : Parameters.all()) {
            Quantity quantity = drive.sound().quantity(parameter);
            if (quantity.spread() > 0) {
                double down = moved(parameter, quantity, -1, base);
                double up = moved(parameter, quantity, 1, base);
                if (down != 0 || up != 0) {
                    swings.add(new Swing(parameter, quantity, down, up));
                }
            }
        }
        swings.sort(Comparator.comparingDouble(Swing::reach).reversed());
        return swings;
    }

    /** Change of the quantity when a parameter moves by so many of its spreads; 0 where that cannot be. */
    private double moved(Parameter parameter, Quantity quantity, int spreads, double base) {
        double value =
                Math.max(parameter.low(), Math.min(parameter.high(), quantity.value() + spreads * quantity.spread()));
        try {
            DriveDescription other =
                    drive.sound().with(Map.of(parameter, new Quantity(value, quantity.spread(), quantity.origin())));
            OptionalDouble there = shown.of(new SickDrive(other, drive.ails()), when);
            return there.isEmpty() ? 0 : there.getAsDouble() - base;
        } catch (DescriptionFault impossible) {
            return 0; // the geometry does not allow this number to move alone
        }
    }

    private Table table(double base, List<Swing> swings) {
        List<Column> columns = List.of(
                Column.words("parameter"),
                new Column("value", Measure.OWN),
                new Column("spread", Measure.OWN),
                Column.words("origin"),
                new Column("less", shown.measure()),
                new Column("more", shown.measure()));
        List<List<Value>> rows = swings.stream()
                .map(swing -> {
                    Measure own = Measure.of(
                            swing.parameter().dimension(), swing.quantity().value());
                    return List.of(
                            Value.text(swing.parameter().key()),
                            Value.of(swing.quantity().value(), own),
                            (Value) new Value.Number(
                                    swing.quantity().spread(), own == Measure.TEMPERATURE ? Measure.WARMTH : own),
                            Value.word("origin." + swing.quantity().origin().name()),
                            Value.of(base + swing.down(), shown.measure()),
                            Value.of(base + swing.up(), shown.measure()));
                })
                .toList();
        return new Table("values", columns, rows);
    }

    private Figure figure(List<Swing> swings) {
        List<Bar> bars = new ArrayList<>();
        swings.stream().limit(MOST_BARS).forEach(swing -> {
            Value name = Value.text(swing.parameter().key());
            bars.add(new Bar(name, Math.min(swing.down(), swing.up()), Math.max(swing.down(), swing.up()), 0));
        });
        Measure change = shown.measure() == Measure.TEMPERATURE ? Measure.WARMTH : shown.measure();
        Axis axis = new Axis(Value.word("axis.change", Value.word("shown." + shown.key())), change);
        return new Figure.Bars(
                Value.word("picture.sway", Value.text(drive.sound().name()), Value.word("shown." + shown.key())),
                axis,
                bars);
    }
}
