package swashlight.findings.evidence;

import java.util.Arrays;
import swashlight.findings.expect.Forecast;

/** Machines drawn for one cause, with their weights: its evidence and everything that is said about it once it is believed. */
public final class Weighed {
    private final int batches;
    private final int perBatch;
    private final double[] logWeight;
    private final double[][] severity; // of each fault
    private final double[][] expected;
    private final boolean[][] solved;
    private final double[][] unknown; // normal numbers of graded severities first
    private final int graded;
    private int unsolved;

    Weighed(int batches, int perBatch, int readings, int graded) {
        this.graded = graded;
        this.batches = batches;
        this.perBatch = perBatch;
        int count = batches * perBatch;
        logWeight = new double[count];
        severity = new double[count][];
        expected = new double[count][readings];
        solved = new boolean[count][readings];
        unknown = new double[count][];
    }

    void note(int batch, int draw, double[] levels, double weight, Forecast forecast, double[] x) {
        int place = batch * perBatch + draw;
        logWeight[place] = weight;
        severity[place] = levels;
        unknown[place] = x.clone();
        boolean all = true;
        for (int i = 0; i < expected[place].length; i++) {
            expected[place][i] = forecast.value(i);
            solved[place][i] = forecast.solved(i);
            all &= forecast.solved(i);
        }
        unsolved += all ? 0 : 1;
    }

    /** All machines are noted: the largest weights are smoothed. */
    void smooth() {
        ParetoTail.smooth(logWeight);
    }

    /** How many machines. */
    public int size() {
        return logWeight.length;
    }

    /** How many per batch. */
    public int perBatch() {
        return perBatch;
    }

    /** How many had a reading without a settled state. */
    public int unsolved() {
        return unsolved;
    }

    /** Largest ln of a weight; unit 1. */
    double highest() {
        double highest = Double.NEGATIVE_INFINITY;
        for (double log : logWeight) {
            highest = Math.max(highest, log);
        }
        return highest;
    }

    /** ln Z, readings times their errors; unit 1. */
    public double logEvidence() {
        double highest = highest();
        return highest + Math.log(sum(highest, 0, logWeight.length) / logWeight.length);
    }

    /** Evidence of one batch over e^reference; unit 1. */
    double batchEvidence(int batch, double reference) {
        return sum(reference, batch * perBatch, (batch + 1) * perBatch) / perBatch;
    }

    private double sum(double reference, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += Math.exp(logWeight[i] - reference);
        }
        return sum;
    }

    /** Relative standard error of Z, from the scatter of the batches; unit 1. */
    public double relativeError() {
        double reference = highest();
        double mean = sum(reference, 0, logWeight.length) / logWeight.length;
        double squares = 0;
        for (int batch = 0; batch < batches; batch++) {
            double off = batchEvidence(batch, reference) / mean - 1;
            squares += off * off;
        }
        return Math.sqrt(squares / (batches * (batches - 1.0)));
    }

    /** Effective sample size, (Σw)²/Σw²; unit 1. */
    public double effectiveSize() {
        double highest = highest();
        double sum = 0;
        double squares = 0;
        for (double log : logWeight) {
            double weight = Math.exp(log - highest);
            sum += weight;
            squares += weight * weight;
        }
        return sum * sum / squares;
    }

    /** All shares, 1 each, summing to 1. */
    public double[] shares() {
        double highest = highest();
        double sum = sum(highest, 0, logWeight.length);
        double[] shares = new double[logWeight.length];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = Math.exp(logWeight[i] - highest) / sum;
        }
        return shares;
    }

    /** Severity of a fault of the cause that a share (1) of the machines stays below, in its own unit. */
    public double severityBelow(int fault, double share) {
        Integer[] order = new Integer[severity.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        Arrays.sort(order, (a, b) -> Double.compare(severity[a][fault], severity[b][fault]));
        double[] shares = shares();
        double passed = 0;
        for (int place : order) {
            passed += shares[place];
            if (passed >= share) {
                return severity[place][fault];
            }
        }
        return severity[order[order.length - 1]][fault];
    }

    /** Severities of one machine, each in its fault's own unit. */
    public double[] severity(int place) {
        return severity[place].clone();
    }

    /** Unknowns of one machine, standard deviations. */
    public double[] nuisance(int place) {
        return Arrays.copyOfRange(unknown[place], graded, unknown[place].length);
    }

    /** Normal numbers of severities and unknowns of the machine with the highest weight, 1. */
    double[] heaviest() {
        int best = 0;
        for (int i = 1; i < logWeight.length; i++) {
            best = logWeight[i] > logWeight[best] ? i : best;
        }
        return unknown[best].clone();
    }

    /** What one machine shows for a reading, SI unit of its comparison. */
    public double expected(int place, int reading) {
        return expected[place][reading];
    }

    /** Whether one machine found a settled state for a reading. */
    public boolean solved(int place, int reading) {
        return solved[place][reading];
    }
}
