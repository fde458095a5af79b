package swashlight.findings.evidence;

import java.util.Arrays;
import swashlight.findings.expect.Forecast;

/**
 * A first look at a cause: the machine solved on a grid of severities, everything else usual, with borrowed slopes by the unknowns. Tells
 * about how likely the cause is, and where to look closer.
 */
final class Glance {
    private static final double FAR = 2.6; // outermost severity looked at, standard deviations
    private static final double LOG_ROOT_TWO_PI = 0.9189385332046727;

    private final int perFault;
    private final int faults;
    private final double half; // half a step of the grid, standard deviations
    private final Line[] lines;
    private final Line best;
    private final double logEvidence;

    /** Looks with the slopes of another line, of a sound machine, at so many severities of a single fault. */
    Glance(Target target, LevelledMachine machine, Line borrowed, int looks, double looseness) {
        faults = machine.graded();
        perFault = faults == 0 ? 1 : faults == 1 ? looks : (looks + 1) / 3;
        half = perFault > 1 ? FAR / (perFault - 1) : 0;
        int count = 1;
        for (int f = 0; f < faults; f++) {
            count *= perFault;
        }
        Forecast forecast = new Forecast(target.size());
        lines = new Line[count];
        for (int c = 0; c < count; c++) {
            double[] x = new double[machine.unknowns()];
            for (int f = 0; f < faults; f++) {
                x[f] = FAR * (2.0 * (c / stride(f) % perFault) / (perFault - 1) - 1);
            }
            machine.predict(x, forecast);
            lines[c] = new Line(target, borrowed.straight(), x.length);
            lines[c].borrow(borrowed, faults);
            lines[c].standAt(x, forecast);
            lines[c].keep();
        }
        double[] log = new double[count];
        int top = 0;
        for (int c = 0; c < count; c++) {
            log[c] = logShare(c, looseness);
            top = log[c] > log[top] ? c : top;
        }
        best = lines[top];
        for (int f = 0; f < faults; f++) {
            for (int i = 0; i < best.slope.length; i++) {
                best.slope[i][f] = across(top, f, i);
            }
        }
        best.keep();
        double highest = log[top];
        logEvidence = highest
                + Math.log(
                        Arrays.stream(log).map(each -> Math.exp(each - highest)).sum());
    }

    private int stride(int fault) {
        return fault == 0 ? 1 : perFault;
    }

    /** ln of a look's part of the evidence. */
    private double logShare(int look, double looseness) {
        LinearView view = lines[look].view(looseness);
        double log = 0;
        for (int f = 0; f < faults; f++) {
            for (int i = 0; i < view.n; i++) {
                double within = across(look, f, i) * half;
                view.variance[i] += within * within / 3;
            }
            double u = lines[look].place[f];
            log += Math.log(2 * half) - LOG_ROOT_TWO_PI - 0.5 * u * u;
        }
        view.prepare();
        return log + view.logEvidence();
    }

    /** Slope by a severity about a look, from its neighbours. */
    private double across(int look, int fault, int reading) {
        int at = look / stride(fault) % perFault;
        Line low = lines[at > 0 ? look - stride(fault) : look];
        Line high = lines[at < perFault - 1 ? look + stride(fault) : look];
        double way = high.place[fault] - low.place[fault];
        boolean known = low.solved[reading] && high.solved[reading];
        return way > 0 && known ? (high.number[reading] - low.number[reading]) / way : 0;
    }

    /** The line about the likeliest severities looked at. */
    Line best() {
        return best;
    }

    /** ln of the evidence, about; readings times their errors, 1. */
    double logEvidence() {
        return logEvidence;
    }
}
