package swashlight.desk.work;

import java.util.List;
import swashlight.desk.report.Column;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;
import swashlight.drive.fault.Fault;
import swashlight.drive.fault.Faults;

/** Everything that can be wrong, with what its severity means and how far it goes. */
final class FaultsReport {
    private FaultsReport() {}

    static Outcome all() {
        List<Column> columns = List.of(
                Column.words("key"),
                Column.words("place"),
                new Column("least", Measure.OWN),
                new Column("usual", Measure.OWN),
                new Column("most", Measure.OWN),
                Column.words("severity"),
                Column.words("meaning"));
        List<List<Value>> rows = Faults.all().stream().map(FaultsReport::row).toList();
        return new Outcome.Answered(new Report(
                "faults",
                List.of(
                        Sentence.of("answer", Value.of(rows.size(), Measure.RATIO)),
                        new Table("faults", columns, rows),
                        Sentence.of("usage"))));
    }

    private static List<Value> row(Fault fault) {
        boolean whole = fault.whole();
        return List.of(
                Value.text(fault.key()),
                Value.word("place." + fault.place().name()),
                whole ? Value.nothing() : FaultWords.severity(fault, fault.least()),
                whole ? Value.nothing() : FaultWords.severity(fault, fault.usual()),
                whole ? Value.nothing() : FaultWords.severity(fault, fault.most()),
                whole ? Value.word("faults.whole") : FaultWords.meaning(fault),
                FaultWords.name(fault));
    }
}
