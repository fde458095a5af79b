package swashlight.findings.rig;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import swashlight.findings.fit.StudentLaw;

/** What a healthy pump delivers at any plateau of the duty, learnt; and the leak of any cycle, with its interval. */
public final class HealthyFlow {
    private final List<StepUsual> steps;
    private final RigAssumptions assumed;
    private final double[] point;
    private final double[][] modelled;
    private final double[][] sandwich;
    private final double[][] movedPoints;
    private final double[] noise;
    private final double drift;
    private final double factor;
    private final double[] thinningRange;
    private final int rowCount;
    private final int blockCount;

    HealthyFlow(
            List<StepUsual> steps,
            RigAssumptions assumed,
            double[] point,
            double[][] modelled,
            double[][] sandwich,
            double[][] movedPoints,
            double[] noise,
            double drift,
            HealthyRows rows) {
        this.steps = steps;
        this.assumed = assumed;
        this.point = point;
        this.modelled = modelled;
        this.sandwich = sandwich;
        this.movedPoints = movedPoints;
        this.noise = noise;
        this.drift = drift;
        factor = StudentLaw.factor(0.95, Math.max(3, rows.blocks - 3));
        thinningRange = new double[] {Double.POSITIVE_INFINITY, 0};
        for (int i = 0; i < rows.rows.length; i++) {
            double thinning = assumed.law().thinning(rows.rows[i].temperature(), rows.warming[i]);
            thinningRange[0] = Math.min(thinningRange[0], thinning);
            thinningRange[1] = Math.max(thinningRange[1], thinning);
        }
        rowCount = rows.rows.length;
        blockCount = rows.blocks;
    }

    /**
     * The leak of every cycle among some plateaus, without fitting anything anew.
     *
     * @param plateaus any cycles of the same duty, labelled or not, at any oil temperature
     */
    public List<CycleLeak> leaks(List<Plateau> plateaus) {
        Warming warming = new Warming(plateaus, assumed.cyclePeriod());
        Map<Integer, List<Plateau>> cycles = new LinkedHashMap<>();
        for (Plateau plateau : plateaus) {
            if (stepIndex(plateau) >= 0) {
                cycles.computeIfAbsent(plateau.cycle(), cycle -> new ArrayList<>())
                        .add(plateau);
            }
        }
        List<CycleLeak> leaks = new ArrayList<>();
        for (Map.Entry<Integer, List<Plateau>> cycle : cycles.entrySet()) {
            leaks.add(leak(cycle.getKey(), cycle.getValue(), warming.rate(cycle.getKey())));
        }
        return leaks;
    }

    private CycleLeak leak(int cycle, List<Plateau> plateaus, double warming) {
        int n = plateaus.size();
        double[] leaks = new double[n];
        double[] pressures = new double[n];
        double[] mean = new double[point.length];
        double[] shifts = new double[movedPoints.length];
        double leak = 0;
        double pressure = 0;
        double temperature = 0;
        double delivered = 0;
        double scatter = 0;
        double beyond = 0;
        HealthyLaw law = assumed.law();
        HealthyLaw[] moved = assumed.moved();
        for (int i = 0; i < n; i++) {
            Plateau plateau = plateaus.get(i);
            int step = stepIndex(plateau);
            double[] x = HealthyFit.designRow(law, plateau, step, warming, steps.size());
            double healthy = law.given(plateau, steps.get(step)) + dot(x, point);
            leaks[i] = healthy - plateau.flow();
            pressures[i] = plateau.pressure();
            leak += leaks[i] / n;
            pressure += plateau.pressure() / n;
            temperature += plateau.temperature() / n;
            delivered += plateau.flow() / n;
            scatter += noise[step] * noise[step] / (n * n);
            beyond += beyond(law.thinning(plateau.temperature(), warming)) / n;
            for (int j = 0; j < x.length; j++) {
                mean[j] += x[j] / n;
            }
            for (int k = 0; k < moved.length; k++) {
                double[] y = HealthyFit.designRow(moved[k], plateau, step, warming, steps.size());
                double there = moved[k].given(plateau, steps.get(step)) + dot(y, movedPoints[k]);
                shifts[k] += (there - healthy) / n;
            }
        }
        double variance = Math.max(quadratic(mean, modelled), quadratic(mean, sandwich)) + scatter + drift * drift;
        double missed = assumed.unmodelled() * beyond;
        variance += missed * missed;
        for (double shift : shifts) {
            variance += shift * shift;
        }
        return new CycleLeak(
                cycle, leak, Math.sqrt(variance), factor, pressure, temperature, delivered, pressures, leaks);
    }

    /** How far outside the thinning of the fitted rows, 1. */
    private double beyond(double thinning) {
        return Math.max(0, Math.max(thinningRange[0] - thinning, thinning - thinningRange[1]));
    }

    private int stepIndex(Plateau plateau) {
        for (int s = 0; s < steps.size(); s++) {
            if (steps.get(s).name().equals(plateau.step())) {
                return s;
            }
        }
        return -1;
    }

    /** Leak through the pump's own gaps at the reference, m³/s. */
    double ownLeak() {
        return point[steps.size()];
    }

    /** Standard deviation of the own leak, rows and assumptions together, m³/s. */
    double ownLeakSpread() {
        int g = steps.size();
        double variance = Math.max(modelled[g][g], sandwich[g][g]);
        for (double[] moved : movedPoints) {
            variance += (moved[g] - point[g]) * (moved[g] - point[g]);
        }
        return Math.sqrt(variance);
    }

    List<StepUsual> steps() {
        return steps;
    }

    double factor() {
        return factor;
    }

    double drift() {
        return drift;
    }

    double noise(int step) {
        return noise[step];
    }

    int rowCount() {
        return rowCount;
    }

    int blockCount() {
        return blockCount;
    }

    RigAssumptions assumed() {
        return assumed;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double quadratic(double[] x, double[][] c) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            for (int j = 0; j < x.length; j++) {
                sum += x[i] * c[i][j] * x[j];
            }
        }
        return sum;
    }
}
