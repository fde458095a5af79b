package swashlight.findings.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import swashlight.findings.belief.Belief;
import swashlight.findings.cause.Action;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Part;
import swashlight.findings.evidence.CauseEvidence;
import swashlight.findings.evidence.Inference;
import swashlight.findings.evidence.Posterior;
import swashlight.findings.evidence.Unknowns;
import swashlight.findings.evidence.Weighed;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Rehearsal;
import swashlight.findings.reading.MachineCase;

/**
 * Finds what is wrong with a machine. Same case, same options, same answer; the order of the readings does not matter beyond chance in the
 * computing.
 */
public final class Finder {
    private static final double LEADING = 0.02; // probability of causes shown beside the readings, 1
    private static final int MOST_LEADING = 6;
    private static final double SIZE_MATTERS_FROM = 0.05; // probability, 1

    private final FinderOptions options;

    public Finder(FinderOptions options) {
        this.options = options;
    }

    /** The finding of a case. */
    public Finding find(MachineCase machine) {
        return found(machine).finding();
    }

    /** The finding of a case with what is believed after it. */
    public Found found(MachineCase machine) {
        Intake intake = new Intake(machine.readings());
        List<Comparison> readings = intake.usable();
        Posterior posterior = new Inference(options.inference(), options.lore())
                .weigh(machine.drive(), readings, machine.seen(), machine.notSeen());
        List<Integer> order = order(posterior);
        List<CauseFinding> causes = causes(posterior, order);
        List<ActionFinding> actions = actions(posterior, order, causes);
        List<CauseEvidence> leading = leading(posterior, order);
        List<ReadingFinding> table = table(intake, leading);
        Unknowns unknowns = new Unknowns(machine.drive(), new Rehearsal(readings).errors());
        Missing missing = missing(machine, intake, posterior, order);
        Effort effort = effort(posterior);
        Optional<WorstFit> worst = Doubt.worst(table, posterior, readings);
        boolean contradiction = Doubt.contradiction(posterior, readings);
        Finding finding = new Finding(
                machine.name(),
                Concluding.conclude(actions, contradiction),
                actions,
                table,
                worst,
                missing,
                effort,
                new FindingAccount(
                                machine,
                                intake,
                                unknowns,
                                effort,
                                leading.stream().map(CauseEvidence::cause).toList(),
                                options.lore())
                        .done());
        return new Found(
                finding,
                Belief.of(
                        machine.drive(),
                        unknowns,
                        posterior,
                        options.suspects(),
                        options.inference().seed()));
    }

    private static List<Integer> order(Posterior posterior) {
        return IntStream.range(0, posterior.causes().size())
                .boxed()
                .sorted((a, b) -> Double.compare(posterior.probability(b), posterior.probability(a)))
                .toList();
    }

    private List<CauseFinding> causes(Posterior posterior, List<Integer> order) {
        double odds = 0;
        double seen = 0;
        for (CauseEvidence evidence : posterior.causes()) {
            odds += options.lore().odds(evidence.cause());
            seen += evidence.prior();
        }
        List<CauseFinding> causes = new ArrayList<>();
        for (int h : order) {
            CauseEvidence evidence = posterior.causes().get(h);
            Cause cause = evidence.cause();
            causes.add(new CauseFinding(
                    cause,
                    options.lore().odds(cause) / odds,
                    evidence.prior() / options.lore().odds(cause) * odds / seen,
                    posterior.probability(h),
                    posterior.error(h),
                    severity(evidence),
                    evidence.weighed().effectiveSize(),
                    Verdict.on(posterior.probability(h))));
        }
        return causes;
    }

    private static List<SeverityRange> severity(CauseEvidence evidence) {
        List<SeverityRange> ranges = new ArrayList<>();
        List<Part> parts = evidence.cause().parts();
        Weighed weighed = evidence.weighed();
        for (int p = 0; p < parts.size(); p++) {
            if (!parts.get(p).fault().whole()) {
                ranges.add(new SeverityRange(
                        parts.get(p).fault(),
                        weighed.severityBelow(p, 0.05),
                        weighed.severityBelow(p, 0.5),
                        weighed.severityBelow(p, 0.95)));
            }
        }
        return ranges;
    }

    private static List<ActionFinding> actions(Posterior posterior, List<Integer> order, List<CauseFinding> causes) {
        List<ActionFinding> actions = new ArrayList<>();
        for (Action action : Action.values()) {
            boolean[] set = new boolean[order.size()];
            List<CauseFinding> own = new ArrayList<>();
            double probability = 0;
            double prior = 0;
            for (int i = 0; i < order.size(); i++) {
                CauseFinding cause = causes.get(i);
                if (cause.cause().actions().contains(action)) {
                    set[order.get(i)] = true;
                    own.add(cause);
                    probability += cause.probability();
                    prior += cause.prior();
                }
            }
            actions.add(
                    new ActionFinding(action, prior, probability, posterior.error(set), Verdict.on(probability), own));
        }
        actions.sort((a, b) -> Double.compare(b.probability(), a.probability()));
        return actions;
    }

    private static List<CauseEvidence> leading(Posterior posterior, List<Integer> order) {
        List<CauseEvidence> leading = new ArrayList<>();
        for (int h : order) {
            if (leading.isEmpty() || (leading.size() < MOST_LEADING && posterior.probability(h) >= LEADING)) {
                leading.add(posterior.causes().get(h));
            }
        }
        return leading;
    }

    private static List<ReadingFinding> table(Intake intake, List<CauseEvidence> leading) {
        List<ReadingFinding> table = new ArrayList<>();
        for (int i = 0; i < intake.usable().size(); i++) {
            Comparison comparison = intake.usable().get(i);
            List<Prediction> predictions = new ArrayList<>();
            for (CauseEvidence cause : leading) {
                predictions.add(ReadingTable.predict(cause, comparison, i));
            }
            table.add(new ReadingFinding(
                    comparison.reading(),
                    intake.implied(i),
                    comparison.conditions().all(),
                    predictions));
        }
        return table;
    }

    private static Missing missing(MachineCase machine, Intake intake, Posterior posterior, List<Integer> order) {
        CauseEvidence best = posterior.causes().get(order.get(0));
        List<MissingCondition> conditions =
                new ConditionCheck(machine.drive(), best.cause(), middle(best)).missing(intake.usable());
        return new Missing(intake.unused(), conditions);
    }

    private static double[] middle(CauseEvidence evidence) {
        return IntStream.range(0, evidence.cause().parts().size())
                .mapToDouble(part -> evidence.weighed().severityBelow(part, 0.5))
                .toArray();
    }

    private Effort effort(Posterior posterior) {
        int machines = 0;
        int unsolved = 0;
        double least = Double.MAX_VALUE;
        for (int h = 0; h < posterior.causes().size(); h++) {
            Weighed weighed = posterior.causes().get(h).weighed();
            machines += weighed.size();
            unsolved += weighed.unsolved();
            if (posterior.probability(h) > SIZE_MATTERS_FROM) {
                least = Math.min(least, weighed.effectiveSize());
            }
        }
        return new Effort(
                options.inference().seed(),
                posterior.causes().size(),
                machines,
                unsolved,
                least == Double.MAX_VALUE ? 0 : least);
    }
}
