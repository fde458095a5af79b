package swashlight.findings.evidence;

import java.util.Arrays;
import swashlight.findings.cause.SeverityPrior;
import swashlight.findings.expect.Forecast;

/**
 * Evidence of one cause:
 *
 * <pre>
 *   Z = ∫∫ p(r | s, z) p(s) p(z) ds dz ≈ mean of w
 *   w = 1/((1 − β) E(s)/Ē + β) · 1/((1 − β) E_x/E(s) + β) · L(s, x, y)/((1 − β) L_y/E_y + β)
 *
 *   L       likelihood by the true machine                          readings times their errors, 1
 *   E, Ē    linear evidence at a severity, and over all             1
 *   x, y    unknowns but for those pinned down; those pinned down   1
 *   E_x     linear evidence given x, y integrated out               1
 *   L_y     linear likelihood by the line moved at x                1
 *   E_y     its evidence, y integrated out                          1
 *   β       share of draws from the prior                           1
 * </pre>
 *
 * A draw goes so: a severity by linear evidence; x from the linear answer; the true machine solved at x, with y where the readings want it,
 * moves the line; y from the moved line. Where the machine is linear all weights are alike. No weight exceeds L/β³. Source: importance
 * sampling with a defensive mixture (Hesterberg 1995, from memory).
 */
public final class CauseSampler {
    private final Machine machine;
    private final Target target;
    private final SeverityTable severities;
    private final LinearTable table;
    private final SamplerOptions options;
    private final CommonDraws draws;
    private final LineDraw[] lines;
    private final double[] cellEvidence; // ln
    private final double[] cumulative;
    private double logLinear;

    /** A cause to be weighed. */
    public CauseSampler(
            Machine machine, Target target, SeverityPrior prior, CommonDraws draws, SamplerOptions options) {
        this.machine = machine;
        this.target = target;
        this.draws = draws;
        this.options = options;
        severities = new SeverityTable(prior, options.severityNodes(), options.cells());
        table = new LinearTable(machine, target, severities, options);
        lines = new LineDraw[severities.cells()];
        cellEvidence = new double[lines.length];
        cumulative = new double[lines.length];
    }

    /** Takes slopes of its own about the usual severity. */
    public void prepare() {
        table.build(severities.middle());
        tabulate();
    }

    /** Takes the slopes of another cause for a first look. */
    public void glance(CauseSampler other) {
        table.borrow(other.table);
        tabulate();
    }

    private void tabulate() {
        double highest = Double.NEGATIVE_INFINITY;
        LinearView view = new LinearView(target.size(), table.kept().length);
        for (int c = 0; c < lines.length; c++) {
            fill(view, c);
            cellEvidence[c] = view.logEvidence();
            highest = Math.max(highest, cellEvidence[c]);
        }
        double sum = 0;
        for (int c = 0; c < lines.length; c++) {
            sum += severities.weight(c) * Math.exp(cellEvidence[c] - highest);
            cumulative[c] = sum;
        }
        logLinear = highest + Math.log(sum);
        Arrays.fill(lines, null);
    }

    private void fill(LinearView view, int cell) {
        double spread = severities.steps ? 0 : 0.5 * (severities.nodes.length - 1) / lines.length;
        table.fill(view, severities.place[cell], spread);
        view.prepare();
    }

    /** ln Z by the linear machine alone, readings times their errors; unit 1. */
    public double logLinearEvidence() {
        return logLinear;
    }

    /** Machines solved while preparing. */
    public int evaluations() {
        return table.evaluations();
    }

    /** Draws so many machines in every batch and weighs them. */
    public Weighed weigh(int perBatch) {
        draws.reach(perBatch);
        Weighed weighed = new Weighed(draws.batches(), perBatch, target.size());
        Forecast forecast = new Forecast(target.size());
        double[] z = new double[machine.nuisances()];
        double defence = options.defence();
        for (int batch = 0; batch < draws.batches(); batch++) {
            double start = draws.uniform(batch, 0, CommonDraws.SEVERITY);
            for (int draw = 0; draw < perBatch; draw++) {
                double share = (start + draw) / perBatch;
                int cell = share < defence
                        ? cellByPrior(share / defence)
                        : cellByEvidence((share - defence) / (1 - defence));
                double severity = severities.severity(cell, draws.uniform(batch, draw, CommonDraws.WITHIN));
                LineDraw line = line(cell);
                double log = line.draw(severity, batch, draw, z, forecast);
                log -= LineDraw.logMixture(cellEvidence[cell] - logLinear, defence);
                weighed.note(batch, draw, severity, log, forecast, z);
            }
        }
        return weighed;
    }

    private LineDraw line(int cell) {
        if (lines[cell] == null) {
            LinearView view = new LinearView(target.size(), table.kept().length);
            fill(view, cell);
            lines[cell] = new LineDraw(machine, target, view, table, draws, options.defence());
        }
        return lines[cell];
    }

    private int cellByPrior(double share) {
        int cell = 0;
        while (cell < lines.length - 1 && severities.shareTo[cell] <= share) {
            cell++;
        }
        return cell;
    }

    private int cellByEvidence(double share) {
        double wanted = share * cumulative[lines.length - 1];
        int low = 0;
        int high = lines.length - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (cumulative[middle] <= wanted) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
