package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
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
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Origin;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.drive.description.Quantity;
import swashlight.files.drive.DriveFile;

/** A drive description, complete: every number with its spread and where it comes from. */
final class CheckReport {
    private final DriveFile file;
    private final DriveDescription drive;

    CheckReport(DriveFile file) {
        this.file = file;
        this.drive = file.drive();
    }

    /** The report, with a remark on a file written. */
    Outcome outcome(List<Line> remarks) {
        List<Line> lines = new ArrayList<>();
        lines.add(Sentence.of(
                "answer", Value.text(drive.name()), count(Origin.GIVEN), count(Origin.FITTED), count(Origin.TYPICAL)));
        if (drive.invented()) {
            lines.add(Sentence.of("invented"));
        }
        lines.addAll(remarks);
        lines.add(new Fact("level", Value.word("level." + file.level().word())));
        if (!file.about().isEmpty()) {
            lines.add(new Fact("about", Value.text(file.about())));
        }
        lines.add(Sentence.of("widest"));
        lines.add(table());
        if (!file.notes().isEmpty()) {
            lines.add(new Chapter("notes", notes()));
        }
        return new Outcome.Answered(new Report("check", lines));
    }

    private Value count(Origin origin) {
        long count = Parameters.all().stream()
                .filter(parameter -> drive.quantity(parameter).origin() == origin)
                .count();
        return Value.text(String.valueOf(count));
    }

    private List<Line> notes() {
        List<Line> lines = new ArrayList<>();
        for (Parameter parameter : Parameters.all()) {
            if (file.notes().containsKey(parameter)) {
                lines.add(new Fact(parameter.key(), Value.text(file.notes().get(parameter))));
            }
        }
        return lines;
    }

    private Table table() {
        List<Column> columns = List.of(
                Column.words("parameter"),
                new Column("value", Measure.OWN),
                new Column("spread", Measure.OWN),
                Column.words("origin"),
                Column.words("meaning"));
        List<List<Value>> rows = new ArrayList<>();
        for (Parameter parameter : Parameters.all()) {
            Quantity quantity = drive.quantity(parameter);
            Measure measure = Measure.of(parameter.dimension(), quantity.value());
            rows.add(List.of(
                    Value.text(parameter.key()),
                    Value.of(quantity.value(), measure),
                    quantity.spread() > 0
                            ? Value.of(
                                    quantity.spread(),
                                    parameter.dimension() == Dimension.TEMPERATURE ? Measure.WARMTH : measure)
                            : Value.nothing(),
                    Value.word("origin." + quantity.origin().name()),
                    ParameterWords.meaning(parameter)));
        }
        return new Table("numbers", columns, rows);
    }
}
