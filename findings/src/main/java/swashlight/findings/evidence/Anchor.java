package swashlight.findings.evidence;

import swashlight.findings.expect.Forecast;

/**
 * Finds the likeliest machine of a cause, severity and unknowns together, and the straight line there: steps of Gauss and Newton with slopes
 * turned as they go, then slopes of its own, then some more steps. Where it ends only decides how well the machines drawn are aimed.
 */
final class Anchor {
    private static final double FURTHEST = 4; // standard deviations from the usual
    private static final double THERE = 0.1; // largest step left, standard deviations
    private static final int SHORTENINGS = 4;
    private static final int GROUP = 8; // unknowns tried together
    private static final double SHOWS = 0.02; // errors of a reading that a group must move it by to be looked into

    private final Target target;
    private final LevelledMachine machine;
    private final Forecast forecast;
    private final double looseness;
    private final double[] noise;
    private final double[] next;
    private double height; // ln of likelihood times prior where the line stands

    Anchor(Target target, LevelledMachine machine, double looseness) {
        this.target = target;
        this.machine = machine;
        this.looseness = looseness;
        forecast = new Forecast(target.size());
        noise = new double[target.size()];
        next = new double[machine.unknowns()];
    }

    /** Moves a line from where it stands, with the slopes it has, in so many steps; own slopes in between. */
    void settle(Line line, int steps) {
        stand(line, line.place.clone());
        climb(line, steps);
        slopes(line);
        climb(line, steps);
        line.keep();
    }

    /**
     * Own slopes where a line stands: by every unknown that mattered so far one at a time, by the others in groups, singly only where a group
     * shows something.
     */
    void slopes(Line line) {
        System.arraycopy(line.place, 0, next, 0, next.length);
        line.keep();
        boolean[] matters = new boolean[next.length];
        for (int j : line.kept()) {
            matters[j] = true;
        }
        int[] group = new int[GROUP];
        int size = 0;
        for (int j = 0; j < next.length; j++) {
            if (matters[j] || j < machine.graded()) {
                slope(line, j);
            } else {
                group[size++] = j;
            }
            if (size == GROUP || (j == next.length - 1 && size > 0)) {
                slopes(line, group, size);
                size = 0;
            }
        }
    }

    private void slope(Line line, int unknown) {
        double step = line.step(unknown);
        next[unknown] += step;
        machine.predict(next, forecast);
        next[unknown] = line.place[unknown];
        line.slopeBy(unknown, step, forecast);
    }

    private void slopes(Line line, int[] group, int size) {
        for (int g = 0; g < size; g++) {
            next[group[g]] += (g % 3 == 0 ? -1 : 1) * line.step(group[g]); // signs mixed, so that effects hardly cancel
        }
        machine.predict(next, forecast);
        for (int g = 0; g < size; g++) {
            next[group[g]] = line.place[group[g]];
        }
        boolean shows = line.moved(forecast) > SHOWS;
        for (int g = 0; g < size; g++) {
            if (shows) {
                slope(line, group[g]);
            } else {
                line.flat(group[g]);
            }
        }
    }

    private void stand(Line line, double[] x) {
        machine.predict(x, forecast);
        line.standAt(x, forecast);
        height = LevelledMachine.logPosterior(target, x, forecast);
    }

    private void climb(Line line, int steps) {
        for (int step = 0; step < steps; step++) {
            if (!climbed(line)) {
                return;
            }
        }
    }

    /** One step uphill, shortened as needed; false when it is there or no step leads up. */
    private boolean climbed(Line line) {
        for (int cut = 0; cut < SHORTENINGS; cut++) {
            double longest = aim(line, 1.0 / (1 << cut));
            if (longest < THERE) {
                return false;
            }
            machine.predict(next, forecast);
            double reached = LevelledMachine.logPosterior(target, next, forecast);
            line.turnTowards(next, forecast);
            if (reached > height) {
                line.standAt(next, forecast);
                height = reached;
                return true;
            }
        }
        return false;
    }

    /** Sets the next place, a share of the way to where the line wants it; returns its furthest coordinate's move. */
    private double aim(Line line, double share) {
        line.keep();
        int[] kept = line.kept();
        LinearView view = line.view(looseness);
        double[] wanted = new double[kept.length];
        view.condition(view.likeliest(), wanted, noise);
        double longest = 0;
        for (int j = 0; j < next.length; j++) {
            next[j] = (1 - share) * line.place[j];
        }
        for (int l = 0; l < kept.length; l++) {
            double to = Math.max(-FURTHEST, Math.min(FURTHEST, wanted[l]));
            next[kept[l]] += share * to;
        }
        for (int j = 0; j < next.length; j++) {
            longest = Math.max(longest, Math.abs(next[j] - line.place[j]));
        }
        return longest;
    }
}
