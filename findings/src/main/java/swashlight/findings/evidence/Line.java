package swashlight.findings.evidence;

import java.util.Arrays;
import swashlight.findings.expect.Forecast;

/**
 * The machine as a straight line about a place: numbers there, and slopes by every unknown, severities (as standard normal numbers) first. Only
 * proposes; the machine itself weighs. Numbers are straightened readings in their errors, 1.
 */
final class Line {
    private static final double KEPT = 0.03; // smallest slope worth keeping, errors of a reading per standard deviation
    private static final double STEP = 0.5; // for slopes, standard deviations
    private static final double SHORTEST = 0.01; // the same
    private static final double NOTABLE = 2; // errors of a reading that a step should change it by, at most

    final double[] place;
    final double[] number;
    final boolean[] solved;
    final double[][] slope; // readings × unknowns
    private final Target target;
    private final Straightening straight;
    private int[] kept;

    Line(Target target, Straightening straight, int unknowns) {
        this.target = target;
        this.straight = straight;
        place = new double[unknowns];
        number = new double[target.size()];
        solved = new boolean[target.size()];
        slope = new double[target.size()][unknowns];
        kept = new int[0];
    }

    /** Stands where a forecast was made, with the slopes as they are. */
    void standAt(double[] x, Forecast forecast) {
        System.arraycopy(x, 0, place, 0, place.length);
        for (int i = 0; i < number.length; i++) {
            number[i] = straight.of(i, forecast.value(i));
            solved[i] = forecast.solved(i);
        }
    }

    /** Slopes of a line that has so many unknowns fewer in front; by those there are none yet. */
    void borrow(Line other, int more) {
        for (int i = 0; i < slope.length; i++) {
            Arrays.fill(slope[i], 0, more, 0);
            System.arraycopy(other.slope[i], 0, slope[i], more, other.slope[i].length);
        }
    }

    /** Turns the slopes so that the line also meets a forecast made at x (rank-one change of Broyden 1965, from memory). */
    void turnTowards(double[] x, Forecast forecast) {
        double square = 0;
        for (int j = 0; j < x.length; j++) {
            square += (x[j] - place[j]) * (x[j] - place[j]);
        }
        if (square < SHORTEST * SHORTEST) {
            return;
        }
        for (int i = 0; i < number.length; i++) {
            if (solved[i] && forecast.solved(i)) {
                double off = straight.of(i, forecast.value(i)) - number[i];
                for (int j = 0; j < x.length; j++) {
                    off -= slope[i][j] * (x[j] - place[j]);
                }
                for (int j = 0; j < x.length; j++) {
                    slope[i][j] += off * (x[j] - place[j]) / square;
                }
            }
        }
    }

    /** Takes the slope by one unknown anew: a forecast was made a step away along it. */
    void slopeBy(int unknown, double step, Forecast forecast) {
        for (int i = 0; i < number.length; i++) {
            slope[i][unknown] =
                    solved[i] && forecast.solved(i) ? (straight.of(i, forecast.value(i)) - number[i]) / step : 0;
        }
    }

    /** No slope by an unknown. */
    void flat(int unknown) {
        for (double[] row : slope) {
            row[unknown] = 0;
        }
    }

    /** How far a forecast lies from where the line stands, at most, in errors of a reading. */
    double moved(Forecast forecast) {
        double most = 0;
        for (int i = 0; i < number.length; i++) {
            if (solved[i] && forecast.solved(i)) {
                most = Math.max(most, Math.abs(straight.of(i, forecast.value(i)) - number[i]));
            }
        }
        return most;
    }

    /** A step by which the readings change notably but not wildly, towards the usual; standard deviations. */
    double step(int unknown) {
        double most = 0;
        for (double[] row : slope) {
            most = Math.max(most, Math.abs(row[unknown]));
        }
        double size = Math.max(SHORTEST, Math.min(STEP, NOTABLE / Math.max(most, NOTABLE)));
        return place[unknown] > 0 ? -size : size;
    }

    /** Decides which unknowns matter here. */
    void keep() {
        int[] found = new int[place.length];
        int count = 0;
        for (int j = 0; j < place.length; j++) {
            double most = 0;
            for (double[] row : slope) {
                most = Math.max(most, Math.abs(row[j]));
            }
            if (most > KEPT) {
                found[count++] = j;
            }
        }
        kept = Arrays.copyOf(found, count);
    }

    /** The unknowns that matter, by their place. */
    int[] kept() {
        return kept;
    }

    Straightening straight() {
        return straight;
    }

    /** The line as the readings see it; variance of a reading is so many times its own. */
    LinearView view(double looseness) {
        LinearView view = new LinearView(number.length, kept.length);
        for (int i = 0; i < number.length; i++) {
            view.used[i] = solved[i];
            view.variance[i] = looseness;
            double at = straight.of(i, target.value(i)) - number[i];
            for (int l = 0; l < kept.length; l++) {
                view.jacobian[i][l] = slope[i][kept[l]];
                at += slope[i][kept[l]] * place[kept[l]];
            }
            view.residual[i] = at;
        }
        view.prepare();
        return view;
    }
}
