package swashlight.desk.work;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import swashlight.desk.report.Line;
import swashlight.desk.report.Sentence;
import swashlight.desk.report.Value;
import swashlight.drive.description.Dimension;
import swashlight.files.bench.TallyFile;
import swashlight.files.demo.DemoShelf;
import swashlight.files.document.Syntax;
import swashlight.files.drive.DriveFile;
import swashlight.files.drive.DriveFiles;
import swashlight.files.schema.Schemas;
import swashlight.files.unit.UnitSystem;
import swashlight.findings.cause.Lore;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;

/** Everything the program can be asked. Each method answers one question; none of them throws at faulty input. */
public final class Desk {
    private Desk() {}

    /** Every number of a drive with its spread and origin; the complete description into a file if one is named. */
    public static Outcome check(DriveAsked drive, Optional<Path> write, UnitSystem units) {
        return answered(inspection -> {
            DriveFile file = inspection.filed(() -> DriveShelf.file(drive));
            List<Line> remarks = new ArrayList<>();
            write.ifPresent(path -> {
                notOntoItself(drive, path, inspection);
                inspection.refuse(Paper.write(path, DriveFiles.write(file, Syntax.of(path.toString(), ""), units)));
                remarks.add(Sentence.of("written", Value.text(path.toString())));
            });
            inspection.close();
            return new CheckReport(file).outcome(remarks);
        });
    }

    /** What somebody wrote by hand, with its remarks, is not replaced by what the program writes. */
    private static void notOntoItself(DriveAsked drive, Path write, Inspection inspection) {
        boolean same = drive.source().stream()
                .anyMatch(read -> Path.of(read.text())
                        .toAbsolutePath()
                        .normalize()
                        .equals(write.toAbsolutePath().normalize()));
        if (same) {
            Stated stated = new Stated("--write", write.toString());
            inspection.refuse("same-file", stated, "this is the description itself", "name another file");
            inspection.close();
        }
    }

    /** How a drive runs under some circumstances, and where every litre a minute and every watt goes. */
    public static Outcome point(DriveAsked drive, CircumstancesAsked circumstances) {
        return answered(inspection -> {
            SickDrive sick = DriveShelf.open(drive, inspection);
            Circumstances when = CircumstancesReader.read(circumstances, inspection);
            inspection.close();
            return PointReport.of(sick, when);
        });
    }

    /**
     * One quantity over one condition; each text beside it changes a condition ({@code oilTemperature=20 °C}) or is {@code sound} for the drive
     * without its faults.
     */
    public static Outcome curve(
            DriveAsked drive, CircumstancesAsked circumstances, Stated show, SweepAsked across, List<Stated> beside) {
        return answered(inspection -> {
            SickDrive sick = DriveShelf.open(drive, inspection);
            Circumstances when = CircumstancesReader.read(circumstances, inspection);
            Optional<Shown> shown = shown(show, inspection);
            Optional<Sweep> sweep = Sweep.read(across, inspection);
            List<CurveReport.Case> family = BesideReader.read(sick, when, beside, inspection);
            inspection.close();
            return CurveReport.of(sweep.orElseThrow(), shown.orElseThrow(), family);
        });
    }

    /** One quantity over two conditions. */
    public static Outcome map(
            DriveAsked drive, CircumstancesAsked circumstances, Stated show, SweepAsked across, SweepAsked up) {
        return answered(inspection -> {
            SickDrive sick = DriveShelf.open(drive, inspection);
            Circumstances when = CircumstancesReader.read(circumstances, inspection);
            Optional<Shown> shown = shown(show, inspection);
            Optional<Sweep> over = Sweep.read(across, inspection);
            Optional<Sweep> upward = Sweep.read(up, inspection);
            inspection.close();
            return MapReport.of(sick, when, over.orElseThrow(), upward.orElseThrow(), shown.orElseThrow());
        });
    }

