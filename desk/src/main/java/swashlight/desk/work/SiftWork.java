package swashlight.desk.work;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swashlight.desk.report.Column;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;
import swashlight.files.demo.DemoShelf;
import swashlight.files.document.FileComplaint;
import swashlight.files.document.InputFault;
import swashlight.findings.finding.ActionFinding;
import swashlight.findings.finding.CauseFinding;
import swashlight.findings.finding.Finder;
import swashlight.findings.finding.FinderOptions;
import swashlight.findings.finding.Finding;
import swashlight.findings.finding.WorstFit;

/** Many cases found, one row each; a case that cannot be read has its complaint in its row, and the others go on. */
final class SiftWork {
    private static final List<String> HEADING = List.of(
            "case",
            "verdict",
            "action",
            "chance",
            "cause",
            "cause_chance",
            "severity_low",
            "severity_middle",
            "severity_high",
            "doubted_reading",
            "complaint");
    private static final String REFUSED = "refused";
    private static final Set<String> ENDINGS = Set.of("yaml", "yml", "json");

    private final SiftAsked asked;
    private final Inspection inspection;
    private final RunWatch watch;

    SiftWork(SiftAsked asked, Inspection inspection, RunWatch watch) {
        this.asked = asked;
        this.inspection = inspection;
        this.watch = watch;
    }

    Outcome answer() {
        List<String> cases = cases();
        RowFile file = RowFile.open(
                asked.to(), "sift, seed " + asked.seed() + (asked.careful() ? ", careful" : ""), HEADING, inspection);
        inspection.close();
        Set<String> there = file.rows().stream().map(cells -> cells.get(0)).collect(Collectors.toSet());
        List<String> left = cases.stream().filter(name -> !there.contains(name)).toList();
        if (!ManyHands.all(left, cases.size(), asked.hands(), name -> file.add(row(name)), watch)) {
            return new Outcome.Stopped();
        }
        Set<String> wanted = new TreeSet<>(cases);
        return report(file.rows().stream()
                .filter(cells -> wanted.contains(cells.get(0)))
                .toList());
    }

    /** Names of all cases: files of folders, files, demos; every one once. */
    private List<String> cases() {
        Set<String> names = new TreeSet<>();
        for (Stated place : asked.places()) {
            Path path = Path.of(place.text());
            if (Desk.isDemoCase(place.text())) {
                names.add(place.text());
            } else if (Files.isDirectory(path)) {
                names.addAll(inside(path, place));
            } else {
                names.add(place.text());
            }
        }
        if (asked.places().isEmpty()) {
            names.addAll(DemoShelf.cases());
        }
        if (names.isEmpty()) {
            inspection.refuse(
                    "nothing-here",
                    asked.places().get(0),
                    "there is no case in this folder",
                    "files that end in .yaml, .yml or .json");
        }
        return List.copyOf(names);
    }

    private List<String> inside(Path folder, Stated place) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(Path::toString)
                    .filter(name -> ENDINGS.contains(name.substring(name.lastIndexOf('.') + 1)))
                    .toList();
        } catch (IOException broken) {
            inspection.refuse("not-readable", place, "this folder cannot be read", "name another one");
            return List.of();
        }
    }

    private List<String> row(String name) {
        try {
            FinderOptions options =
                    asked.careful() ? FinderOptions.usual(asked.seed()) : FinderOptions.quick(asked.seed());
            Finding finding = new Finder(options)
                    .find(CaseShelf.open(Optional.of(new Stated("CASE", name))).machineCase());
            return cells(name, finding);
        } catch (InputFault fault) {
            FileComplaint first = fault.complaints().get(0);
            List<String> cells = new ArrayList<>(List.of(name, REFUSED));
            while (cells.size() < HEADING.size() - 1) {
                cells.add("");
            }
            String place = Inspection.place(first);
            cells.add(place.isEmpty() ? first.wrong() : place + ": " + first.wrong());
            return cells;
        }
    }

    private static List<String> cells(String name, Finding finding) {
        ActionFinding action = finding.actions().get(0);
        CauseFinding cause = finding.causes().get(0);
        boolean graded = cause.severity().size() == 1;
        return List.of(
                name,
                finding.conclusion().verdict().key(),
                action.action().key(),
                digits(action.probability()),
                cause.cause().key(),
                digits(cause.probability()),
                graded ? digits(cause.severity().get(0).low()) : "",
                graded ? digits(cause.severity().get(0).middle()) : "",
                graded ? digits(cause.severity().get(0).high()) : "",
                finding.worst()
                        .filter(WorstFit::distrust)
                        .map(worst -> worst.reading().label())
                        .orElse(""),
                "");
    }

    private static String digits(double number) {
        return String.format(Locale.ROOT, "%.4g", number);
    }

    private static Outcome report(List<List<String>> rows) {
        Map<String, Integer> counts = new TreeMap<>();
        for (List<String> row : rows) {
            boolean refused = row.get(1).equals(REFUSED);
            counts.merge(refused ? REFUSED : row.get(1) + " " + row.get(2), 1, Integer::sum);
        }
        List<Line> lines = new ArrayList<>();
        lines.add(Sentence.of("answer", Value.of(rows.size(), Measure.RATIO)));
        List<List<Value>> summed = new ArrayList<>();
        counts.forEach((what, count) -> summed.add(List.of(Value.of(count, Measure.RATIO), Value.text(what))));
        List<Column> few = List.of(new Column("count", Measure.RATIO), Column.words("what"));
        List<Column> columns = List.of(
                Column.words("case"),
                Column.words("verdict"),
                Column.words("action"),
                Column.words("chance"),
                Column.words("cause"),
                Column.words("doubted"),
                Column.words("complaint"));
        List<List<Value>> every = new ArrayList<>();
        for (List<String> row : rows) {
            every.add(Stream.of(0, 1, 2, 3, 4, 9, 10)
                    .map(cell -> Value.text(row.get(cell)))
                    .toList());
        }
        lines.add(new Table("cases", columns, every));
        lines.add(new Table("sums", few, summed));
        return new Outcome.Answered(new Report("sift", lines));
    }
}
