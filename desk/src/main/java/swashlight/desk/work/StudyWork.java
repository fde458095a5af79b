package swashlight.desk.work;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import swashlight.drive.description.Dimension;
import swashlight.drive.description.DriveDescription;
import swashlight.findings.evidence.Inference;
import swashlight.findings.evidence.InferenceOptions;
import swashlight.findings.evidence.Posterior;
import swashlight.findings.evidence.Weighed;
import swashlight.findings.expect.Comparison;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.study.Simulated;
import swashlight.findings.study.Simulator;
import swashlight.findings.study.StudyRow;
import swashlight.findings.study.StudySummary;

/** Simulated machines found and compared with the truth, as many as asked for, rows kept as they come. */
final class StudyWork {
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
        String work = "study of " + drive.name() + ", seed " + asked.seed() + (asked.careful() ? ", careful" : "");
        RowFile file = RowFile.open(asked.to(), work, StudyRows.heading(), inspection);
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
        List<StudyRow> rows = file.rows().stream()
                .map(StudyRows::row)
                .filter(row -> row.number() < machines)
                .toList();
        return StudyReport.of(drive, asked, StudySummary.of(rows));
    }

    private StudyRow row(Simulator simulator, int number) {
        Simulated truth = simulator.draw(number);
        MachineCase machine = truth.machine();
        Inference inference =
                new Inference(asked.careful() ? InferenceOptions.usual(number) : InferenceOptions.quick(number));
        List<Comparison> readings =
                machine.readings().stream().map(Comparison::of).toList();
        Posterior posterior = inference.weigh(machine.drive(), readings, machine.seen(), machine.notSeen());
        Weighed ofTruth = inference.alone(truth.cause(), machine.drive(), readings, MACHINES_OF_TRUTH);
        return StudyRow.of(number, truth, posterior, ofTruth);
    }
}
