package swashlight.drive.heat;

import java.util.ArrayList;
import java.util.List;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.SteadyPoint;
import swashlight.drive.steady.SteadySolver;

/**
 * A drive that warms itself: its oil temperature follows from what it loses.
 *
 * <pre>
 *   C dT/dt = P_loss(T) − G (T − T_air)
 *
 *   T       oil and case temperature    K    230 … 430
 *   P_loss  heat lost inside the drive  W
 *   C, G    see {@link Cooling}
 * </pre>
 *
 * The loop settles within seconds, the case within a quarter of an hour: at every moment the steady view answers. Stepped by the
 * Bogacki–Shampine pair of orders 3(2) with its own error estimate. Source: energy balance; Bogacki and Shampine, Appl. Math. Lett. 2
 * (1989) 321 (from memory). Not for several threads.
 */
public final class HeatedDrive {
    /** Hottest oil that is followed, K (157 °C: seals and oil fail before; common practice). */
    public static final double HOTTEST = 430;

    private static final double COLDEST = 231; // K, edge of the oil laws
    private static final double TOLERANCE = 0.02; // K per step
    private static final double FIRST_STEP = 2; // s
    private static final double LEAST_STEP = 1e-3; // s
    private static final int MOST_STEPS = 20_000;

    private final Cooling cooling;
    private final SteadySolver solver = new SteadySolver();
    private final SteadyPoint point = new SteadyPoint();

    /** A drive from its description. */
    public HeatedDrive(DriveDescription drive) {
        this(drive.vector());
    }

    /** A drive from a vector of values in index order, SI. */
    public HeatedDrive(double[] vector) {
        cooling = Cooling.of(vector);
        solver.load(vector);
    }

    /**
     * Follows a duty from a starting temperature.
     *
     * @param duty the duty; its oil temperature is the start
     * @param airTemperature T_air, K
     * @param duration how long, s
     */
    public WarmUp follow(Duty duty, double airTemperature, double duration) {
        List<WarmPoint> points = new ArrayList<>();
        double time = 0;
        double temperature = duty.oilTemperature();
        double step = Math.min(FIRST_STEP, duration);
        if (!solve(duty, temperature)) {
            return new WarmUp.Stopped(points, "no settled state at the starting temperature");
        }
        points.add(moment(time, temperature));
        double rate = rate(temperature, airTemperature);
        for (int count = 0; count < MOST_STEPS && time < duration; count++) {
            step = Math.min(step, duration - time);
            double rate2 = rateAt(duty, temperature + 0.5 * step * rate, airTemperature);
            double rate3 = rateAt(duty, temperature + 0.75 * step * rate2, airTemperature);
            double next = temperature + step * (2 * rate + 3 * rate2 + 4 * rate3) / 9;
            double rate4 = rateAt(duty, next, airTemperature);
            double error = step * Math.abs(-5 * rate / 72 + rate2 / 12 + rate3 / 9 - rate4 / 8);
            if (!(error < Double.MAX_VALUE)) {
                return new WarmUp.Stopped(points, "no settled state near " + temperature + " K");
            }
            if (error <= TOLERANCE || step <= LEAST_STEP) {
                time += step;
                temperature = next;
                rate = rate4;
                points.add(moment(time, temperature));
                if (temperature > HOTTEST - 1) {
                    return new WarmUp.Stopped(points, "hotter than " + HOTTEST + " K: the oil would fail");
                }
            }
            step = Math.max(
                    LEAST_STEP, step * Math.min(3, 0.9 * Math.pow(TOLERANCE / Math.max(error, 1e-12), 1.0 / 3)));
        }
        return time >= duration
                ? new WarmUp.Followed(points, TOLERANCE)
                : new WarmUp.Stopped(points, "more than " + MOST_STEPS + " steps needed");
    }

    /**
     * The temperature at which a duty settles: where losses and cooling first meet, coming from the air's temperature.
     *
     * @param duty the duty; its own oil temperature does not matter
     * @param airTemperature T_air, K
     */
    public SettledTemperature settle(Duty duty, double airTemperature) {
        double low = Math.max(COLDEST, airTemperature);
        double surplus = surplus(duty, low, airTemperature);
        double scan = 5; // K
        for (double high = low + scan; high < HOTTEST; high += scan) {
            double next = surplus(duty, high, airTemperature);
            if (surplus >= 0 && next < 0) {
                return new SettledTemperature.Settled(between(duty, high - scan, high, airTemperature));
            }
            surplus = next;
        }
        return new SettledTemperature.Unsettled(HOTTEST, surplus);
    }

    private double between(Duty duty, double low, double high, double air) {
        double cool = low;
        double warm = high;
        while (warm - cool > 1e-6) {
            double middle = (cool + warm) / 2;
            if (surplus(duty, middle, air) >= 0) {
                cool = middle;
            } else {
                warm = middle;
            }
        }
        return (cool + warm) / 2;
    }

    /** Heat made less heat given away at a temperature, W; not solved counts as hopelessly hot. */
    private double surplus(Duty duty, double temperature, double air) {
        return solve(duty, temperature) ? rate(temperature, air) * cooling.capacity() : Double.MAX_VALUE;
    }

    private double rateAt(Duty duty, double temperature, double air) {
        double held = Math.max(COLDEST, Math.min(HOTTEST, temperature));
        return solve(duty, held) ? rate(held, air) : Double.POSITIVE_INFINITY;
    }

    private double rate(double temperature, double air) {
        double given = cooling.conductance(point.pumpSpeed()) * (temperature - air);
        return (point.heat() - given) / cooling.capacity();
    }

    private boolean solve(Duty duty, double temperature) {
        boolean solved = solver.solve(duty.withOilTemperature(temperature));
        point.fill(solver);
        return solved;
    }

    private WarmPoint moment(double time, double temperature) {
        return new WarmPoint(
                time,
                temperature,
                point.heat(),
                point.groundSpeed(),
                point.axleSpeed(),
                Math.max(point.pressureA(), point.pressureB()));
    }
}
