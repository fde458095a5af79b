package swashlight.desk.work;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import swashlight.desk.report.Column;
import swashlight.desk.report.Report;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Table;
import swashlight.desk.report.Value;
import swashlight.files.demo.DemoShelf;
import swashlight.files.document.Source;
import swashlight.files.drive.DriveFiles;
import swashlight.files.machine.CaseFiles;
import swashlight.files.prices.PricesFiles;
import swashlight.files.wear.TeardownFiles;

/** The invented drives and cases that come along: listed, printed, or written into a folder. */
final class DemoReport {
    private DemoReport() {}

    static Outcome all() {
        List<Column> columns = List.of(Column.words("name"), Column.words("kind"), Column.words("about"));
        List<List<Value>> drives = DemoShelf.drives().stream()
                .map(name -> row(
                        name, "drive", DriveFiles.open(DemoShelf.drive(name)).about()))
                .toList();
        List<List<Value>> cases = Stream.concat(DemoShelf.cases().stream(), DemoShelf.afterwards().stream())
                .map(name -> row(name, "case", CaseFiles.demo(name).complaint()))
                .toList();
        List<List<Value>> teardowns = DemoShelf.teardowns().stream()
                .map(name -> row(name, "teardown", TeardownFiles.demo(name).about()))
                .toList();
        List<List<Value>> prices = DemoShelf.prices().stream()
                .map(name -> row(name, "prices", PricesFiles.about(DemoShelf.prices(name))))
                .toList();
        List<List<Value>> rows = Stream.of(drives, cases, teardowns, prices)
                .flatMap(List::stream)
                .toList();
        return new Outcome.Answered(new Report(
                "demo", List.of(Sentence.of("answer"), new Table("demos", columns, rows), Sentence.of("usage"))));
    }

    private static List<Value> row(String name, String kind, String about) {
        return List.of(Value.text(name), Value.word("demo.kind." + kind), Value.text(about));
    }

    static Outcome one(Stated asked, Inspection inspection) {
        String name = asked.text().startsWith(DemoShelf.PREFIX)
                ? asked.text().substring(DemoShelf.PREFIX.length())
                : asked.text();
        Map<String, Source> all = sources();
        if (!all.containsKey(name)) {
            inspection.refuse(
                    "unknown-demo", asked, "there is no demo of that name", Inspection.choice(name, all.keySet()));
            inspection.close();
        }
        return new Outcome.Printed(all.get(name).text());
    }

    /** Writes all of them; nothing at all when one of the files is there already. */
    static Outcome into(Stated folder, Inspection inspection) {
        Path place = Path.of(folder.text());
        Map<String, Source> all = sources();
        for (String name : all.keySet()) {
            Path file = place.resolve(name + ".yaml");
            if (Files.exists(file)) {
                inspection.refuse(
                        "file-exists",
                        new Stated(folder.where(), file.toString()),
                        "this file is there already and is not overwritten",
                        "name a folder without it");
            }
        }
        inspection.close();
        try {
            Files.createDirectories(place);
        } catch (IOException | SecurityException broken) {
            inspection.refuse("not-writable", folder, "this folder cannot be made", "name another folder");
            inspection.close();
        }
        all.forEach((name, source) -> inspection.refuse(Paper.write(place.resolve(name + ".yaml"), source.text())));
        inspection.close();
        List<List<Value>> rows = all.keySet().stream()
                .map(name -> List.of(Value.text(place.resolve(name + ".yaml").toString())))
                .toList();
        return new Outcome.Answered(new Report(
                "demo", List.of(Sentence.of("written"), new Table("written", List.of(Column.words("file")), rows))));
    }

    private static Map<String, Source> sources() {
        Map<String, Source> all = new LinkedHashMap<>();
        DemoShelf.drives().forEach(name -> all.put(name, DemoShelf.drive(name)));
        DemoShelf.cases().forEach(name -> all.put(name, DemoShelf.machineCase(name)));
        DemoShelf.afterwards().forEach(name -> all.put(name, DemoShelf.machineCase(name)));
        DemoShelf.teardowns().forEach(name -> all.put(name, DemoShelf.teardown(name)));
        DemoShelf.prices().forEach(name -> all.put(name, DemoShelf.prices(name)));
        return all;
    }
}
