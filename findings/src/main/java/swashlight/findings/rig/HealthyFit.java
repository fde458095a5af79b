package swashlight.findings.rig;

import java.util.Arrays;
import java.util.List;
import swashlight.findings.fit.Cholesky;

/**
 * Fits the {@link HealthyLaw} to healthy cycles: generalised least squares with a drift a block, unruly rows weighed down
 * (Huber), the steps' departures drawn together, and a covariance by blocks (sandwich).
 * Source: Huber 1981 (weights); Liang and Zeger 1986 (sandwich); mixed-model theory for the block's drift.
 */
public final class HealthyFit {
    private static final int ROUNDS = 6;

    /** Residual above so many standard deviations is weighed down, 1 (Huber's constant, cautious). */
    private static final double HUBER = 2.5;

    /** Median absolute deviation of a normal law to its standard deviation, 1. */
    private static final double MEDIAN_TO_DEVIATION = 1.4826;

    private static final int FEWEST_ROWS_FOR_DRIFT = 8;

    private final HealthyRows rows;
    private final RigAssumptions assumed;
    private final int count;
    private final double[] noise;
    private double drift;
    private final double[] weight;

    private HealthyFit(List<Plateau> healthy, RigAssumptions assumed) {
        this.assumed = assumed;
        rows = new HealthyRows(healthy, assumed.cyclePeriod());
        int steps = rows.steps.size();
        count = 2 * steps + 1;
        noise = new double[steps];
        weight = new double[rows.rows.length];
        Arrays.fill(noise, 0.005 * RigAssumptions.LITRE_PER_MINUTE);
        Arrays.fill(weight, 1);
        drift = 0.003 * RigAssumptions.LITRE_PER_MINUTE;
    }

    /**
     * The healthy flow learnt from healthy cycles.
     *
     * @param healthy plateaus of cycles known to be without a leak, warm and cold, settled or not
     * @param assumed what is taken from outside
     * @throws IllegalArgumentException if there are too few
     */
    public static HealthyFlow of(List<Plateau> healthy, RigAssumptions assumed) {
        HealthyFit fit = new HealthyFit(healthy, assumed);
        if (fit.rows.blocks < 4 || fit.rows.rows.length < 4 * fit.count) {
            throw new IllegalArgumentException(
                    "healthy cycles: " + fit.rows.blocks + " blocks with " + fit.rows.rows.length
                            + " plateaus; at least 4 blocks and " + 4 * fit.count + " plateaus are needed");
        }
        return fit.learn();
    }

    private HealthyFlow learn() {
        Solved solved = solve(assumed.law());
        for (int round = 0; round < ROUNDS; round++) {
            reweigh(solved.left());
            solved = solve(assumed.law());
        }
        HealthyLaw[] moved = assumed.moved();
        double[][] movedPoints = new double[moved.length][];
        for (int k = 0; k < moved.length; k++) {
            movedPoints[k] = solve(moved[k]).point();
        }
        return new HealthyFlow(
                rows.steps,
                assumed,
                solved.point(),
                solved.modelled(),
                sandwich(solved),
                movedPoints,
                noise,
                drift,
                rows);
    }

    private record Solved(double[] point, double[][] modelled, double[] left, double[][] design, double[] white) {}

    private Solved solve(HealthyLaw law) {
        int n = rows.rows.length;
        double[][] design = new double[n][];
        double[] right = new double[n];
        double[] target = new double[n];
        for (int i = 0; i < n; i++) {
            Plateau row = rows.rows[i];
            double w = Math.sqrt(weight[i]) / noise[rows.step[i]];
            target[i] = row.flow() - law.given(row, rows.steps.get(rows.step[i]));
            design[i] = designRow(law, row, rows.step[i], rows.warming[i], rows.steps.size());
            right[i] = w * target[i];
            for (int j = 0; j < count; j++) {
                design[i][j] *= w;
            }
        }
        whiten(design, right);
        double[][] normal = new double[count][count];
        double[] moment = new double[count];
        for (int i = 0; i < n; i++) {
            for (int a = 0; a < count; a++) {
                moment[a] += design[i][a] * right[i];
                for (int b = 0; b <= a; b++) {
                    normal[a][b] += design[i][a] * design[i][b];
                }
            }
        }
        double held = assumed.stepSpread();
        for (int s = rows.steps.size() + 1; s < count; s++) {
            normal[s][s] += 1 / (held * held);
        }
        Cholesky factor = Cholesky.of(normal)
                .orElseThrow(() -> new IllegalArgumentException(
                        "healthy cycles all have one oil temperature; add some that are a few kelvin warmer"));
        double[] point = factor.solve(moment);
        double[] left = new double[n];
        for (int i = 0; i < n; i++) {
            double[] x = designRow(law, rows.rows[i], rows.step[i], rows.warming[i], rows.steps.size());
            left[i] = target[i];
            for (int j = 0; j < count; j++) {
                left[i] -= x[j] * point[j];
                right[i] -= design[i][j] * point[j];
            }
        }
        return new Solved(point, factor.inverse(), left, design, right);
    }

