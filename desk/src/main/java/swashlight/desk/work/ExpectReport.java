package swashlight.desk.work;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Column;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Causes;
import swashlight.findings.expect.Expected;
import swashlight.findings.outlook.Outlook;
import swashlight.findings.reading.Reading;

/** What readings should be on a machine, sound and with its faults, with the cautions of each. */
final class ExpectReport {
    private static final int MACHINES = 400;
    private static final int MOST_SOURCES = 2;

    private final SickDrive drive;
    private final ExpectAsked asked;

    private ExpectReport(SickDrive drive, ExpectAsked asked) {
        this.drive = drive;
        this.asked = asked;
    }

    static Outcome of(SickDrive drive, ExpectAsked asked, List<Reading> readings) {
        return new ExpectReport(drive, asked).answer(readings);
    }

    private Outcome answer(List<Reading> readings) {
        boolean sick = !drive.ails().isEmpty();
        List<Line> lines = new ArrayList<>();
        lines.add(Sentence.of("answer", Value.text(drive.sound().name()), Value.of(MACHINES, Measure.RATIO)));
        List<Column> columns = new ArrayList<>(List.of(
                Column.words("reading"),
                new Column("low", Measure.OWN),
                new Column("middle", Measure.OWN),
                new Column("high", Measure.OWN),
                new Column("instrument", Measure.OWN)));
        if (sick) {
            columns.add(new Column("sick", Measure.OWN));
        }
        columns.add(Column.words("sources"));
        List<List<Value>> rows = new ArrayList<>();
        List<Line> how = new ArrayList<>();
        Set<Caution> cautions = new LinkedHashSet<>();
        for (Reading reading : readings) {
            Outlook sound = outlook(reading, false);
            List<Value> row = new ArrayList<>();
            row.add(ReadingWords.kind(reading.kind()));
            row.add(told(reading, sound.low()));
            row.add(told(reading, sound.middle()));
            row.add(told(reading, sound.high()));
            row.add(Value.of(sound.instrument(), difference(reading)));
            if (sick) {
                row.add(told(reading, outlook(reading, true).middle()));
            }
            row.add(sources(sound));
            rows.add(row);
            how.addAll(how(reading, sound));
            cautions.addAll(Caution.of(reading.kind(), reading.setup()));
        }
        lines.add(new Table("expected", columns, rows));
        lines.add(Sentence.of("meaning"));
        drive.ails().forEach(ail -> lines.add(Sentence.of("sick", FaultWords.of(ail))));
        lines.add(new Chapter("how", how));
        List<Line> care = new ArrayList<>();
        cautions.forEach(caution -> care.add(Sentence.of("caution", Value.word(caution.words()))));
        care.add(Sentence.of("rules"));
        lines.add(new Chapter("care", care));
        return new Outcome.Answered(new Report("expect", lines));
    }

    private Outlook outlook(Reading reading, boolean sick) {
        if (!sick) {
            Cause healthy = Causes.find(Cause.HEALTHY).orElseThrow();
            return Outlook.of(drive.sound(), healthy, new double[0], reading, MACHINES, asked.seed());
        }
        return Outlook.of(
                drive.sound(), SickCause.of(drive), SickCause.severities(drive), reading, MACHINES, asked.seed());
    }

    private static Value told(Reading reading, Expected expected) {
        return expected instanceof Expected.Value value
                ? Value.of(value.value(), ReadingWords.measure(reading))
                : ReadingWords.expected(reading, expected, 0);
    }

    /** An error of a temperature is a difference of temperatures. */
    private static Measure difference(Reading reading) {
        Measure measure = ReadingWords.measure(reading);
        return measure == Measure.TEMPERATURE ? Measure.WARMTH : measure;
    }

    private static Value sources(Outlook outlook) {
        List<Value> sources = new ArrayList<>();
        for (Outlook.Source source :
                outlook.sources().stream().limit(MOST_SOURCES).toList()) {
            sources.add(
                    Value.word("expect.source", Value.text(source.name()), Value.of(source.share(), Measure.SHARE)));
        }
        return sources.isEmpty() ? Value.nothing() : new Value.Several(sources);
    }

    /** Conditions and the short cautions of one reading, beside its name. */
    private static List<Line> how(Reading reading, Outlook outlook) {
        List<Line> lines = new ArrayList<>();
        lines.add(HowTaken.of(ReadingWords.kind(reading.kind()), outlook.conditions()));
        for (Caution caution : Caution.of(reading.kind(), reading.setup())) {
            lines.add(Sentence.of("caution", Value.word(caution.words() + ".short")));
        }
        return lines;
    }
}
