package swashlight.findings.evidence;

import java.util.Arrays;
import swashlight.findings.expect.Forecast;

/**
 * A first look at a cause: the machine solved at some severities, everything else usual, with borrowed slopes by the unknowns. Tells
 * about how likely the cause is, and where to look closer.
 */
final class Glance {
    private static final double FAR = 2.6; // outermost severity looked at, standard deviations
    private static final double LOG_ROOT_TWO_PI = 0.9189385332046727;

    private final Line best;
    private final double logEvidence;

    /** Looks at so many severities with the slopes of another line. */
    Glance(Target target, LevelledMachine machine, Line borrowed, int looks, double looseness) {
        int count = machine.graded() ? looks : 1;
        Forecast forecast = new Forecast(target.size());
        Line[] lines = new Line[count];
        for (int c = 0; c < count; c++) {
            double[] x = new double[machine.unknowns()];
            x[0] = count > 1 ? FAR * (2.0 * c / (count - 1) - 1) : 0;
            machine.predict(x, forecast);
            lines[c] = new Line(target, borrowed.straight(), x.length);
            lines[c].copy(borrowed);
            for (double[] row : lines[c].slope) {
                row[0] = 0;
            }
            lines[c].standAt(x, forecast);
            lines[c].keep();
        }
        double[] log = new double[count];
        int top = 0;
        for (int c = 0; c < count; c++) {
            double half = count > 1 ? FAR / (count - 1) : 0;
            LinearView view = lines[c].view(looseness);
            for (int i = 0; i < view.n; i++) {
                double across = across(lines, c, i) * half;
                view.variance[i] += across * across / 3;
            }
            view.prepare();
            double u = lines[c].place[0];
            log[c] = view.logEvidence() + (count > 1 ? Math.log(2 * half) - LOG_ROOT_TWO_PI - 0.5 * u * u : 0);
            top = log[c] > log[top] ? c : top;
        }
        best = lines[top];
        for (int i = 0; i < best.slope.length; i++) {
            best.slope[i][0] = across(lines, top, i);
        }
        best.keep();
        logEvidence = highest(log)
                + Math.log(Arrays.stream(log)
                        .map(each -> Math.exp(each - highest(log)))
                        .sum());
    }

    private static double highest(double[] log) {
        return Arrays.stream(log).max().orElse(0);
    }

    /** Slope by severity about a look, from its neighbours. */
    private static double across(Line[] lines, int look, int reading) {
        int low = Math.max(0, look - 1);
        int high = Math.min(lines.length - 1, look + 1);
        double way = lines[high].place[0] - lines[low].place[0];
        boolean known = lines[low].solved[reading] && lines[high].solved[reading];
        return way > 0 && known ? (lines[high].number[reading] - lines[low].number[reading]) / way : 0;
    }

    /** The line about the likeliest severity looked at. */
    Line best() {
        return best;
    }

    /** ln of the evidence, about; readings times their errors, 1. */
    double logEvidence() {
        return logEvidence;
    }
}
