package swashlight.findings.evidence;

import swashlight.findings.expect.Forecast;

/** A machine in one stratum of severities: severity is the first of its unknowns, as a standard normal number. Counts what it is asked. */
final class LevelledMachine {
    private final Machine machine;
    private final Levels levels;
    private final int stratum;
    private final double[] nuisance;
    private int evaluations;

    LevelledMachine(Machine machine, Levels levels, int stratum) {
        this.machine = machine;
        this.levels = levels;
        this.stratum = stratum;
        nuisance = new double[machine.nuisances()];
    }

    /** How many unknowns, severity among them. */
    int unknowns() {
        return nuisance.length + 1;
    }

    boolean graded() {
        return levels.graded();
    }

    /** Severity at x, own unit. */
    double severity(double[] x) {
        return levels.severity(stratum, x[0]);
    }

    /** Predicts every reading at x, standard normal numbers. */
    void predict(double[] x, Forecast forecast) {
        evaluations++;
        System.arraycopy(x, 1, nuisance, 0, nuisance.length);
        machine.predict(severity(x), nuisance, forecast);
    }

    int evaluations() {
        return evaluations;
    }

    /** ln of likelihood times prior at x with its forecast, but for constants; 1. */
    static double logPosterior(Target target, double[] x, Forecast forecast) {
        double square = 0;
        for (double each : x) {
            square += each * each;
        }
        return WildLaw.logLikelihood(target, forecast) - 0.5 * square;
    }
}
