package swashlight.findings.drain;

/**
 * One row of a case-drain test.
 *
 * @param state name of the pump's state, such as healthy
 * @param run number of the unbroken run the row belongs to; rows of one run follow one another
 * @param pressureDifference outlet less case, Pa, above 0
 * @param caseTemperature oil in the case drain, K
 * @param outletTemperature oil at the outlet, K
 * @param drainFlow as the drain meter shows it, m³/s
 * @param deliveredFlow as the delivery meter shows it, m³/s
 */
public record DrainPoint(
        String state,
        int run,
        double pressureDifference,
        double caseTemperature,
        double outletTemperature,
        double drainFlow,
        double deliveredFlow) {
    /** @throws IllegalArgumentException naming the first value outside its range */
    public DrainPoint {
        demand("pressureDifference", pressureDifference, Double.MIN_NORMAL, 1e8, "Pa");
        demand("caseTemperature", caseTemperature, 233, 423, "K");
        demand("outletTemperature", outletTemperature, 233, 423, "K");
        demand("drainFlow", drainFlow, -1e-3, 1e-2, "m³/s");
        demand("deliveredFlow", deliveredFlow, -1e-2, 1e-1, "m³/s");
    }

    private static void demand(String name, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException("drain point " + name + " is " + value + " " + unit
                    + "; it must lie between " + low + " and " + high);
        }
    }
}
