package swashlight.drive.trace;

import java.util.List;
import java.util.OptionalInt;

/** Signals over time as plain columns: one row a time, none ragged, none missing. */
public final class Trace {
    private final List<Signal> signals;
    private final double[] times; // s
    private final double[][] columns; // SI

    Trace(List<Signal> signals, double[] times, double[][] columns) {
        this.signals = List.copyOf(signals);
        this.times = times;
        this.columns = columns;
    }

    /** The columns' signals, in order. */
    public List<Signal> signals() {
        return signals;
    }

    /** Number of rows, 1. */
    public int rows() {
        return times.length;
    }

    /** Time of every row, s. */
    public double[] times() {
        return times.clone();
    }

    /** Values of a column (counted from 0), SI unit of its signal. */
    public double[] column(int column) {
        return columns[column].clone();
    }

    /** Value in a row and column (both counted from 0), SI unit of its signal. */
    public double value(int row, int column) {
        return columns[column][row];
    }

    /** Time of a row (counted from 0), s. */
    public double time(int row) {
        return times[row];
    }

    /** The column of a signal by its key; empty when it was not kept. */
    public OptionalInt find(String key) {
        for (int i = 0; i < signals.size(); i++) {
            if (signals.get(i).key().equals(key)) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }
}
