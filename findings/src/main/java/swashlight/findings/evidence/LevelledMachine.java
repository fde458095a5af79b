package swashlight.findings.evidence;

import swashlight.findings.expect.Forecast;

/** A machine in one stratum of severities: graded severities are the first of its unknowns, as standard normal numbers. */
final class LevelledMachine {
    private final Machine machine;
    private final Levels levels;
    private final int stratum;
    private final double[] nuisance;

    LevelledMachine(Machine machine, Levels levels, int stratum) {
        this.machine = machine;
        this.levels = levels;
        this.stratum = stratum;
        nuisance = new double[machine.nuisances()];
    }

    /** How many unknowns, graded severities among them. */
    int unknowns() {
        return levels.unknowns() + nuisance.length;
    }

    /** How many of them are severities; they come first. */
    int graded() {
        return levels.unknowns();
    }

    /** Severities at x, own units. */
    double[] severity(double[] x) {
        return levels.severity(stratum, x);
    }

    /** Predicts every reading at x, standard normal numbers. */
    void predict(double[] x, Forecast forecast) {
        System.arraycopy(x, levels.unknowns(), nuisance, 0, nuisance.length);
        machine.predict(severity(x), nuisance, forecast);
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
