package swashlight.findings.drain;

import java.util.ArrayList;
import java.util.List;
import swashlight.drive.oil.Oil;
import swashlight.findings.fit.FitOutcome;
import swashlight.findings.fit.MaximumLikelihood;
import swashlight.findings.fit.StudentLaw;

/**
 * Fits the leak law q = C (Δp/p_r)^m (µ_r/µ)^n to drain readings of one or more states of a pump.
 *
 * <p>Intervals have two parts. From the rows: the inverse information, widened for
 * errors that repeat from row to row ({@link SerialErrors}), with Student's factor for what is left of the rows. From
 * outside: the fit is done again with each assumption moved by its spread (gap temperature, oil grade, meter start, each
 * run's level), and the changes are added in squares.
 */
public final class DrainFit {
    /** Two-sided 95 % factor of the normal law, 1. */
    private static final double NORMAL_FACTOR = 1.959964;

    private final List<DrainPoint> points;
    private final DrainAssumptions assumed;

    private DrainFit(List<DrainPoint> points, DrainAssumptions assumed) {
        this.points = List.copyOf(points);
        this.assumed = assumed;
    }

    /**
     * The fit of a set of rows.
     *
     * @param points rows with the pump turning, the first state being the one others are compared with
     * @param assumed what is taken from outside
     * @throws IllegalArgumentException if there are too few rows above the meter's start
     */
    public static DrainFinding of(List<DrainPoint> points, DrainAssumptions assumed) {
        return new DrainFit(points, assumed).finding();
    }

    private DrainFinding finding() {
        LeakRows rows = new LeakRows(points, assumed);
        int metered = rows.rows() - rows.censoredCount();
        if (metered < rows.parameters() + 2) {
            throw new IllegalArgumentException(
                    "drain test: " + metered + " rows lie above the meter's start; " + (rows.parameters() + 2)
                            + " or more are needed for " + rows.states().size() + " states");
        }
        MaximumLikelihood.Summit summit = MaximumLikelihood.climb(rows, rows.start());
        FitOutcome outcome = summit.outcome();
        if (!outcome.converged() || summit.covariance().isEmpty()) {
            return DrainFinding.withoutLaw(outcome, rows, assumed);
        }
        double[] point = outcome.point();
        SerialErrors errors = rows.errors(point);
        double freedom = Math.max(4, errors.effective(metered) - (rows.parameters() - 1));
        LawSpread spread = new LawSpread(
                rows.covariance(summit.covariance().get(), point, errors),
                StudentLaw.factor(0.95, freedom),
                NORMAL_FACTOR,
                outside(rows, point));
        return DrainFinding.of(outcome, rows, assumed, spread, errors);
    }

    /** How the law moves when each thing taken from outside moves by its spread. */
    private List<double[]> outside(LeakRows rows, double[] point) {
        List<double[]> moves = new ArrayList<>();
        if (assumed.gapShareSpread() > 0) {
            DrainAssumptions moved = assumed.gapAt(assumed.gapShare() - assumed.gapShareSpread());
            moves.add(move(new LeakRows(points, moved), point));
        }
        if (assumed.meterStartSpread() > 0) {
            DrainAssumptions moved = assumed.startingAt(assumed.meterStart() + assumed.meterStartSpread());
            moves.add(move(new LeakRows(points, moved), point));
        }
        if (!assumed.otherOils().isEmpty()) {
            moves.add(largestOilMove(point));
        }
        if (assumed.repeatability() > 0) {
            for (int run : rows.runs()) {
                moves.add(move(rows.shifted(run, assumed.repeatability()), point));
            }
        }
        return moves;
    }

    private double[] largestOilMove(double[] point) {
        double[] largest = new double[point.length];
        for (Oil oil : assumed.otherOils()) {
            double[] move = move(new LeakRows(points, assumed.with(oil)), point);
            for (int j = 0; j < move.length; j++) {
                largest[j] = Math.abs(move[j]) > Math.abs(largest[j]) ? move[j] : largest[j];
            }
        }
        return largest;
    }

    private static double[] move(LeakRows rows, double[] point) {
        double[] moved = MaximumLikelihood.climb(rows, point).outcome().point();
        for (int j = 0; j < moved.length; j++) {
            moved[j] -= point[j];
        }
        return moved;
    }
}
