package swashlight.findings.expect;

import swashlight.drive.heat.Cooling;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.SteadyPoint;
import swashlight.drive.steady.SteadySolver;

/**
 * Warm-up of a held duty, quickly: heat and input speed are solved at a few temperatures, joined by parabolas, and the balance
 *
 * <pre>
 *   C dT/dt = P(T) − G(ω(T)) (T − T_air)      C in J/K, P in W, G in W/K, T in K
 * </pre>
 *
 * is stepped by the classical fourth-order method. Source: energy balance. Checked against {@link swashlight.drive.heat.HeatedDrive}.
 */
final class WarmCurve {
    private static final double HOTTEST = 429; // K, edge of the oil laws
    private static final double COLDEST = 231; // K
    private static final int NODES = 9;
    private static final int STEPS = 40;

    private final SteadySolver solver;
    private final SteadyPoint point;
    private final double[] surplus = new double[NODES]; // K/s
    private double first; // K
    private double spacing; // K

    WarmCurve(SteadySolver solver, SteadyPoint point) {
        this.solver = solver;
        this.point = point;
    }

    /** Solves the nodes from the air's temperature up, K; false when one of them has no settled state. */
    boolean prepare(double[] vector, Duty duty, double air) {
        Cooling cooling = Cooling.of(vector);
        first = Math.max(COLDEST, Math.min(HOTTEST - 40, air));
        spacing = (HOTTEST - first) / (NODES - 1);
        for (int i = 0; i < NODES; i++) {
            double temperature = first + i * spacing;
            if (!solver.solve(duty.withOilTemperature(Math.min(HOTTEST, temperature)))) {
                return false;
            }
            point.fill(solver);
            double lost = cooling.conductance(point.pumpSpeed()) * (temperature - air);
            surplus[i] = (point.heat() - lost) / cooling.capacity();
        }
        return true;
    }

    /** Temperature a time (s) after a start at the air's temperature, K. */
    double temperatureAfter(double time) {
        double temperature = first;
        double step = time / STEPS;
        for (int i = 0; i < STEPS; i++) {
            temperature = next(temperature, step);
        }
        return temperature;
    }

    /** Time from the air's temperature to another (K), s; 0 when it starts above, the limit (s) when it is not reached by then. */
    double timeTo(double target, double limit) {
        double temperature = first;
        double step = limit / 200;
        for (int i = 0; i < 200 && temperature < target; i++) {
            double next = next(temperature, step);
            if (next >= target) {
                return (i + (target - temperature) / (next - temperature)) * step;
            }
            temperature = next;
        }
        return temperature >= target ? 0 : limit;
    }

    private double next(double temperature, double step) {
        double k1 = rate(temperature);
        double k2 = rate(temperature + step / 2 * k1);
        double k3 = rate(temperature + step / 2 * k2);
        double k4 = rate(temperature + step * k3);
        return Math.min(HOTTEST, temperature + step / 6 * (k1 + 2 * k2 + 2 * k3 + k4));
    }

    private double rate(double temperature) {
        double place = Math.max(0, Math.min(NODES - 1.0, (temperature - first) / spacing));
        int middle = Math.max(1, Math.min(NODES - 2, (int) Math.floor(place + 0.5)));
        double t = place - middle;
        double before = surplus[middle - 1];
        double here = surplus[middle];
        double after = surplus[middle + 1];
        return here + t * (after - before) / 2 + t * t * (after - 2 * here + before) / 2;
    }
}
