package swashlight.findings.drain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import swashlight.findings.fit.Cholesky;
import swashlight.findings.fit.Likelihood;
import swashlight.findings.fit.NormalLaw;

/**
 * The likelihood of drain readings under a power law, dead-band rows as censored ones (Tobit).
 * <pre>
 *   ln q = ln C + m ln(Δp/p_r) + n ln(µ_r/µ) [+ d_s + e_s ln(Δp/p_r) in state s] + error,  sd σ
 *   reading at or above the start q_0:  density of ln q
 *   reading below it:                   chance of ln q &lt; ln q_0, the start itself known to ± u
 * </pre>
 * Parameters in order: ln C, m, n, then d_s, e_s for each further state, then ln σ. Source: Tobin 1958; Amemiya 1984.
 */
final class LeakRows implements Likelihood {
    private static final int FIRST_STATE = 3;

    private final double[] logFlow;
    private final double[] logPressure;
    private final double[] logFluidity;
    private final int[] state;
    private final int[] run;
    private final boolean[] censored;
    private final double[] logStart;
    private final double startSpread;
    private final List<String> states;

    LeakRows(List<DrainPoint> points, DrainAssumptions assumed) {
        int n = points.size();
        logFlow = new double[n];
        logPressure = new double[n];
        logFluidity = new double[n];
        state = new int[n];
        run = new int[n];
        censored = new boolean[n];
        logStart = new double[n];
        startSpread = assumed.meterStartSpread() / assumed.meterStart();
        states = new ArrayList<>();
        double reference = viscosity(assumed, assumed.referenceTemperature());
        for (int i = 0; i < n; i++) {
            DrainPoint point = points.get(i);
            if (!states.contains(point.state())) {
                states.add(point.state());
            }
            state[i] = states.indexOf(point.state());
            run[i] = point.run();
            double gap = point.outletTemperature()
                    + assumed.gapShare() * (point.caseTemperature() - point.outletTemperature());
            logFluidity[i] = Math.log(reference / viscosity(assumed, gap));
            logPressure[i] = Math.log(point.pressureDifference() / assumed.referencePressure());
            censored[i] = point.drainFlow() < assumed.meterStart();
            logFlow[i] = censored[i] ? 0 : Math.log(point.drainFlow());
            logStart[i] = Math.log(assumed.meterStart());
        }
    }

    private LeakRows(LeakRows other, int shiftedRun, double shift) {
        logFlow = other.logFlow.clone();
        logStart = other.logStart.clone();
        logPressure = other.logPressure;
        logFluidity = other.logFluidity;
        state = other.state;
        run = other.run;
        censored = other.censored;
        startSpread = other.startSpread;
        states = other.states;
        for (int i = 0; i < run.length; i++) {
            if (run[i] == shiftedRun) {
                logFlow[i] += shift;
                logStart[i] += shift;
            }
        }
    }

    /** µ at atmospheric pressure, Pa·s. */
    private static double viscosity(DrainAssumptions assumed, double temperature) {
        return assumed.oil().kinematicViscosity(temperature) * assumed.oil().density(temperature);
    }

    /** These rows with every flow of one run larger by a factor exp(shift). */
    LeakRows shifted(int shiftedRun, double shift) {
        return new LeakRows(this, shiftedRun, shift);
    }

    List<String> states() {
        return List.copyOf(states);
    }

    List<Integer> runs() {
        List<Integer> runs = new ArrayList<>();
        for (int one : run) {
            if (!runs.contains(one)) {
                runs.add(one);
            }
        }
        return runs;
    }

    int parameters() {
        return FIRST_STATE + 2 * (states.size() - 1) + 1;
    }

    static int offsetOf(int stateIndex) {
        return FIRST_STATE + 2 * (stateIndex - 1);
    }

    int censoredCount() {
        int count = 0;
        for (boolean one : censored) {
            count += one ? 1 : 0;
        }
        return count;
    }

