package swashlight.findings.losses;

import java.util.ArrayList;
import java.util.List;
import swashlight.findings.fit.FitOutcome;
import swashlight.findings.fit.NonNegative;
import swashlight.findings.fit.StudentLaw;

/**
 * A table explained by free columns and by losses that may not be negative; every set of losses is tried.
 * <pre>
 *   AICc = n ln(RSS/n) + 2 k + 2 k (k + 1)/(n − k − 1)      k coefficients and the scatter
 *   interval of a coefficient: where RSS(c) ≤ RSS_min (1 + t²/(n − k))      profile, never below 0
 * </pre>
 * Source: Hurvich and Tsai 1989 (AICc); Bates and Watts 1988 (profiles); Lawson and Hanson (non-negative least squares).
 */
final class TermFit {
    private final double[][] free;
    private final double[][] losses;
    private final double[] target;
    private final int[] group;
    private final List<? extends LossTerm> terms;

    /**
     * @param free columns of any sign, one row a reading
     * @param losses columns of the losses, one row a reading
     * @param target readings
     * @param group which rows are left out together
     * @param terms the losses, in the order of their columns
     */
    TermFit(double[][] free, double[][] losses, double[] target, int[] group, List<? extends LossTerm> terms) {
        this.free = free;
        this.losses = losses;
        this.target = target;
        this.group = group;
        this.terms = terms;
    }

    /** One set's coefficients: free ones first, then one for every loss, 0 where it is not in the set. */
    record Solved(boolean[] in, double[] coefficients, double squares, FitOutcome outcome) {}

    /** The interval of one coefficient. */
    record Interval(double low, double high) {}

    int rows() {
        return target.length;
    }

    private int freeCount() {
        return free.length == 0 ? 0 : free[0].length;
    }

    Solved solve(boolean[] in) {
        return solve(in, -1);
    }

    private Solved solve(boolean[] in, int groupLeftOut) {
        int chosen = 0;
        for (boolean one : in) {
            chosen += one ? 1 : 0;
        }
        List<double[]> rows = new ArrayList<>();
        List<Double> right = new ArrayList<>();
        for (int i = 0; i < target.length; i++) {
            if (group[i] != groupLeftOut) {
                double[] row = new double[freeCount() + chosen];
                System.arraycopy(free[i], 0, row, 0, freeCount());
                for (int j = 0, k = freeCount(); j < in.length; j++) {
                    if (in[j]) {
                        row[k++] = losses[i][j];
                    }
                }
                rows.add(row);
                right.add(target[i]);
            }
        }
        if (freeCount() + chosen == 0) {
            double squares = 0;
            for (double value : right) {
                squares += value * value;
            }
            return new Solved(in, new double[in.length], squares, new FitOutcome.Converged(new double[0], squares, 0));
        }
        double[] b = new double[right.size()];
        for (int i = 0; i < b.length; i++) {
            b[i] = right.get(i);
        }
        FitOutcome outcome = NonNegative.solve(rows.toArray(new double[0][]), b, freeCount());
        double[] coefficients = new double[freeCount() + in.length];
        double[] point = outcome.point();
        System.arraycopy(point, 0, coefficients, 0, freeCount());
        for (int j = 0, k = freeCount(); j < in.length; j++) {
            coefficients[freeCount() + j] = in[j] ? point[k++] : 0;
        }
        return new Solved(in, coefficients, outcome.objective(), outcome);
    }

    /** All sets of losses, best criterion first; a set in which a loss comes out at nothing is left out. */
    List<TermSet> compare() {
        List<TermSet> sets = new ArrayList<>();
        List<Double> criteria = new ArrayList<>();
        double best = Double.POSITIVE_INFINITY;
        for (int mask = 0; mask < 1 << terms.size(); mask++) {
            boolean[] in = in(mask);
            Solved solved = solve(in);
            double criterion = criterion(solved);
            if (usesAll(solved) && criterion < Double.POSITIVE_INFINITY) {
                sets.add(new TermSet(names(in), Math.sqrt(solved.squares() / freedom(in)), criterion, 0, unseen(in)));
                criteria.add(criterion);
                best = Math.min(best, criterion);
            }
        }
        double sum = 0;
        for (double criterion : criteria) {
            sum += Math.exp(-0.5 * (criterion - best));
        }
        List<TermSet> weighted = new ArrayList<>();
        for (TermSet set : sets) {
            double weight = Math.exp(-0.5 * (set.criterion() - best)) / sum;
            weighted.add(new TermSet(set.terms(), set.deviation(), set.criterion(), weight, set.unseen()));
        }
        weighted.sort((a, b) -> Double.compare(a.criterion(), b.criterion()));
        return weighted;
    }