    /** How oil temperature and speed go while a duty is held for a time, the oil being at first as stated. */
    public static Outcome warmUp(DriveAsked drive, CircumstancesAsked circumstances, Stated duration) {
        return answered(inspection -> {
            SickDrive sick = DriveShelf.open(drive, inspection);
            Circumstances when = CircumstancesReader.read(circumstances, inspection);
            double time = inspection.number(duration, Dimension.TIME, 1, 86_400).orElse(3600); // s
            inspection.close();
            Circumstances cold = when.stated().containsKey(Condition.OIL_TEMPERATURE)
                    ? when
                    : when.with(Condition.OIL_TEMPERATURE, when.value(Condition.AIR_TEMPERATURE));
            return WarmUpReport.of(sick, cold, time);
        });
    }

    /** What a drive does over time, piston by piston, beside the same of the sound drive where it has faults. */
    public static Outcome run(DriveAsked drive, RunAsked asked, RunWatch watch) {
        return answered(inspection -> {
            SickDrive sick = DriveShelf.open(drive, inspection);
            return new RunWork(asked, inspection, watch).answer(sick);
        });
    }

    /** Whether a name is that of a duty over time, and not of a file. */
    public static boolean isNamedDuty(String name) {
        return PlanShelf.named(name);
    }

    /** How far one quantity sways when each number of the drive moves by its own spread. */
    public static Outcome sway(DriveAsked drive, CircumstancesAsked circumstances, Stated show) {
        return answered(inspection -> {
            SickDrive sick = DriveShelf.open(drive, inspection);
            Circumstances when = CircumstancesReader.read(circumstances, inspection);
            Optional<Shown> shown = shown(show, inspection);
            inspection.close();
            return SwayReport.of(sick, when, shown.orElseThrow());
        });
    }

    /**
     * Which losses explain a bench table, or how much a pump leaks.
     *
     * @param file the table; empty for an invented one
     * @param kind pump, motor, drain or rig; empty to be told by the heading
     * @param healthy another table of the same rig known to be sound, to learn from
     * @param drive whose oil ran on the bench
     */
    public static Outcome fit(
            Optional<Stated> file, Optional<Stated> kind, Optional<Stated> healthy, DriveAsked drive) {
        return answered(inspection -> {
            SickDrive oiled = DriveShelf.open(drive, inspection);
            return new FitBench(inspection).fit(file, kind, healthy, oiled.drive());
        });
    }

    private static Optional<Shown> shown(Stated show, Inspection inspection) {
        Optional<Shown> shown = Shown.find(show.text());
        if (shown.isEmpty()) {
            inspection.oneOf(show, Arrays.stream(Shown.values()).map(Shown::key).toList());
        }
        return shown;
    }

    /**
     * What is wrong with a machine; the first demo case where none is named. Same case, same seed, same answer.
     */
    public static Outcome find(DecisionAsked asked) {
        return answered(inspection -> FindReport.of(Decision.of(asked, true, inspection)));
    }

    /** What to do about a machine: every kind of work with its money, time, restored speed and chance of a comeback. */
    public static Outcome choose(DecisionAsked asked) {
        return answered(inspection -> ChoiceReport.of(Decision.of(asked, false, inspection)));
    }

    /** Which reading of a machine to take next, or that none pays any more. */
    public static Outcome next(DecisionAsked asked) {
        return answered(inspection -> NextAnswer.of(Decision.of(asked, true, inspection)));
    }

    /**
     * What measured parts leak and cost, and which of them may stay; the first demo teardown where none is named.
     *
     * @param named a teardown, or a case with dimensions among its readings
     */
    public static Outcome teardown(Optional<Stated> named, RequirementAsked required, long seed) {
        return answered(inspection -> new WearWork(required, inspection, seed).teardown(named));
    }

    /**
     * How much each part of a drive may wear, from what its machine must do.
     *
     * @param papers a file of what its maker says
     */
    public static Outcome limits(DriveAsked drive, RequirementAsked required, Optional<Stated> papers, long seed) {
        return answered(inspection -> {
            SickDrive opened = DriveShelf.open(drive, inspection);
            return new WearWork(required, inspection, seed).limits(opened.sound(), papers);
        });
    }