    static double[] designRow(HealthyLaw law, Plateau row, int step, double warming, int steps) {
        double[] x = new double[2 * steps + 1];
        double share = law.leakShare(row, warming);
        x[step] = 1;
        x[steps] = share;
        x[steps + 1 + step] = share;
        return x;
    }

    /** Takes out of each block-and-step cell the part its common drift explains: (I + d² w wᵀ)^(−½). */
    private void whiten(double[][] design, double[] right) {
        for (int[] cell : rows.cells()) {
            double square = 0;
            for (int i : cell) {
                double w = Math.sqrt(weight[i]) / noise[rows.step[i]];
                square += w * w;
            }
            if (square == 0) {
                continue;
            }
            double share = 1 - 1 / Math.sqrt(1 + drift * drift * square);
            for (int j = 0; j <= count; j++) {
                double along = 0;
                for (int i : cell) {
                    double w = Math.sqrt(weight[i]) / noise[rows.step[i]];
                    along += w * (j < count ? design[i][j] : right[i]);
                }
                for (int i : cell) {
                    double w = Math.sqrt(weight[i]) / noise[rows.step[i]];
                    double taken = share * along * w / square;
                    if (j < count) {
                        design[i][j] -= taken;
                    } else {
                        right[i] -= taken;
                    }
                }
            }
        }
    }

    /** Noise of each step from within the cells, drift from the cells' means, weights from both. */
    private void reweigh(double[] left) {
        double[] within = left.clone();
        double squares = 0;
        int cells = 0;
        for (int[] cell : rows.cells()) {
            double mean = 0;
            for (int i : cell) {
                mean += left[i] / cell.length;
            }
            for (int i : cell) {
                within[i] -= mean;
            }
            if (cell.length >= FEWEST_ROWS_FOR_DRIFT) {
                squares += mean * mean;
                cells++;
            }
        }
        for (int s = 0; s < noise.length; s++) {
            noise[s] = MEDIAN_TO_DEVIATION * 1.05 * medianSize(within, s);
        }
        drift = Math.max(Math.sqrt(squares / Math.max(1, cells)), 1e-4 * RigAssumptions.LITRE_PER_MINUTE);
        for (int i = 0; i < within.length; i++) {
            double size = Math.abs(within[i]) / noise[rows.step[i]];
            weight[i] = size > HUBER ? HUBER / size : 1;
        }
    }

    private double medianSize(double[] within, int step) {
        double[] sizes = new double[within.length];
        int n = 0;
        for (int i = 0; i < within.length; i++) {
            if (rows.step[i] == step) {
                sizes[n++] = Math.abs(within[i]);
            }
        }
        sizes = Arrays.copyOf(sizes, n);
        Arrays.sort(sizes);
        return Math.max(sizes[n / 2], 1e-4 * RigAssumptions.LITRE_PER_MINUTE);
    }

    private double[][] sandwich(Solved solved) {
        double[][] middle = new double[count][count];
        for (int block = 0; block < rows.blocks; block++) {
            double[] score = new double[count];
            for (int i = 0; i < rows.rows.length; i++) {
                if (rows.block[i] == block) {
                    for (int j = 0; j < count; j++) {
                        score[j] += solved.design()[i][j] * solved.white()[i];
                    }
                }
            }
            for (int a = 0; a < count; a++) {
                for (int b = 0; b < count; b++) {
                    middle[a][b] += score[a] * score[b];
                }
            }
        }
        for (int s = rows.steps.size() + 1; s < count; s++) {
            middle[s][s] += 1 / (assumed.stepSpread() * assumed.stepSpread());
        }
        double[][] c = solved.modelled();
        double[][] sandwich = new double[count][count];
        for (int a = 0; a < count; a++) {
            for (int b = 0; b < count; b++) {
                for (int k = 0; k < count; k++) {
                    for (int m = 0; m < count; m++) {
                        sandwich[a][b] += c[a][k] * middle[k][m] * c[m][b];
                    }
                }
            }
        }
        return sandwich;
    }
}
