package swashlight.findings.evidence;

import java.util.Arrays;
import swashlight.findings.expect.Forecast;

/**
 * Draws unknowns, severity among them. First all of them from the line given the readings; of these the few directions that the readings pin
 * down are thrown away, the line is moved to meet the true machine along them, and they are drawn anew.
 */
final class LineDraw {
    private static final double FAR = 1.5; // errors of a reading: a line that missed by more is moved once more
    private static final int MOVES = 3; // at most, where a cause may matter
    private static final double WIDE = 25; // variance of a reading over its own in the wide view, 1
    private static final double WIDE_SHARE = 0.2; // of the draws that follow the line, 1

    private final LevelledMachine machine;
    private final Target target;
    private final LinearView view;
    private final LinearView
            wide; // the same with readings that bind less: covers where the machine bends away from the line
    private final LinearView tight;
    private final LinearView tightWide;
    private final TightSpace space;
    private final int[] kept;
    private final Straightening straight;
    private final CommonDraws draws;
    private final double defence;
    private final double[] small;
    private final double[] part;
    private final double[] along;
    private final double[] noise;
    private final double[] still;

    LineDraw(LevelledMachine machine, Target target, Line line, double looseness, CommonDraws draws, double defence) {
        this.machine = machine;
        this.target = target;
        this.view = line.view(looseness);
        this.wide = line.view(WIDE);
        this.kept = line.kept();
        this.straight = line.straight();
        this.draws = draws;
        this.defence = defence;
        space = new TightSpace(view.jacobian, view.variance, view.k);
        tight = along(view);
        tightWide = along(wide);
        small = new double[view.k];
        part = new double[view.k];
        along = new double[tight.k];
        noise = new double[view.n];
        still = new double[view.n];
    }

    /** A view of the tight directions alone. */
    private LinearView along(LinearView of) {
        LinearView only = new LinearView(of.n, space.size());
        double[][] slopes = space.slopes(of.jacobian);
        for (int i = 0; i < of.n; i++) {
            only.used[i] = of.used[i];
            only.variance[i] = of.variance[i];
            System.arraycopy(slopes[i], 0, only.jacobian[i], 0, only.k);
        }
        only.prepare();
        return only;
    }

    /** ln of the line's own evidence, readings times their errors, 1. */
    double logEvidence() {
        return view.logEvidence();
    }

    /** How many normal numbers a draw takes, for so many readings and unknowns, 1. */
    static int width(int readings, int unknowns) {
        return 3 * readings + unknowns;
    }

    /** Fills x and the forecast there, after one move or several towards the machine; returns ln of likelihood over density against the prior, 1. */
    double draw(int batch, int draw, double[] x, Forecast forecast, boolean carefully) {
        int n = view.n;
        for (int j = 0; j < x.length; j++) {
            x[j] = draws.normal(batch, draw, 3 * n + j);
        }
        for (int l = 0; l < view.k; l++) {
            small[l] = x[kept[l]];
        }
        double which = draws.uniform(batch, draw, CommonDraws.FIRST);
        if (which >= defence) {
            LinearView by = which < defence + (1 - defence) * WIDE_SHARE ? wide : view;
            int set = by.picked(draws.uniform(batch, draw, CommonDraws.WILD));
            noise(by, set, batch, draw, 0);
            by.condition(set, small, noise);
        }
        space.outside(small);
        for (int i = 0; i < n; i++) {
            tight.residual[i] = view.used[i] ? view.residual[i] - view.along(i, small) : 0;
            tightWide.residual[i] = tight.residual[i];
        }
        tight.offsetMoved();
        tightWide.offsetMoved();
        double mixture = logMixture(
                logSum(
                        Math.log(1 - WIDE_SHARE) + tight.logEvidence() - view.logEvidence(),
                        Math.log(WIDE_SHARE) + tightWide.logEvidence() - wide.logEvidence()),
                defence);
        meet(x, forecast, carefully ? MOVES : 1);
        for (int b = 0; b < along.length; b++) {
            along[b] = draws.normal(batch, draw, 2 * n + b);
        }
        if (draws.uniform(batch, draw, CommonDraws.SECOND) >= defence) {
            int set = tight.picked(draws.uniform(batch, draw, CommonDraws.WILD));
            noise(tight, set, batch, draw, n);
            tight.condition(set, along, noise);
        }
        place(x);
        machine.predict(x, forecast);
        mixture += logMixture(tight.logLikelihood(along) - tight.logEvidence(), defence);
        return WildLaw.logLikelihood(target, forecast) - mixture;
    }

    private void noise(LinearView of, int set, int batch, int draw, int from) {
        int first = of.first(set);
        int second = of.second(set);
        for (int i = 0; i < noise.length; i++) {
            double size = Math.sqrt(of.variance[i]) * (i == first || i == second ? WildLaw.WIDTH : 1);
            noise[i] = size * draws.normal(batch, draw, from + i);
        }
    }

    /** Moves the tight line to the machine, where the rest is as drawn and the tight directions are as the readings want them. */
    private void meet(double[] x, Forecast forecast, int moves) {
        boolean far = tight.k > 0;
        for (int move = 0; move < moves && far; move++) {
            Arrays.fill(along, 0);
            tight.condition(tight.likeliest(), along, still);
            place(x);
            machine.predict(x, forecast);
            far = false;
            for (int i = 0; i < view.n; i++) {
                if (view.used[i] && forecast.solved(i)) {
                    double off = straight.of(i, target.value(i)) - straight.of(i, forecast.value(i));
                    double moved = off + tight.along(i, along);
                    far |= Math.abs(moved - tight.residual[i]) > FAR;
                    tight.residual[i] = moved;
                }
            }
            tight.offsetMoved();
        }
    }

    private void place(double[] x) {
        System.arraycopy(small, 0, part, 0, part.length);
        space.add(along, part);
        for (int l = 0; l < kept.length; l++) {
            x[kept[l]] = part[l];
        }
    }

    /** ln((1 − β) e^ratio + β). */
    static double logMixture(double ratio, double defence) {
        return logSum(Math.log(1 - defence) + ratio, Math.log(defence));
    }

    /** ln(e^a + e^b), of which one may be −infinity. */
    private static double logSum(double a, double b) {
        double higher = Math.max(a, b);
        return higher + Math.log(Math.exp(a - higher) + Math.exp(b - higher));
    }
}
