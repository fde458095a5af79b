package swashlight.desk.work;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import swashlight.desk.report.Chapter;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Value;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Causes;
import swashlight.findings.outlook.Outlook;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;

/** What readings should be on a machine, sound and with its faults, with the cautions of each. */
final class ExpectReport {
    private static final int MACHINES = 400;

    private final SickDrive drive;
    private final boolean measured;
    private final long seed;

    private ExpectReport(SickDrive drive, boolean measured, long seed) {
        this.drive = drive;
        this.measured = measured;
        this.seed = seed;
    }

    /** For readings that nobody has taken yet. */
    static Outcome of(SickDrive drive, List<Reading> readings, long seed) {
        return new ExpectReport(drive, false, seed)
                .answer(Value.text(drive.sound().name()), readings);
    }

    /** For the readings of a case, beside what was measured. */
    static Outcome measured(SickDrive drive, MachineCase machine, long seed) {
        return new ExpectReport(drive, true, seed).answer(Value.text(machine.name()), machine.readings());
    }

    private Outcome answer(Value name, List<Reading> readings) {
        List<ExpectRow> rows = readings.stream().map(this::row).toList();
        ExpectTable table = new ExpectTable(rows, measured, !drive.ails().isEmpty());
        List<Line> lines = new ArrayList<>();
        lines.add(Sentence.of("answer", name, Value.of(MACHINES, Measure.RATIO)));
        lines.add(table.table());
        lines.add(Sentence.of("meaning"));
        if (measured) {
            lines.add(Sentence.of("off"));
        }
        drive.ails().forEach(ail -> lines.add(Sentence.of("sick", FaultWords.of(ail))));
        rows.stream()
                .filter(row -> row.sound().settled() < 1)
                .forEach(row -> lines.add(Sentence.of(
                        "unsettled", row.name(), Value.of(row.sound().settled(), Measure.SHARE))));
        lines.add(new Chapter("whence", whence(rows)));
        lines.add(new Chapter("how", how(rows)));
        lines.add(new Chapter("care", care(rows)));
        return new Outcome.Answered(new Report("expect", lines), table.figures());
    }

    private ExpectRow row(Reading reading) {
        Cause healthy = Causes.find(Cause.HEALTHY).orElseThrow();
        Outlook sound = Outlook.of(drive.sound(), healthy, new double[0], reading, MACHINES, seed);
        Outlook sick = drive.ails().isEmpty()
                ? sound
                : Outlook.of(drive.sound(), SickCause.of(drive), SickCause.severities(drive), reading, MACHINES, seed);
        Value name = measured ? Value.text(reading.label()) : ReadingWords.kind(reading.kind());
        return new ExpectRow(name, reading, sound, sick);
    }

    private static List<Line> whence(List<ExpectRow> rows) {
        List<Line> lines = new ArrayList<>();
        for (ExpectRow row : rows) {
            List<Value> sources = new ArrayList<>();
            for (Outlook.Source source : row.sound().sources()) {
                sources.add(Value.word("expect.source", name(source), Value.of(source.share(), Measure.SHARE)));
            }
            if (!sources.isEmpty()) {
                lines.add(Sentence.of("whence.one", row.name(), new Value.Several(sources)));
            }
        }
        return lines;
    }

    /** A parameter by its key, as in a drive's file; a condition by its name, its value being said beside. */
    private static Value name(Outlook.Source source) {
        String key = source.name().split("=", 2)[0];
        return Value.wordOr("reading.condition." + key, key);
    }

    /** Conditions and the short cautions of each reading, beside its name. */
    private static List<Line> how(List<ExpectRow> rows) {
        List<Line> lines = new ArrayList<>();
        for (ExpectRow row : rows) {
            lines.add(HowTaken.of(row.name(), row.sound().conditions()));
            for (Caution caution : row.cautions()) {
                lines.add(Sentence.of("caution", Value.word(caution.words() + ".short")));
            }
        }
        return lines;
    }

    private static List<Line> care(List<ExpectRow> rows) {
        Set<Caution> cautions = new LinkedHashSet<>();
        rows.forEach(row -> cautions.addAll(row.cautions()));
        List<Line> lines = new ArrayList<>();
        cautions.forEach(caution -> lines.add(Sentence.of("caution", Value.word(caution.words()))));
        lines.add(Sentence.of("rules"));
        return lines;
    }
}
