package swashlight.drive.trace;

import java.util.List;

/** Whole cycles, one after the other, each with the mean, spread and reach of every signal. Signals and cycles count from 0. */
public final class Cycles {
    private final List<Signal> signals;
    private final double start; // s
    private final Series ends = new Series(); // s
    private final Series[] means;
    private final Series[] spreads; // mean square around the mean
    private final Series[] least;
    private final Series[] greatest;

    Cycles(List<Signal> signals, double start) {
        this.signals = signals;
        this.start = start;
        means = series();
        spreads = series();
        least = series();
        greatest = series();
    }

    private Series[] series() {
        Series[] all = new Series[signals.size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = new Series();
        }
        return all;
    }

    void add(int signal, double mean, double spread, double low, double high) {
        means[signal].add(mean);
        spreads[signal].add(spread);
        least[signal].add(low);
        greatest[signal].add(high);
    }

    void end(double time) {
        ends.add(time);
    }

    /** The signals, in order. */
    public List<Signal> signals() {
        return signals;
    }

    /** Whole cycles so far, 1. */
    public int count() {
        return ends.size();
    }

    /** When a cycle ended, s. */
    public double end(int cycle) {
        return ends.at(cycle);
    }

    /** When a cycle began, s. */
    public double begin(int cycle) {
        return cycle == 0 ? start : ends.at(cycle - 1);
    }

    /** Mean of a signal over every cycle, SI unit of the signal. */
    public double[] means(int signal) {
        return means[signal].toArray();
    }

    /** End of every cycle, s. */
    public double[] ends() {
        return ends.toArray();
    }

    /** One cycle alone. */
    public CycleMean one(int signal, int cycle) {
        return over(signal, cycle, cycle + 1);
    }

    /** The last cycles together: so many, or all there are. */
    public CycleMean last(int signal, int many) {
        return over(signal, Math.max(0, count() - many), count());
    }

    /**
     * Cycles from the first of some up to, without, another, together.
     *
     * @throws IllegalArgumentException when that is no cycle
     */
    public CycleMean over(int signal, int from, int to) {
        if (!(from >= 0 && from < to && to <= count())) {
            throw new IllegalArgumentException("cycles " + from + " to " + to + " of " + count() + " are none");
        }
        double origin = means[signal].at(from);
        double time = 0; // s
        double sum = 0;
        double square = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int cycle = from; cycle < to; cycle++) {
            double lasted = end(cycle) - begin(cycle);
            double off = means[signal].at(cycle) - origin;
            time += lasted;
            sum += lasted * off;
            square += lasted * (spreads[signal].at(cycle) + off * off);
            low = Math.min(low, least[signal].at(cycle));
            high = Math.max(high, greatest[signal].at(cycle));
        }
        double mean = sum / time;
        return new CycleMean(
                begin(from),
                end(to - 1),
                origin + mean,
                Math.sqrt(Math.max(0, square / time - mean * mean)),
                low,
                high);
    }
}
