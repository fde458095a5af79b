package swashlight.findings.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swashlight.findings.fit.Estimate;
import swashlight.findings.fit.StudentLaw;

/**
 * The form of a leak: its pressure exponent, and what follows for thinner oil.
 * <pre>
 *   leak ~ p^m within a block of cycles (least squares of ln leak on ln p)
 *   Δp = α µ Q + β Q²  (a laminar and a turbulent resistance in a row)  gives  ∂ ln Q/∂ ln µ = −(2 m − 1)
 * </pre>
 * m = ½ is an orifice, which viscosity leaves alone; m = 1 a gap, whose leak goes with 1/µ. The lever in pressure is short, so
 * the leak of each step is taken against sound cycles at the same oil temperature, not against the law alone.
 * Source: resistances in a row, own derivation; check: limits ½ and 1.
 */
final class LeakForm {
    private static final int LONGEST_BLOCK = 10;

    /** Sound cycles count as neighbours of a block up to so far outside its temperatures, K. */
    private static final double NEIGHBOURHOOD = 0.1;

    private LeakForm() {}

    /**
     * The exponent of one class of leak.
     *
     * @param leaking cycles of that class in the order of time
     * @param sound cycles without a leak
     * @param name of the class, for the estimates' keys
     * @return exponent and thinning exponent; empty with fewer than three blocks of either
     */
    static Optional<List<Estimate>> of(List<CycleLeak> leaking, List<CycleLeak> sound, String name) {
        int plateaus = leaking.isEmpty() ? 0 : leaking.get(0).leaks().length;
        if (plateaus < 3) {
            return Optional.empty();
        }
        return whole(
                leaking.stream()
                        .filter(cycle -> cycle.leaks().length == plateaus)
                        .toList(),
                sound.stream().filter(cycle -> cycle.leaks().length == plateaus).toList(),
                name);
    }

    private static Optional<List<Estimate>> whole(List<CycleLeak> leaking, List<CycleLeak> sound, String name) {
        double[] weights = weights(leaking.get(0).pressures());
        List<Double> slopes = new ArrayList<>();
        List<double[]> leaks = new ArrayList<>();
        for (List<CycleLeak> block : blocks(leaking)) {
            List<CycleLeak> neighbours = near(sound, block);
            if (!neighbours.isEmpty()) {
                double[] leak = minus(mean(block), mean(neighbours));
                leaks.add(leak);
                slopes.add(slope(weights, leak));
            }
        }
        List<List<CycleLeak>> base = blocks(near(sound, leaking));
        if (slopes.size() < 3 || base.size() < 3) {
            return Optional.empty();
        }
        double[] typical = average(leaks);
        List<double[]> levels = new ArrayList<>();
        base.forEach(block -> levels.add(mean(block)));
        double[] level = average(levels);
        List<Double> baseSlopes = new ArrayList<>();
        for (double[] block : levels) {
            double slope = 0;
            for (int i = 0; i < weights.length; i++) {
                slope += weights[i] * (block[i] - level[i]) / typical[i];
            }
            baseSlopes.add(slope);
        }
        double half = StudentLaw.factor(0.95, Math.min(slopes.size(), baseSlopes.size()) - 1)
                * Math.sqrt(varianceOfMean(slopes) + varianceOfMean(baseSlopes));
        return Optional.of(estimates(averageOf(slopes), half, name));
    }

    private static List<Estimate> estimates(double slope, double half, String name) {
        Estimate exponent = Estimate.symmetric(
                "pressure-exponent-" + name,
                slope,
                half,
                "1",
                "m in leak ~ pressure^m, class " + name + " (½ orifice, 1 laminar gap)");
        double thinning = Math.max(0, Math.min(1, 2 * slope - 1));
        Estimate thinner = new Estimate(
                "thinning-exponent-" + name,
                thinning,
                0,
                Math.max(thinning, Math.min(1, 2 * (slope + half) - 1)),
                Estimate.USUAL_CONFIDENCE,
                "1",
                "n in leak ~ viscosity^-n that such an m would bring; down to 0, an orifice, since a duty's swing bends m");
        return List.of(exponent, thinner);
    }

    private static List<CycleLeak> near(List<CycleLeak> sound, List<CycleLeak> leaking) {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (CycleLeak leak : leaking) {
            low = Math.min(low, leak.temperature());
            high = Math.max(high, leak.temperature());
        }
        List<CycleLeak> near = new ArrayList<>();
        for (CycleLeak cycle : sound) {
            if (cycle.temperature() > low - NEIGHBOURHOOD && cycle.temperature() < high + NEIGHBOURHOOD) {
                near.add(cycle);
            }
        }
        return near;
    }

    /** Runs of consecutive cycles, ten at most. */
    private static List<List<CycleLeak>> blocks(List<CycleLeak> cycles) {
        List<List<CycleLeak>> blocks = new ArrayList<>();
        List<CycleLeak> open = new ArrayList<>();
        int last = 0;
        for (CycleLeak cycle : cycles) {
            if (!open.isEmpty() && (cycle.cycle() != last + 1 || open.size() == LONGEST_BLOCK)) {
                blocks.add(open);
                open = new ArrayList<>();
            }
            open.add(cycle);
            last = cycle.cycle();
        }
        if (!open.isEmpty()) {
            blocks.add(open);
        }
        return blocks;
    }

    private static double slope(double[] weights, double[] leak) {
        double slope = 0;
        for (int i = 0; i < weights.length; i++) {
            slope += weights[i] * Math.log(Math.max(leak[i], Double.MIN_VALUE));
        }
        return slope;
    }

    private static double[] mean(List<CycleLeak> cycles) {
        List<double[]> rows = new ArrayList<>();
        cycles.forEach(cycle -> rows.add(cycle.leaks()));
        return average(rows);
    }

    private static double[] average(List<double[]> rows) {
        double[] mean = new double[rows.get(0).length];
        for (double[] row : rows) {
            for (int i = 0; i < mean.length; i++) {
                mean[i] += row[i] / rows.size();
            }
        }
        return mean;
    }

    private static double[] minus(double[] a, double[] b) {
        double[] difference = a.clone();
        for (int i = 0; i < a.length; i++) {
            difference[i] -= b[i];
        }
        return difference;
    }

    private static double averageOf(List<Double> values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.size();
    }

    private static double varianceOfMean(List<Double> values) {
        double mean = averageOf(values);
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return squares / (values.size() - 1) / values.size();
    }

    /** Weights that turn logarithms of leaks into the slope against ln p. */
    private static double[] weights(double[] pressures) {
        double mean = 0;
        for (double pressure : pressures) {
            mean += Math.log(pressure) / pressures.length;
        }
        double squares = 0;
        for (double pressure : pressures) {
            squares += (Math.log(pressure) - mean) * (Math.log(pressure) - mean);
        }
        double[] weights = new double[pressures.length];
        for (int i = 0; i < weights.length; i++) {
            weights[i] = (Math.log(pressures[i]) - mean) / squares;
        }
        return weights;
    }
}
