package swashlight.findings.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import swashlight.drive.description.DriveDescription;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Causes;
import swashlight.findings.cause.Lore;
import swashlight.findings.cause.Part;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Rehearsal;
import swashlight.findings.reading.Look;
import swashlight.findings.reading.ReadingKind;

/** Weighs all causes on one case, and draws more machines for those that matter until the probabilities stand still. */
public final class Inference {
    private static final int MOST_FAULTS = 2; // in one cause
    private static final double MATTERS = 0.05; // probability from which a cause's machines must be many, 1
    private static final double AMONG_ITS_OWN =
            0.5; // weight of an error that only moves a cause against others of its action, 1
    private static final double MORE = 1.5; // least growth of a redraw, 1
    private static final double WITHIN_REACH = 9; // nat below the best at first look: not hopeless

    private static final double MANY_ALONE =
            60; // effective machines of a cause drawn alone below which it is drawn anew, 1
    private static final int MORE_ALONE = 4; // growth of that redraw, 1

    private final InferenceOptions options;
    private final Lore lore;

    /** With estimates of how frequent causes and looks are. */
    public Inference(InferenceOptions options) {
        this(options, Lore.seeds());
    }

    /** With what is known of causes before reading. */
    public Inference(InferenceOptions options, Lore lore) {
        this.options = options;
        this.lore = lore;
    }

    /** The posterior of all causes of a drive, from readings and looks. */
    public Posterior weigh(DriveDescription drive, List<Comparison> readings, Set<Look> seen, Set<Look> notSeen) {
        Rehearsal rehearsal = new Rehearsal(readings);
        Unknowns unknowns = new Unknowns(drive, rehearsal.errors());
        Target target = Target.of(readings);
        CommonDraws draws = new CommonDraws(
                options.seed(), options.batches(), LineDraw.width(target.size(), unknowns.size() + MOST_FAULTS));
        List<CauseSampler> samplers = new ArrayList<>();
        Set<ReadingKind> kinds =
                readings.stream().map(each -> each.reading().kind()).collect(Collectors.toSet());
        double[] prior = new double[Causes.all().size()];
        for (int h = 0; h < prior.length; h++) {
            Cause cause = Causes.all().get(h);
            prior[h] = lore.odds(cause) * lore.chance(seen, notSeen, kinds, cause);
            samplers.add(sampler(cause, unknowns, rehearsal, target, draws));
        }
        double[] guess = propose(samplers, prior);
        double highest = Double.NEGATIVE_INFINITY;
        for (double log : guess) {
            highest = Math.max(highest, log);
        }
        List<CauseEvidence> causes = new ArrayList<>();
        for (int h = 0; h < prior.length; h++) {
            int first = target.size() == 0 ? 1 : firstDraws(guess[h] - highest);
            causes.add(new CauseEvidence(
                    Causes.all().get(h),
                    prior[h],
                    samplers.get(h),
                    samplers.get(h).weigh(first)));
        }
        return settle(causes);
    }

    /**
     * Machines of one cause alone, so many a batch, four times as many aimed anew where few of them count: what its severities are if it is
     * this cause. Aimed as {@link #weigh} aims.
     */
    public Weighed alone(Cause cause, DriveDescription drive, List<Comparison> readings, int perBatch) {
        Rehearsal rehearsal = new Rehearsal(readings);
        Unknowns unknowns = new Unknowns(drive, rehearsal.errors());
        Target target = Target.of(readings);
        CommonDraws draws = new CommonDraws(
                options.seed(), options.batches(), LineDraw.width(target.size(), unknowns.size() + MOST_FAULTS));
        CauseSampler sampler = sampler(cause, unknowns, rehearsal, target, draws);
        if (cause.parts().isEmpty()) {
            sampler.begin();
        } else {
            CauseSampler first = sampler(Causes.all().get(0), unknowns, rehearsal, target, draws);
            first.begin();
            sampler.glance(first);
            sampler.anchor();
        }
        Weighed weighed = sampler.weigh(perBatch);
        if (weighed.effectiveSize() < MANY_ALONE) {
            sampler.anchorAt(weighed);
            weighed = sampler.weigh(MORE_ALONE * perBatch);
        }
        return weighed;
    }

    private CauseSampler sampler(
            Cause cause, Unknowns unknowns, Rehearsal rehearsal, Target target, CommonDraws draws) {
        return new CauseSampler(
                new CauseMachine(cause, unknowns, rehearsal),
                target,
                cause.parts().stream().map(Part::severity).toList(),
                draws,
                options.sampler());
    }

    /** Looks at every cause with the slopes of the first, then closely at those within reach; ln of shares, 1. */
    private static double[] propose(List<CauseSampler> samplers, double[] prior) {
        double[] guess = new double[prior.length];
        double highest = Double.NEGATIVE_INFINITY;
        CauseSampler first = samplers.get(0);
        first.begin();
        for (int h = 0; h < guess.length; h++) {
            if (h > 0) {
                samplers.get(h).glance(first);
            }
            guess[h] = Math.log(prior[h]) + samplers.get(h).logLinearEvidence();
            highest = Math.max(highest, guess[h]);
        }
        for (int h = 1; h < guess.length; h++) {
            if (guess[h] > highest - WITHIN_REACH) {
                samplers.get(h).anchor();
                guess[h] = Math.log(prior[h]) + samplers.get(h).logLinearEvidence();
            }
        }
        return guess;
    }

    /** The error that a cause leaves in the answer goes with its share over the root of its machines. */
    private int firstDraws(double logShare) {
        return (int) Math.max(options.leastDraws(), Math.ceil(options.mostDraws() * Math.exp(logShare / 2)));
    }

    /** Redraws causes whose chance errors still move the answer, as often as that takes. */
    private Posterior settle(List<CauseEvidence> causes) {
        Posterior posterior = new Posterior(causes, options.batches());
        for (int round = 0; round < options.rounds(); round++) {
            boolean changed = false;
            for (int h = 0; h < causes.size(); h++) {
                CauseEvidence cause = causes.get(h);
                int present = cause.weighed().perBatch();
                int wanted = wanted(posterior.probability(h), elsewhere(posterior, cause), cause.weighed());
                if (wanted > present && present < options.limit()) {
                    causes.set(h, cause.redrawn(wanted));
                    changed = true;
                }
            }
            if (!changed) {
                break;
            }
            posterior = new Posterior(causes, options.batches());
        }
        return posterior;
    }

    /** Probability of all causes that call for another action, 1. */
    private static double elsewhere(Posterior posterior, CauseEvidence cause) {
        double sum = 0;
        for (int h = 0; h < posterior.causes().size(); h++) {
            boolean other =
                    posterior.causes().get(h).cause().action() != cause.cause().action();
            sum += other ? posterior.probability(h) : 0;
        }
        return sum;
    }

    /** Machines a batch that would bring the error of a cause's share in its action, and its effective number, to what is wanted. */
    private int wanted(double probability, double elsewhere, Weighed weighed) {
        double moves = probability
                * Math.max(AMONG_ITS_OWN * (1 - probability), elsewhere)
                * weighed.relativeError()
                / options.tolerance();
        double thin =
                probability > MATTERS ? options.wantedSize() * Math.sqrt(probability) / weighed.effectiveSize() : 0;
        double more = Math.max(moves * moves, thin);
        if (more <= 1) {
            return 0;
        }
        double count = weighed.perBatch() * Math.max(MORE, more);
        return (int) Math.min(options.limit(), Math.max(options.someDraws(), Math.ceil(count)));
    }
}
