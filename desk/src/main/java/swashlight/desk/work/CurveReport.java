package swashlight.desk.work;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import swashlight.desk.report.Axis;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Column;
import swashlight.desk.report.Curve;
import swashlight.desk.report.Figure;
import swashlight.desk.report.Line;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;

/** One quantity over one condition, for one drive or several cases beside one another. */
final class CurveReport {
    /** One case of the family: a drive under some circumstances, with a name for programs and one for readers. */
    record Case(String key, Value name, SickDrive drive, Circumstances when) {}

    private final Sweep sweep;
    private final Shown shown;
    private final List<Case> family;

    private CurveReport(Sweep sweep, Shown shown, List<Case> family) {
        this.sweep = sweep;
        this.shown = shown;
        this.family = family;
    }

    static Outcome of(Sweep sweep, Shown shown, List<Case> family) {
        return new CurveReport(sweep, shown, family).answer();
    }

    private Outcome answer() {
        double[] across = sweep.values();
        double[][] values = new double[family.size()][across.length];
        for (int f = 0; f < family.size(); f++) {
            Case one = family.get(f);
            for (int i = 0; i < across.length; i++) {
                OptionalDouble value = shown.of(one.drive(), one.when().with(sweep.condition(), across[i]));
                values[f][i] = value.orElse(Double.NaN);
            }
        }
        List<Line> lines = new ArrayList<>();
        lines.add(Sentence.of(
                "answer",
                Value.text(family.get(0).drive().sound().name()),
                Value.word("shown." + shown.key()),
                Value.word("condition." + sweep.condition().key())));
        lines.add(new Chapter("conditions", shown.lines(family.get(0).when(), Set.of(sweep.condition()))));
        for (SickDrive.Ailment ail : family.get(0).drive().ails()) {
            lines.add(new Chapter("sick", List.of(new swashlight.desk.report.Fact("fault", FaultWords.of(ail)))));
        }
        lines.add(table(across, values));
        if (Arrays.stream(values).flatMapToDouble(Arrays::stream).anyMatch(Double::isNaN)) {
            lines.add(Sentence.of(shown == Shown.EFFICIENCY ? "empty.efficiency" : "empty"));
        }
        return new Outcome.Answered(new Report("curve", lines), List.of(figure(across, values)));
    }

    private Table table(double[] across, double[][] values) {
        List<Column> columns = new ArrayList<>();
        columns.add(new Column(sweep.condition().key(), sweep.condition().measure()));
        family.forEach(one -> columns.add(column(one)));
        List<List<Value>> rows = new ArrayList<>();
        for (int i = 0; i < across.length; i++) {
            List<Value> row = new ArrayList<>();
            row.add(Value.of(across[i], sweep.condition().measure()));
            for (double[] of : values) {
                row.add(Double.isNaN(of[i]) ? Value.nothing() : Value.of(of[i], shown.measure()));
            }
            rows.add(row);
        }
        return new Table("values", columns, rows);
    }

    /** The only one is called by what is shown. */
    private Column column(Case one) {
        return family.size() == 1
                ? new Column(shown.key(), shown.measure())
                : new Column(one.key(), shown.measure(), one.name(), true);
    }

    private Figure figure(double[] across, double[][] values) {
        List<Curve> curves = new ArrayList<>();
        for (int f = 0; f < family.size(); f++) {
            curves.add(new Curve(family.get(f).name(), f, f, across, values[f]));
        }
        Axis over = new Axis(
                Value.word("condition." + sweep.condition().key()),
                sweep.condition().measure());
        Axis up = new Axis(Value.word("shown." + shown.key()), shown.measure());
        Value title = Value.word(
                "picture.curve",
                Value.text(family.get(0).drive().sound().name()),
                Value.word("shown." + shown.key()),
                Value.word("condition." + sweep.condition().key()));
        return new Figure.Curves(title, over, up, curves);
    }
}
