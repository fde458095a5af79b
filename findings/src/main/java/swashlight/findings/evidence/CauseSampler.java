package swashlight.findings.evidence;

import java.util.List;
import swashlight.findings.cause.SeverityPrior;
import swashlight.findings.expect.Forecast;

/**
 * Evidence of one cause:
 *
 * <pre>
 *   Z = Σ_c P_c ∫ p(r | x) p(x) dx ≈ mean of w,      x = (u, z): severity and all that is not known, each standard normal
 *   w = 1/((1 − β) E_c/Ē + β) · 1/((1 − β) ((1 − γ) E_y/E_c + γ V_y/V) + β) · L(x)/((1 − β) L_t/E_y + β)
 *
 *   c, P    stratum of severities, its prior share                  1
 *   L       likelihood by the true machine                          readings times their errors, 1
 *   E, Ē    evidence by the line in a stratum, and over all         1
 *   E_y     that evidence given the loose directions of x           1
 *   V, V_y  as E_c, E_y, were readings five times as uncertain      1
 *   L_t     linear likelihood by the line moved there               1
 *   β, γ    share of draws from the prior, of others by wide lines  1
 * </pre>
 *
 * A draw goes so: a stratum by linear evidence; x from the line through the likeliest machine; of x the few directions that the readings pin
 * down are thrown away, the true machine is met along them, and they are drawn anew from the line moved there. Where the machine is
 * linear all weights are alike. No weight exceeds L/β³. Source: importance sampling with a defensive mixture (Hesterberg 1995, from memory).
 */
public final class CauseSampler {
    private final Target target;
    private final SamplerOptions options;
    private final CommonDraws draws;
    private final Levels levels;
    private final LevelledMachine[] machines; // per stratum
    private final Line[] lines;
    private final LineDraw[] drawers;
    private final double[] logEvidence;
    private double logAll;
    private boolean anchored;

    /** A cause to be weighed. */
    public CauseSampler(
            Machine machine, Target target, List<SeverityPrior> priors, CommonDraws draws, SamplerOptions options) {
        this.target = target;
        this.draws = draws;
        this.options = options;
        levels = new Levels(priors);
        int strata = levels.count();
        machines = new LevelledMachine[strata];
        lines = new Line[strata];
        drawers = new LineDraw[strata];
        logEvidence = new double[strata];
        for (int c = 0; c < strata; c++) {
            machines[c] = new LevelledMachine(machine, levels, c);
        }
    }

    /** The first of all causes: slopes of its own from the usual machine on. */
    public void begin() {
        for (int c = 0; c < lines.length; c++) {
            lines[c] = new Line(target, new Straightening(target), machines[c].unknowns());
            Forecast forecast = new Forecast(target.size());
            machines[c].predict(lines[c].place.clone(), forecast);
            lines[c].standAt(lines[c].place.clone(), forecast);
            anchor(c).slopes(lines[c]);
        }
        anchor();
    }

    /** Takes the slopes of another cause for a first look. */
    public void glance(CauseSampler other) {
        for (int c = 0; c < lines.length; c++) {
            Glance glance = new Glance(target, machines[c], other.lines[0], options.looks(), options.looseness());
            lines[c] = glance.best();
            logEvidence[c] = glance.logEvidence();
        }
        sum();
    }

    /** Looks for the likeliest machine and takes slopes of its own there. */
    public void anchor() {
        anchored = true;
        for (int c = 0; c < lines.length; c++) {
            anchor(c).settle(lines[c], options.steps());
            drawers[c] = null;
            logEvidence[c] = drawer(c).logEvidence();
        }
        sum();
    }

    /** Anchors anew from the best machine drawn so far. */
    public void anchorAt(Weighed weighed) {
        if (lines.length == 1) {
            System.arraycopy(weighed.heaviest(), 0, lines[0].place, 0, lines[0].place.length);
        }
        anchor();
    }

    /** True once it has been anchored. */
    public boolean anchored() {
        return anchored;
    }

    private Anchor anchor(int stratum) {
        return new Anchor(target, machines[stratum], options.looseness());
    }

    private void sum() {
        double highest = Double.NEGATIVE_INFINITY;
        for (double each : logEvidence) {
            highest = Math.max(highest, each);
        }
        double sum = 0;
        for (int c = 0; c < lines.length; c++) {
            sum += levels.weight(c) * Math.exp(logEvidence[c] - highest);
        }
        logAll = highest + Math.log(sum);
    }

    /** ln Z by the lines alone, readings times their errors; unit 1. */
    public double logLinearEvidence() {
        return logAll;
    }

    /** Draws so many machines in every batch and weighs them. */
    public Weighed weigh(int perBatch) {
        draws.reach(perBatch);
        Weighed weighed = new Weighed(draws.batches(), perBatch, target.size(), levels.unknowns());
        Forecast forecast = new Forecast(target.size());
        double[] x = new double[machines[0].unknowns()];
        double defence = options.defence();
        for (int batch = 0; batch < draws.batches(); batch++) {
            double start = draws.uniform(batch, 0, CommonDraws.STRATUM);
            for (int draw = 0; draw < perBatch; draw++) {
                double share = (start + draw) / perBatch;
                int c = share < defence ? byPrior(share / defence) : byEvidence((share - defence) / (1 - defence));
                boolean carefully = perBatch > 1; // one a batch goes to causes that hardly matter
                double log = drawer(c).draw(batch, draw, x, forecast, carefully);
                log -= lines.length > 1 ? LineDraw.logMixture(logEvidence[c] - logAll, defence) : 0;
                weighed.note(batch, draw, machines[c].severity(x), log, forecast, x);
            }
        }
        weighed.smooth();
        return weighed;
    }

    private LineDraw drawer(int stratum) {
        if (drawers[stratum] == null) {
            drawers[stratum] = new LineDraw(
                    machines[stratum], target, lines[stratum], options.looseness(), draws, options.defence());
        }
        return drawers[stratum];
    }

    private int byPrior(double share) {
        double left = share;
        int c = 0;
        while (c < lines.length - 1 && left >= levels.weight(c)) {
            left -= levels.weight(c++);
        }
        return c;
    }

    private int byEvidence(double share) {
        double left = share;
        int c = 0;
        while (c < lines.length - 1) {
            double own = levels.weight(c) * Math.exp(logEvidence[c] - logAll);
            if (left < own) {
                break;
            }
            left -= own;
            c++;
        }
        return c;
    }
}
