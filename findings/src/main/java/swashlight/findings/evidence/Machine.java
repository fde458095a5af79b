package swashlight.findings.evidence;

import swashlight.findings.expect.Forecast;

/** What a machine with a cause of some severity would show. */
public interface Machine {
    /** How many readings. */
    int readings();

    /** How many unknowns beside the severity, each standard normal. */
    int nuisances();

    /**
     * Predicts every reading.
     *
     * @param severity of each fault, in its own unit; empty for a sound machine
     * @param nuisance deviations in standard deviations
     * @param forecast takes the answers
     */
    void predict(double[] severity, double[] nuisance, Forecast forecast);
}