    /** A start near enough for any leak: the mean level, exponent 1, viscosity exponent 1. */
    double[] start() {
        double[] start = new double[parameters()];
        double sum = 0;
        for (int i = 0; i < rows(); i++) {
            sum += censored[i] ? 0 : logFlow[i] - logPressure[i] - logFluidity[i];
        }
        start[0] = sum / Math.max(1, rows() - censoredCount());
        start[1] = 1;
        start[2] = 1;
        start[parameters() - 1] = Math.log(0.2);
        return start;
    }

    double mean(int row, double[] point) {
        double mean = point[0] + point[1] * logPressure[row] + point[2] * logFluidity[row];
        if (state[row] > 0) {
            int k = offsetOf(state[row]);
            mean += point[k] + point[k + 1] * logPressure[row];
        }
        return mean;
    }

    @Override
    public int rows() {
        return logFlow.length;
    }

    @Override
    public double row(int row, double[] point) {
        double logDeviation = point[point.length - 1];
        double deviation = Math.exp(logDeviation);
        double mean = mean(row, point);
        if (!censored[row]) {
            return NormalLaw.logDensity((logFlow[row] - mean) / deviation) - logDeviation;
        }
        return NormalLaw.logBelow(
                (logStart[row] - mean) / Math.sqrt(deviation * deviation + startSpread * startSpread));
    }

    /** ∂ mean / ∂ parameter, without the last parameter (the scatter). */
    double[] design(int row) {
        double[] design = new double[parameters() - 1];
        design[0] = 1;
        design[1] = logPressure[row];
        design[2] = logFluidity[row];
        if (state[row] > 0) {
            design[offsetOf(state[row])] = 1;
            design[offsetOf(state[row]) + 1] = logPressure[row];
        }
        return design;
    }

    /** The rows that are readings, in order. */
    int[] metered() {
        int[] rows = new int[rows() - censoredCount()];
        for (int i = 0, k = 0; i < rows(); i++) {
            if (!censored[i]) {
                rows[k++] = i;
            }
        }
        return rows;
    }

    /** How the errors of the metered rows repeat. */
    SerialErrors errors(double[] point) {
        int[] rows = metered();
        double[][] design = new double[rows.length][];
        double[] left = new double[rows.length];
        int[] runs = new int[rows.length];
        for (int k = 0; k < rows.length; k++) {
            design[k] = design(rows[k]);
            left[k] = logFlow[rows[k]] - mean(rows[k], point);
            runs[k] = run[rows[k]];
        }
        return SerialErrors.of(design, left, runs);
    }

    /**
     * Covariance of the law's parameters when the errors repeat: the independent one, with the metered rows' part of the
     * information's middle replaced by Σ ρ^|i−j| x_i x_jᵀ and its scatter by the restricted one (sandwich).
     */
    double[][] covariance(double[][] independent, double[] point, SerialErrors errors) {
        int k = parameters() - 1;
        double plain = Math.exp(-2 * point[k]);
        double[][] bread = new double[k][];
        for (int a = 0; a < k; a++) {
            bread[a] = Arrays.copyOf(independent[a], k);
        }
        double[][] middle = Cholesky.of(bread).orElseThrow().inverse();
        int[] rows = metered();
        for (int i : rows) {
            double[] x = design(i);
            for (int j : rows) {
                if (run[i] != run[j]) {
                    continue;
                }
                double[] y = design(j);
                double weight = (Math.pow(errors.correlation(), Math.abs(i - j)) - (i == j ? 1 : 0)) * plain;
                for (int a = 0; a < k; a++) {
                    for (int b = 0; b < k; b++) {
                        middle[a][b] += weight * x[a] * y[b];
                    }
                }
            }
        }
        double widened = Math.max(1, errors.deviation() * errors.deviation() * plain);
        double[][] covariance = new double[k + 1][k + 1];
        for (int a = 0; a < k; a++) {
            for (int b = 0; b < k; b++) {
                for (int c = 0; c < k; c++) {
                    for (int d = 0; d < k; d++) {
                        covariance[a][b] += widened * bread[a][c] * middle[c][d] * bread[d][b];
                    }
                }
            }
        }
        covariance[k][k] = independent[k][k];
        return covariance;
    }
}
