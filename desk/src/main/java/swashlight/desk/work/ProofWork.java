package swashlight.desk.work;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import swashlight.findings.choice.RepairOption;
import swashlight.findings.cost.Job;
import swashlight.findings.finding.Finder;
import swashlight.findings.finding.FinderOptions;
import swashlight.findings.finding.Found;
import swashlight.findings.proof.Proof;
import swashlight.findings.proof.ProofFinding;
import swashlight.findings.proof.ProofPlan;
import swashlight.findings.reading.MachineCase;

/** Reads what is asked about a repair, plans or judges its proof, and reports it. */
final class ProofWork {
    private static final int MOST_JOBS = 2;

    private final ProofAsked asked;
    private final Inspection inspection;

    ProofWork(ProofAsked asked, Inspection inspection) {
        this.asked = asked;
        this.inspection = inspection;
    }

    Outcome answer() {
        RepairOption done = done();
        MachineCase before =
                inspection.filed(() -> CaseShelf.open(asked.before())).machineCase();
        Optional<MachineCase> after = asked.after()
                .map(named -> inspection
                        .filed(() -> CaseShelf.open(Optional.of(named)))
                        .machineCase());
        after.ifPresent(machine -> comparable(before, machine));
        inspection.close();
        Finder finder = new Finder(FinderOptions.usual(asked.seed()));
        Found found = finder.found(before);
        if (after.isEmpty()) {
            ProofPlan plan = ProofPlan.of(before, found.belief(), done, asked.seed());
            return ProofPlanReport.of(before, found, done, plan);
        }
        MachineCase read = after.orElseThrow();
        ProofFinding finding = Proof.of(before, found, done, read, finder.found(read), asked.seed());
        return ProofReport.of(before, done, finding);
    }

    private RepairOption done() {
        List<String> known = Arrays.stream(Job.values()).map(Job::key).toList();
        if (asked.done().isEmpty()) {
            inspection.refuse(
                    "missing",
                    new Stated("--done", ""),
                    "it is not said what was done",
                    "one of " + String.join(", ", known) + ", or two with a plus between");
            inspection.close();
        }
        Stated stated = asked.done().orElseThrow();
        List<Job> jobs = new ArrayList<>();
        for (String word : stated.text().split("\\+")) {
            inspection
                    .oneOf(new Stated(stated.where(), word.strip()), known)
                    .flatMap(Job::find)
                    .ifPresent(jobs::add);
        }
        if (jobs.size() > MOST_JOBS) {
            inspection.refuse("too-many", stated, "this is more work than two kinds", "name the two that matter");
        }
        return new RepairOption(jobs);
    }

    private void comparable(MachineCase before, MachineCase after) {
        Stated named = asked.after().orElseThrow();
        if (!before.drive().equals(after.drive())) {
            inspection.refuse(
                    "other-drive",
                    named,
                    "this case is of another drive (" + after.drive().name() + ") than the one before ("
                            + before.drive().name() + ")",
                    "name the same drive file in both");
        }
        if (after.readings().isEmpty()) {
            inspection.refuse("nothing-read", named, "this case has no readings", "read the machine after the repair");
        }
    }
}
