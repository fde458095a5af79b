package swashlight.desk.work;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import swashlight.desk.report.Axis;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Column;
import swashlight.desk.report.Figure;
import swashlight.desk.report.Line;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;

/** One quantity over two conditions. */
final class MapReport {
    private MapReport() {}

    static Outcome of(SickDrive drive, Circumstances when, Sweep across, Sweep up, Shown shown) {
        double[] xs = across.values();
        double[] ys = up.values();
        double[][] values = new double[ys.length][xs.length];
        List<List<Value>> rows = new ArrayList<>();
        for (int j = 0; j < ys.length; j++) {
            Circumstances row = when.with(up.condition(), ys[j]);
            for (int i = 0; i < xs.length; i++) {
                values[j][i] =
                        shown.of(drive, row.with(across.condition(), xs[i])).orElse(Double.NaN);
                rows.add(List.of(
                        Value.of(ys[j], up.condition().measure()),
                        Value.of(xs[i], across.condition().measure()),
                        Double.isNaN(values[j][i]) ? Value.nothing() : Value.of(values[j][i], shown.measure())));
            }
        }
        Value name = Value.text(drive.sound().name());
        Value what = Value.word("shown." + shown.key());
        Axis over = new Axis(
                Value.word("condition." + across.condition().key()),
                across.condition().measure());
        Axis upward = new Axis(
                Value.word("condition." + up.condition().key()), up.condition().measure());
        List<Line> lines = new ArrayList<>();
        lines.add(Sentence.of("answer", name, what, over.name(), upward.name()));
        lines.add(new Chapter("conditions", shown.lines(when, Set.of(across.condition(), up.condition()))));
        lines.add(new Table(
                "values",
                List.of(
                        new Column(up.condition().key(), up.condition().measure()),
                        new Column(across.condition().key(), across.condition().measure()),
                        new Column(shown.key(), shown.measure())),
                rows));
        if (Arrays.stream(values).flatMapToDouble(Arrays::stream).anyMatch(Double::isNaN)) {
            lines.add(Sentence.of(shown == Shown.EFFICIENCY ? "empty.efficiency" : "empty"));
        }
        Figure figure = new Figure.Field(
                Value.word("picture.map", name, what), over, upward, new Axis(what, shown.measure()), xs, ys, values);
        return new Outcome.Answered(new Report("map", lines), List.of(figure));
    }
}