    /** Which readings prove a repair of a machine; with readings taken afterwards, whether they do. */
    public static Outcome proof(ProofAsked asked) {
        return answered(inspection -> new ProofWork(asked, inspection).answer());
    }

    static Lore lore(Optional<Stated> counted, Inspection inspection) {
        return counted.map(file -> Lore.counted(inspection.filed(() -> TallyFile.read(Path.of(file.text())))))
                .orElseGet(Lore::seeds);
    }

    /** Whether findings keep their promises: machines drawn from the model, measured, found, and compared with what they are. */
    public static Outcome study(DriveAsked drive, StudyAsked asked, RunWatch watch) {
        return answered(inspection -> {
            SickDrive opened = DriveShelf.open(drive, inspection);
            return new StudyWork(asked, inspection, watch).answer(opened.sound());
        });
    }

    /** Many cases, one row each. */
    public static Outcome sift(SiftAsked asked, RunWatch watch) {
        return answered(inspection -> new SiftWork(asked, inspection, watch).answer());
    }

    /** What readings should be on a machine, and on a sick one beside it. */
    public static Outcome expect(DriveAsked drive, ExpectAsked asked) {
        return answered(inspection -> {
            ExpectReader reader = new ExpectReader(asked, inspection);
            if (asked.machineCase().isPresent()) {
                MachineCase machine = reader.machine(drive);
                SickDrive sick = new SickDrive(machine.drive(), AilmentReader.read(drive.faults(), inspection));
                inspection.close();
                return ExpectReport.measured(sick, machine, asked.seed());
            }
            SickDrive opened = DriveShelf.open(drive, inspection);
            List<Reading> readings = reader.readings();
            inspection.close();
            return ExpectReport.of(opened, readings, asked.seed());
        });
    }

    /** What usual sets of readings leave unknown on a drive. */
    public static Outcome learn(DriveAsked drive) {
        return answered(inspection -> {
            SickDrive opened = DriveShelf.open(drive, inspection);
            inspection.close();
            return LearnReport.of(opened.sound());
        });
    }

    /** Everything that can be wrong with a drive. */
    public static Outcome faults() {
        return FaultsReport.all();
    }

    /** What comes along to begin with. */
    public static Outcome demos() {
        return DemoReport.all();
    }

    /** The text of one demo. */
    public static Outcome demo(Stated name) {
        return answered(inspection -> DemoReport.one(name, inspection));
    }

    /** All demos written into a folder; none when one of the files is there already. */
    public static Outcome demosInto(Stated folder) {
        return answered(inspection -> DemoReport.into(folder, inspection));
    }

    /** The schema of a kind of file. */
    public static Outcome schema(Stated kind) {
        return answered(inspection -> {
            Optional<String> known = inspection.oneOf(kind, Schemas.kinds());
            inspection.close();
            return new Outcome.Printed(Schemas.of(known.orElseThrow()));
        });
    }

    /** Whether a name is that of a demo case, and not of a file. */
    public static boolean isDemoCase(String name) {
        return name.startsWith(DemoShelf.PREFIX) || DemoShelf.isCase(name);
    }

    /** Whether a name is that of a demo that holds measured parts, and not of a file. */
    public static boolean isDemoTeardown(String name) {
        return name.startsWith(DemoShelf.PREFIX) || WearWork.known(name);
    }

    /** Whether a name is that of a demo drive, and not of a file. */
    public static boolean isDemo(String name) {
        return name.startsWith(DemoShelf.PREFIX) || DemoShelf.drives().contains(name);
    }

    /** Whether a name is that of demo prices, and not of a file. */
    public static boolean isDemoPrices(String name) {
        return name.startsWith(DemoShelf.PREFIX) || DemoShelf.prices().contains(name);
    }

    private static Outcome answered(Function<Inspection, Outcome> question) {
        try {
            return question.apply(new Inspection());
        } catch (RefusedInput refused) {
            return new Outcome.Refused(refused.refusals());
        }
    }
}
