package swashlight.desk.work;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import swashlight.drive.description.DriveDescription;
import swashlight.files.demo.DemoShelf;
import swashlight.files.document.Source;
import swashlight.files.wear.TeardownFile;
import swashlight.files.wear.TeardownFiles;
import swashlight.findings.wear.DrivePapers;
import swashlight.findings.wear.LimitTable;
import swashlight.findings.wear.PartLeak;
import swashlight.findings.wear.Requirement;
import swashlight.findings.wear.Teardown;
import swashlight.findings.wear.TeardownOptions;
import swashlight.findings.wear.Yardstick;

/** Reads what is asked about wear, works it out, and reports it. */
final class WearWork {
    private final RequirementAsked asked;
    private final Inspection inspection;
    private final long seed;

    WearWork(RequirementAsked asked, Inspection inspection, long seed) {
        this.asked = asked;
        this.inspection = inspection;
        this.seed = seed;
    }

    Outcome teardown(Optional<Stated> named) {
        TeardownFile file = inspection.filed(() -> TeardownFiles.open(
                source(named.map(Stated::text).orElse(DemoShelf.teardowns().get(0)))));
        RequirementOfLine line = new RequirementOfLine(asked, inspection);
        List<Requirement> required = line.list(file.required());
        PartLeak leak = line.leak(required);
        sensible(file.drive(), required, named);
        return TeardownReport.of(
                file,
                new Teardown(file.drive(), file.measured(), file.papers(), required, leak, TeardownOptions.usual(seed))
                        .finding(),
                leak);
    }

    Outcome limits(DriveDescription drive, Optional<Stated> papers) {
        DrivePapers said = papers.map(stated -> inspection.filed(() -> TeardownFiles.papers(Path.of(stated.text()))))
                .orElseGet(DrivePapers::none);
        RequirementOfLine line = new RequirementOfLine(asked, inspection);
        List<Requirement> required = line.list(List.of());
        PartLeak leak = line.leak(required);
        sensible(drive, required, Optional.empty());
        int machines = TeardownOptions.usual(seed).machines();
        return LimitsReport.of(drive, LimitTable.of(drive, required, leak, machines, seed), leak, said);
    }

    /** A share of nothing is nothing: the described drive must itself do what a share is asked of. */
    private void sensible(DriveDescription drive, List<Requirement> required, Optional<Stated> named) {
        inspection.close();
        if (!new Yardstick(drive, required).sensible()) {
            Stated stated = asked.stated().getOrDefault("hill", named.orElse(new Stated("required", "")));
            inspection.refuse(
                    "does-nothing",
                    stated,
                    "the drive as described does not move there at all",
                    "a gentler hill, less load, or a speed instead of a share");
        }
        inspection.close();
    }

    private static Source source(String name) {
        if (name.startsWith(DemoShelf.PREFIX)) {
            return demo(name.substring(DemoShelf.PREFIX.length()));
        }
        return known(name) ? demo(name) : Source.read(Path.of(name));
    }

    private static Source demo(String name) {
        return DemoShelf.isCase(name) ? DemoShelf.machineCase(name) : DemoShelf.teardown(name);
    }

    static boolean known(String name) {
        return DemoShelf.teardowns().contains(name) || DemoShelf.isCase(name);
    }
}