    boolean[] in(List<String> names) {
        boolean[] in = new boolean[terms.size()];
        for (int j = 0; j < in.length; j++) {
            in[j] = names.contains(terms.get(j).key());
        }
        return in;
    }

    private boolean[] in(int mask) {
        boolean[] in = new boolean[terms.size()];
        for (int j = 0; j < in.length; j++) {
            in[j] = (mask >> j & 1) == 1;
        }
        return in;
    }

    private List<String> names(boolean[] in) {
        List<String> names = new ArrayList<>();
        for (int j = 0; j < in.length; j++) {
            if (in[j]) {
                names.add(terms.get(j).key());
            }
        }
        return names;
    }

    private boolean usesAll(Solved solved) {
        for (int j = 0; j < solved.in().length; j++) {
            if (solved.in()[j] && !(solved.coefficients()[freeCount() + j] > 0)) {
                return false;
            }
        }
        return solved.outcome().converged();
    }

    private int parameters(boolean[] in) {
        int count = freeCount();
        for (boolean one : in) {
            count += one ? 1 : 0;
        }
        return count;
    }

    int freedom(boolean[] in) {
        return Math.max(1, target.length - parameters(in));
    }

    private double criterion(Solved solved) {
        int n = target.length;
        int k = parameters(solved.in()) + 1;
        if (n - k - 1 <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double size = 0;
        for (double value : target) {
            size += value * value;
        }
        double left = Math.max(solved.squares(), 1e-20 * size) / n;
        return n * Math.log(left) + 2.0 * k + 2.0 * k * (k + 1) / (n - k - 1);
    }

    private double unseen(boolean[] in) {
        int groups = 0;
        for (int one : group) {
            groups = Math.max(groups, one + 1);
        }
        double squares = 0;
        for (int g = 0; g < groups; g++) {
            Solved solved = solve(in, g);
            for (int i = 0; i < target.length; i++) {
                if (group[i] == g) {
                    double left = target[i] - predicted(solved.coefficients(), i);
                    squares += left * left;
                }
            }
        }
        return Math.sqrt(squares / target.length);
    }

    double predicted(double[] coefficients, int row) {
        double sum = 0;
        for (int j = 0; j < freeCount(); j++) {
            sum += coefficients[j] * free[row][j];
        }
        for (int j = 0; j < terms.size(); j++) {
            sum += coefficients[freeCount() + j] * losses[row][j];
        }
        return sum;
    }

    /** 95 % profile interval of a coefficient (free ones first) within a set. */
    Interval interval(Solved solved, int coefficient) {
        double factor = StudentLaw.factor(0.95, freedom(solved.in()));
        double limit = solved.squares() * (1 + factor * factor / freedom(solved.in()));
        double middle = solved.coefficients()[coefficient];
        double low = edge(solved, coefficient, limit, middle, -1);
        return new Interval(
                coefficient < freeCount() ? low : Math.max(0, low), edge(solved, coefficient, limit, middle, 1));
    }

    private double edge(Solved solved, int coefficient, double limit, double middle, int side) {
        double step = 1e-6 * Math.max(Math.abs(middle), Double.MIN_NORMAL);
        boolean bound = coefficient >= freeCount() && side < 0;
        while (squaresAt(solved, coefficient, middle + side * step) < limit && step < 1e6 * Math.abs(middle)) {
            step *= 2;
            if (bound && step >= middle) {
                if (squaresAt(solved, coefficient, 0) < limit) {
                    return 0;
                }
                step = middle;
                break;
            }
        }
        double inside = 0;
        for (int k = 0; k < 60; k++) {
            double half = 0.5 * (inside + step);
            if (squaresAt(solved, coefficient, middle + side * half) < limit) {
                inside = half;
            } else {
                step = half;
            }
        }
        return middle + side * step;
    }

    /** Least sum of squares with one coefficient held. */
    private double squaresAt(Solved solved, int coefficient, double held) {
        int n = target.length;
        double[] moved = new double[n];
        boolean isFree = coefficient < freeCount();
        double[][] otherFree = new double[n][];
        for (int i = 0; i < n; i++) {
            double column = isFree ? free[i][coefficient] : losses[i][coefficient - freeCount()];
            moved[i] = target[i] - held * column;
            otherFree[i] = isFree ? without(free[i], coefficient) : free[i];
        }
        boolean[] in = solved.in().clone();
        if (!isFree) {
            in[coefficient - freeCount()] = false;
        }
        return new TermFit(otherFree, losses, moved, group, terms).solve(in).squares();
    }

    private static double[] without(double[] row, int index) {
        double[] rest = new double[row.length - 1];
        for (int j = 0, k = 0; j < row.length; j++) {
            if (j != index) {
                rest[k++] = row[j];
            }
        }
        return rest;
    }
}
