package swashlight.drive.trace;

import java.util.ArrayList;
import java.util.List;
import swashlight.drive.description.Place;

/**
 * How strongly signals swing at each order, that is so many times a revolution of a shaft.
 *
 * <pre>
 *   amplitude at order m = (2/Σw) |Σ w_n v_n exp(−2πi m n / S)|      S samples a revolution, w Hann's window
 * </pre>
 *
 * A swing sin(mθ) of size 1 has amplitude 1. Orders of the other shaft are seldom whole: they are summed at their own order, and the
 * window keeps neighbours two lines off and more apart. Source: textbook.
 */
public final class OrderSpectrum {
    /**
     * What the shafts did meanwhile.
     *
     * @param time s
     * @param pump turned, rad
     * @param motor turned, rad
     * @param pumpPistons number of pump pistons
     * @param motorPistons number of motor pistons
     */
    record Shafts(double time, double pump, double motor, int pumpPistons, int motorPistons) {}

    /**
     * An order with a name.
     *
     * @param place whose pistons pass
     * @param multiple 1 for the piston pass itself, 2 for twice that, …
     * @param order times a revolution of the shaft, 1
     * @param frequency at the mean speed, Hz
     */
    public record Named(Place place, int multiple, double order, double frequency) {}

    private static final int MULTIPLES = 3;

    private final List<Signal> signals;
    private final Pace shaft;
    private final double[][] values;
    private final double[] window;
    private final double[] means;
    private final Shafts turned;

    OrderSpectrum(List<Signal> signals, Pace shaft, double[][] values, Shafts turned) {
        this.signals = signals;
        this.shaft = shaft;
        this.values = values;
        this.turned = turned;
        int count = values.length == 0 ? 0 : values[0].length;
        window = new double[count];
        for (int n = 0; n < count; n++) {
            window[n] = 1 - Math.cos(2 * Math.PI * n / count); // mean 1
        }
        means = new double[values.length];
        for (int i = 0; i < means.length; i++) {
            double sum = 0;
            for (int n = 0; n < count; n++) {
                sum += window[n] * values[i][n];
            }
            means[i] = sum / count;
        }
    }

    /** The signals, in order. */
    public List<Signal> signals() {
        return signals;
    }

    /** Whole revolutions looked at, 1. */
    public int revolutions() {
        return window.length / OrderMeter.SAMPLES;
    }

    /** Distance between two lines, order, 1. */
    public double step() {
        return 1.0 / revolutions();
    }

    /** Mean speed of the shaft whose orders they are, rad/s. */
    public double speed() {
        return (shaft == Pace.PUMP_SHAFT ? turned.pump : turned.motor) / turned.time;
    }

    /** Amplitudes of a signal (counted from 0) at orders 0, step, 2 step, …, SI unit of the signal; the first is its mean. */
    public double[] amplitudes(int signal) {
        int count = window.length;
        double[] real = new double[count];
        double[] imaginary = new double[count];
        for (int n = 0; n < count; n++) {
            real[n] = window[n] * (values[signal][n] - means[signal]);
        }
        Fourier.transform(real, imaginary);
        double[] amplitudes = new double[count / 2];
        for (int k = 1; k < amplitudes.length; k++) {
            amplitudes[k] = 2 * Math.sqrt(real[k] * real[k] + imaginary[k] * imaginary[k]) / count;
        }
        amplitudes[0] = means[signal];
        return amplitudes;
    }

    /** Amplitude of a signal (counted from 0) at any order (1), SI unit of the signal. */
    public double at(int signal, double order) {
        double re = 0;
        double im = 0;
        double angle = 2 * Math.PI * order / OrderMeter.SAMPLES;
        for (int n = 0; n < window.length; n++) {
            double v = window[n] * (values[signal][n] - means[signal]);
            re += v * Math.cos(angle * n);
            im -= v * Math.sin(angle * n);
        }
        return 2 * Math.sqrt(re * re + im * im) / window.length;
    }

    /** The piston passes of pump and motor and their multiples that fall inside, lowest multiple first. */
    public List<Named> named() {
        List<Named> named = new ArrayList<>();
        double own = shaft == Pace.PUMP_SHAFT ? turned.pump : turned.motor; // rad
        for (int multiple = 1; multiple <= MULTIPLES; multiple++) {
            name(named, Place.PUMP, multiple, turned.pump * turned.pumpPistons / own);
            name(named, Place.MOTOR, multiple, turned.motor * turned.motorPistons / own);
        }
        return named;
    }

    private void name(List<Named> named, Place place, int multiple, double pass) {
        double order = multiple * pass;
        if (order > 2 * step() && order < OrderMeter.SAMPLES / 2.0) {
            named.add(new Named(place, multiple, order, order * speed() / (2 * Math.PI)));
        }
    }
}
