package swashlight.findings.evidence;

import java.util.Arrays;
import swashlight.findings.expect.Forecast;

/**
 * The machine made linear along the range of severities: solved at nodes, slopes at fewer, joined by straight lines, moved to where the
 * readings want it. Only proposes; the machine itself weighs. Numbers are straightened readings in their errors, 1.
 */
final class LinearTable {
    private static final double KEPT = 0.03; // smallest slope worth keeping, errors of a reading per standard deviation
    private static final double FURTHEST = 4; // standard deviations that a correction may go
    private static final double BEND = 0.35; // largest change of a slope by curvature, share of the slope
    private static final double SHORT = 0.5; // standard deviations: a shorter way tells no curvature

    private final Machine machine;
    private final Target target;
    private final SamplerOptions options;
    private final SeverityTable severities;
    private final int n;
    private final Forecast forecast;
    private final Straightening straight;
    private final double[] z;
    private int[] kept = new int[0];
    private double[][] offset = new double[0][]; // per node: number at z = 0 as the corrected line has it
    private boolean[][] solved = new boolean[0][];
    private double[][][] slopes = new double[0][][]; // per slope node: n × kept
    private double[] slopePlace = new double[0]; // position of the slope nodes among the nodes
    private int evaluations;

    LinearTable(Machine machine, Target target, SeverityTable severities, SamplerOptions options) {
        this.machine = machine;
        this.target = target;
        this.severities = severities;
        this.options = options;
        n = target.size();
        straight = new Straightening(target);
        forecast = new Forecast(n);
        z = new double[machine.nuisances()];
    }

    /** The unknowns that matter for these readings, by their place. */
    int[] kept() {
        return kept;
    }

    Straightening straight() {
        return straight;
    }

    int evaluations() {
        return evaluations;
    }

    /** Slopes of its own, taken about the usual severity (own unit) first. */
    void build(double usual) {
        screen(usual);
        solveNodes();
        slopeNodes();
        for (int step = 0; step < options.corrections(); step++) {
            correct();
        }
    }

    /** The middle slopes of another cause, for a first look. */
    void borrow(LinearTable other) {
        kept = other.kept;
        solveNodes();
        double[][] middle = other.slopes[other.slopes.length / 2];
        slopes = new double[1][n][];
        for (int i = 0; i < n; i++) {
            slopes[0][i] = middle[i].clone();
        }
        slopePlace = new double[1];
        correct();
    }

    private void solveNodes() {
        int nodes = severities.nodes.length;
        offset = new double[nodes][n];
        solved = new boolean[nodes][n];
        Arrays.fill(z, 0);
        for (int node = 0; node < nodes; node++) {
            predict(severities.nodes[node]);
            for (int i = 0; i < n; i++) {
                offset[node][i] = number(i);
                solved[node][i] = forecast.solved(i);
            }
        }
    }

    private void predict(double severity) {
        machine.predict(severity, z, forecast);
        evaluations++;
    }

    private double number(int reading) {
        return straight.of(reading, forecast.value(reading));
    }

    private void screen(double severity) {
        Arrays.fill(z, 0);
        predict(severity);
        double[] base = new double[n];
        for (int i = 0; i < n; i++) {
            base[i] = number(i);
        }
        int[] found = new int[z.length];
        int count = 0;
        for (int j = 0; j < z.length; j++) {
            z[j] = 1;
            predict(severity);
            z[j] = 0;
            double most = 0;
            for (int i = 0; i < n; i++) {
                most = Math.max(most, forecast.solved(i) ? Math.abs(number(i) - base[i]) : 0);
            }
            if (most > KEPT) {
                found[count++] = j;
            }
        }
        kept = Arrays.copyOf(found, count);
    }

    private void slopeNodes() {
        int nodes = severities.nodes.length;
        int count = severities.steps ? nodes : Math.min(nodes, options.jacobianNodes());
        slopes = new double[count][][];
        slopePlace = new double[count];
        for (int s = 0; s < count; s++) {
            int node = severities.steps ? s : (int) Math.floor((s + 0.5) / count * (nodes - 1) + 0.5);
            slopePlace[s] = node;
            slopes[s] = slopesAt(node);
        }
    }

