package swashlight.findings.rig;

import swashlight.findings.fit.Estimate;
import swashlight.findings.fit.NormalLaw;

/**
 * The leak found in one cycle, as a mean over its plateaus.
 *
 * @param cycle which
 * @param leak found, m³/s; scatters about 0 for a sound pump
 * @param deviation its standard deviation, m³/s
 * @param factor from standard deviation to 95 % half width, 1
 * @param pressure mean of the plateaus, Pa
 * @param temperature mean of the plateaus, K
 * @param delivered mean flow, m³/s
 * @param pressures of each plateau, Pa
 * @param leaks at each plateau, m³/s
 */
public record CycleLeak(
        int cycle,
        double leak,
        double deviation,
        double factor,
        double pressure,
        double temperature,
        double delivered,
        double[] pressures,
        double[] leaks) {
    /** Keeps its own copies. */
    public CycleLeak {
        pressures = pressures.clone();
        leaks = leaks.clone();
    }

    @Override
    public double[] pressures() {
        return pressures.clone();
    }

    @Override
    public double[] leaks() {
        return leaks.clone();
    }

    /** The leak with its 95 % interval, in L/min. */
    public Estimate estimate() {
        double unit = RigAssumptions.LITRE_PER_MINUTE;
        return Estimate.symmetric(
                "leak-" + cycle, leak / unit, factor * deviation / unit, "L/min", "inner leak of cycle " + cycle);
    }

    /**
     * Chance that the leak exceeds a share of what the pump would deliver without it.
     *
     * @param share of the healthy flow, 1
     * @return chance, 1
     */
    public double chanceAbove(double share) {
        double limit = share * (delivered + leak);
        return NormalLaw.below((leak - limit) / deviation);
    }
}
