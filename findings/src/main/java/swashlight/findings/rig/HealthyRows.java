package swashlight.findings.rig;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The healthy rows of a fit, in blocks: cycles that share their labels and follow one another, twenty at most. A block drifts
 * as a whole, so its rows are not independent.
 */
final class HealthyRows {
    private static final int LONGEST_BLOCK = 20;

    /** A step counts if it delivers at least this share of the best step, 1: a shut valve teaches nothing. */
    private static final double LEAST_FLOW = 0.5;

    final List<StepUsual> steps;
    final Plateau[] rows;
    final int[] step;
    final int[] block;
    final double[] warming;
    final int blocks;

    HealthyRows(List<Plateau> healthy, double period) {
        steps = steps(healthy);
        Warming rates = new Warming(healthy, period);
        List<Plateau> used = new ArrayList<>();
        for (Plateau plateau : healthy) {
            if (indexOf(plateau.step()) >= 0) {
                used.add(plateau);
            }
        }
        used.sort((a, b) -> Integer.compare(a.cycle(), b.cycle()));
        rows = used.toArray(new Plateau[0]);
        step = new int[rows.length];
        block = new int[rows.length];
        warming = new double[rows.length];
        int current = -1;
        int start = Integer.MIN_VALUE;
        for (int i = 0; i < rows.length; i++) {
            boolean fresh = i == 0
                    || rows[i].cycle() - start >= LONGEST_BLOCK
                    || rows[i].cycle() > rows[i - 1].cycle() + 1
                    || !rows[i].labels().equals(rows[i - 1].labels());
            if (fresh) {
                current++;
                start = rows[i].cycle();
            }
            block[i] = current;
            step[i] = indexOf(rows[i].step());
            warming[i] = rates.rate(rows[i].cycle());
        }
        blocks = current + 1;
    }

    /** Place of a step, or −1. */
    int indexOf(String name) {
        for (int s = 0; s < steps.size(); s++) {
            if (steps.get(s).name().equals(name)) {
                return s;
            }
        }
        return -1;
    }

    /** The rows of a block at a step, as indices. */
    int[][] cells() {
        int[][] cells = new int[blocks * steps.size()][0];
        for (int i = 0; i < rows.length; i++) {
            int cell = block[i] * steps.size() + step[i];
            cells[cell] = Arrays.copyOf(cells[cell], cells[cell].length + 1);
            cells[cell][cells[cell].length - 1] = i;
        }
        return cells;
    }

    private static List<StepUsual> steps(List<Plateau> healthy) {
        List<String> names = new ArrayList<>();
        for (Plateau plateau : healthy) {
            if (!names.contains(plateau.step())) {
                names.add(plateau.step());
            }
        }
        List<StepUsual> all = new ArrayList<>();
        double most = 0;
        for (String name : names) {
            double pressure = 0;
            double power = 0;
            double flow = 0;
            int count = 0;
            for (Plateau plateau : healthy) {
                if (plateau.step().equals(name)) {
                    pressure += plateau.pressure();
                    power += plateau.power();
                    flow += plateau.flow();
                    count++;
                }
            }
            all.add(new StepUsual(name, pressure / count, power / count, flow / count));
            most = Math.max(most, flow / count);
        }
        double least = LEAST_FLOW * most;
        return all.stream().filter(step -> step.flow() > least).toList();
    }
}
