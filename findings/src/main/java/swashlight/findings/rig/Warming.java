package swashlight.findings.rig;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How fast the oil warms at each cycle, from its neighbours; 0 where a cycle stands alone. */
final class Warming {
    private final Map<Integer, Double> rates = new HashMap<>();

    Warming(List<Plateau> plateaus, double period) {
        Map<Integer, double[]> sums = new HashMap<>();
        for (Plateau plateau : plateaus) {
            double[] sum = sums.computeIfAbsent(plateau.cycle(), cycle -> new double[2]);
            sum[0] += plateau.temperature();
            sum[1]++;
        }
        for (int cycle : sums.keySet()) {
            double[] here = sums.get(cycle);
            double[] before = sums.getOrDefault(cycle - 1, here);
            double[] after = sums.getOrDefault(cycle + 1, here);
            int apart = (before == here ? 0 : 1) + (after == here ? 0 : 1);
            double rise = after[0] / after[1] - before[0] / before[1];
            rates.put(cycle, apart == 0 ? 0.0 : rise / (apart * period));
        }
    }

    /** dT/dt, K/s. */
    double rate(int cycle) {
        return rates.getOrDefault(cycle, 0.0);
    }
}