    private double[][] slopesAt(int node) {
        double[][] slope = new double[n][kept.length];
        Arrays.fill(z, 0);
        for (int l = 0; l < kept.length; l++) {
            z[kept[l]] = 1;
            predict(severities.nodes[node]);
            z[kept[l]] = 0;
            for (int i = 0; i < n; i++) {
                slope[i][l] = forecast.solved(i) && solved[node][i] ? number(i) - offset[node][i] : 0;
            }
        }
        return slope;
    }

    /** Moves every node's line so that it meets the machine where the readings want it, slopes by their curvature on the way there. */
    private void correct() {
        int nodes = offset.length;
        LinearView view = new LinearView(n, kept.length);
        double[] noise = new double[n];
        double[][] wanted = new double[nodes][kept.length];
        double[][] met = new double[nodes][n];
        for (int node = 0; node < nodes; node++) {
            fill(view, node, 0);
            view.prepare();
            double[] small = wanted[node];
            view.condition(view.likeliest(), small, noise);
            Arrays.fill(z, 0);
            for (int l = 0; l < kept.length; l++) {
                small[l] = Math.max(-FURTHEST, Math.min(FURTHEST, small[l]));
                z[kept[l]] = small[l];
            }
            predict(severities.nodes[node]);
            for (int i = 0; i < n; i++) {
                solved[node][i] &= forecast.solved(i);
                met[node][i] = number(i);
            }
            bend(view, node, small, met[node]);
        }
        for (int node = 0; node < nodes; node++) {
            fill(view, node, 0);
            for (int i = 0; i < n; i++) {
                offset[node][i] = solved[node][i] ? met[node][i] - view.along(i, wanted[node]) : offset[node][i];
            }
        }
        Arrays.fill(z, 0);
    }

    private void bend(LinearView view, int node, double[] way, double[] met) {
        for (int s = 0; s < slopePlace.length; s++) {
            if (slopePlace[s] == node) {
                double square = 0;
                for (double step : way) {
                    square += step * step;
                }
                for (int i = 0; i < n; i++) {
                    double straightAway = view.along(i, way);
                    double most = BEND * Math.abs(straightAway);
                    double off = Math.max(-most, Math.min(most, met[i] - offset[node][i] - straightAway));
                    for (int l = 0; l < way.length && solved[node][i] && square > SHORT * SHORT; l++) {
                        slopes[s][i][l] += 2 * off * way[l] / square;
                    }
                }
            }
        }
    }

    /** Fills a view at a place among the nodes; spread is the half width of a cell, in nodes. */
    void fill(LinearView view, double place, double spread) {
        int low = Math.min(offset.length - 1, (int) Math.floor(place));
        int high = Math.min(offset.length - 1, low + 1);
        double share = place - low;
        int slopeLow = 0;
        while (slopeLow < slopePlace.length - 1 && slopePlace[slopeLow + 1] <= place) {
            slopeLow++;
        }
        int slopeHigh = Math.min(slopePlace.length - 1, slopeLow + 1);
        double span = slopePlace[slopeHigh] - slopePlace[slopeLow];
        double slopeShare = span > 0 ? Math.max(0, Math.min(1, (place - slopePlace[slopeLow]) / span)) : 0;
        for (int i = 0; i < n; i++) {
            view.used[i] = solved[low][i] && solved[high][i];
            double across = offset[high][i] - offset[low][i];
            view.residual[i] = straight.of(i, target.value(i)) - offset[low][i] - share * across;
            double within = across * spread;
            view.variance[i] = options.looseness() * (1 + within * within / 3);
            for (int l = 0; l < view.k; l++) {
                view.jacobian[i][l] = (1 - slopeShare) * slopes[slopeLow][i][l] + slopeShare * slopes[slopeHigh][i][l];
            }
        }
    }
}
