package swashlight.drive.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import swashlight.drive.description.Place;
import swashlight.drive.motion.MotionChannel;
import swashlight.drive.motion.MotionRun;
import swashlight.drive.motion.MotionWatcher;

/**
 * Keeps signals at even shaft angles over the last revolutions, ready for their orders.
 *
 * <p>A value between steps lies on the cubic through the four steps around it. When the shaft turns back it begins anew. Memory does not
 * grow.
 */
public final class OrderMeter implements MotionWatcher {
    /** Samples a revolution, 1: orders up to half of it are told, those above about a quarter of it faintly. */
    public static final int SAMPLES = 512;

    private static final double SAMPLE_ANGLE = 2 * Math.PI / SAMPLES; // rad
    private static final double STILL = 1e-9; // rad: a step that turns less counts as none
    private static final int POINTS = 4;

    private final Pace shaft;
    private final List<Signal> signals;
    private final Reading reading;
    private final int both; // signals and the three of our own: time, pump angle, motor angle
    private final int pumpPistons;
    private final int motorPistons;
    private final double[][] ring; // a sample: the signals' values
    private final double[] angles = new double[POINTS]; // travelled, rad
    private final double[][] points; // values at the last four steps
    private int held;
    private double shaftBefore;
    private double way; // rad since the beginning
    private long samples; // number of the next one
    private long first; // number of the first one kept
    private double direction;

    /**
     * Begins now.
     *
     * @param shaft pump or motor, whose orders they are
     * @param revolutions to keep, a power of two, 1
     */
    public OrderMeter(MotionRun run, List<Signal> signals, Pace shaft, int revolutions) {
        if (shaft == Pace.TIME || revolutions < 2 || (revolutions & (revolutions - 1)) != 0) {
            throw new IllegalArgumentException("orders of " + shaft + " over " + revolutions
                    + " revolutions; a shaft and a power of two from 2 on are right");
        }
        this.shaft = shaft;
        this.signals = List.copyOf(signals);
        List<Signal> more = new ArrayList<>(signals);
        more.addAll(Signal.all(MotionChannel.PUMP_ANGLE, MotionChannel.MOTOR_ANGLE));
        reading = new Reading(more, run);
        both = more.size() + 1;
        pumpPistons = run.chambers(Place.PUMP).count();
        motorPistons = run.chambers(Place.MOTOR).count();
        ring = new double[revolutions * SAMPLES][both];
        points = new double[POINTS][both];
        shaftBefore = shaft.of(run);
        push(run);
    }

    @Override
    public void stepped(MotionRun run) {
        reading.step(run);
        double angle = shaft.of(run);
        double turned = angle - shaftBefore;
        if (Math.abs(turned) < STILL) {
            return;
        }
        shaftBefore = angle;
        if (turned * direction < 0) {
            held = 0;
            samples = 0;
            way = 0;
        }
        direction = Math.signum(turned);
        way += Math.abs(turned);
        push(run);
        if (held == POINTS) {
            sample();
        }
    }

    private void push(MotionRun run) {
        double[] oldest = points[0];
        System.arraycopy(points, 1, points, 0, POINTS - 1);
        System.arraycopy(angles, 1, angles, 0, POINTS - 1);
        points[POINTS - 1] = oldest;
        angles[POINTS - 1] = way;
        System.arraycopy(reading.now, 0, oldest, 0, both - 1);
        oldest[both - 1] = run.time();
        held = Math.min(POINTS, held + 1);
        if (held < POINTS) {
            samples = Math.max(samples, (long) Math.ceil(way / SAMPLE_ANGLE)); // the cubic has not its points yet
            first = samples;
        }
    }

    private void sample() {
        while (samples * SAMPLE_ANGLE < angles[2]) {
            double at = samples * SAMPLE_ANGLE;
            cubic(at, row(samples));
            samples++;
        }
    }

    /** Lagrange's cubic through the four steps held. */
    private void cubic(double at, double[] row) {
        Arrays.fill(row, 0);
        for (int p = 0; p < POINTS; p++) {
            double weight = 1;
            for (int q = 0; q < POINTS; q++) {
                if (q != p) {
                    weight *= (at - angles[q]) / (angles[p] - angles[q]);
                }
            }
            for (int i = 0; i < both; i++) {
                row[i] += weight * points[p][i];
            }
        }
    }

    /** Orders over the last revolutions: as many as were asked for, or the largest smaller power of two that is there; empty below two. */
    public Optional<OrderSpectrum> spectrum() {
        long whole = (samples - first) / SAMPLES;
        int revolutions = ring.length / SAMPLES;
        while (revolutions > whole) {
            revolutions /= 2;
        }
        if (revolutions < 2) {
            return Optional.empty();
        }
        int count = revolutions * SAMPLES;
        double[][] values = new double[signals.size()][count];
        for (int n = 0; n < count; n++) {
            double[] row = row(samples - count + n);
            for (int i = 0; i < values.length; i++) {
                values[i][n] = row[i];
            }
        }
        double[] begin = row(samples - count);
        double[] end = row(samples - 1);
        double share = count / (count - 1.0); // from first and last sample to whole revolutions
        OrderSpectrum.Shafts turned = new OrderSpectrum.Shafts(
                (end[both - 1] - begin[both - 1]) * share,
                Math.abs(end[both - 3] - begin[both - 3]) * share,
                Math.abs(end[both - 2] - begin[both - 2]) * share,
                pumpPistons,
                motorPistons);
        return Optional.of(new OrderSpectrum(signals, shaft, values, turned));
    }

    private double[] row(long sample) {
        return ring[(int) (sample % ring.length)];
    }
}
