package swashlight.desk.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import swashlight.drive.description.Dimension;
import swashlight.drive.description.DriveDescription;
import swashlight.findings.evidence.Inference;
import swashlight.findings.evidence.Weighed;
import swashlight.findings.expect.Comparison;
import swashlight.findings.finding.Finder;
import swashlight.findings.finding.FinderOptions;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.study.Simulated;
import swashlight.findings.study.Simulator;
import swashlight.findings.study.StudyRow;

/** Simulated machines found and compared with the truth, as many as asked for, rows kept as they come. */
final class StudyWork {
    private static final String KIND = "study of ";
    private static final int MOST = 1_000_000;
    private static final int MACHINES_OF_TRUTH =
            48; // a batch: ranks want many machines, also of a cause that seems unlikely

    private final StudyAsked asked;
    private final Inspection inspection;
    private final RunWatch watch;

    StudyWork(StudyAsked asked, Inspection inspection, RunWatch watch) {
        this.asked = asked;
        this.inspection = inspection;
        this.watch = watch;
    }

    Outcome answer(DriveDescription drive) {
        int machines = (int)
                inspection.number(asked.machines(), Dimension.NUMBER, 1, MOST).orElse(1);
        String work = KIND + drive.name() + ", seed " + asked.seed() + (asked.careful() ? ", careful" : "");
        RowFile file = RowFile.open(asked.to(), work, StudyRows.heading(), inspection);
        List<RowFile.RowsOfWork> others = asked.with().stream()
                .flatMap(path -> RowFile.others(path, KIND, StudyRows.heading(), inspection).stream())
                .toList();
        inspection.close();
        Set<Integer> there =
                file.rows().stream().map(cells -> Integer.valueOf(cells.get(0))).collect(Collectors.toSet());
        List<Integer> left = IntStream.range(0, machines)
                .filter(number -> !there.contains(number))
                .boxed()
                .toList();
        Simulator simulator = new Simulator(drive, asked.seed());
        boolean whole = ManyHands.all(
                left, machines, asked.hands(), number -> file.add(StudyRows.cells(row(simulator, number))), watch);
        if (!whole) {
            return new Outcome.Stopped();
        }
        List<StudyPart> parts = new ArrayList<>();
        parts.add(new StudyPart(
                drive.name(),
                file.rows().stream()
                        .map(StudyRows::row)
                        .filter(row -> row.number() < machines)
                        .sorted(Comparator.comparingInt(StudyRow::number))
                        .toList()));
        for (RowFile.RowsOfWork other : others) {
            parts.add(new StudyPart(
                    other.work(), other.rows().stream().map(StudyRows::row).toList()));
        }
        return StudyReport.of(drive, asked, parts);
    }

    private StudyRow row(Simulator simulator, int number) {
        Simulated truth = simulator.draw(number);
        MachineCase machine = truth.machine();
        FinderOptions options = asked.careful() ? FinderOptions.usual(number) : FinderOptions.quick(number);
        List<Comparison> readings =
                machine.readings().stream().map(Comparison::of).toList();
        Weighed ofTruth =
                new Inference(options.inference()).alone(truth.cause(), machine.drive(), readings, MACHINES_OF_TRUTH);
        return StudyRow.of(number, truth, new Finder(options).found(machine), ofTruth);
    }
}
