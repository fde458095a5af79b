package swashlight.findings.rig;

import java.util.Optional;

/**
 * Means over one constant-load step of one cycle.
 *
 * @param cycle number of the cycle; cycles follow one another in time
 * @param step name of the step, the same load in every cycle
 * @param pressure at the pump's outlet, gauge, Pa
 * @param flow delivered, m³/s
 * @param power taken by the pump's motor, electrical, W
 * @param temperature of the oil, K
 * @param labels what is known of the rig's state, where it is; never used to find a leak
 */
public record Plateau(
        int cycle,
        String step,
        double pressure,
        double flow,
        double power,
        double temperature,
        Optional<PlateauLabels> labels) {
    /** @throws IllegalArgumentException naming the first value outside its range */
    public Plateau {
        demand("pressure", pressure, 0, 1e8, "Pa");
        demand("flow", flow, -1e-3, 1e-1, "m³/s");
        demand("power", power, 0, 1e7, "W");
        demand("temperature", temperature, 233, 423, "K");
    }

    private static void demand(String name, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    "plateau " + name + " is " + value + " " + unit + "; it must lie between " + low + " and " + high);
        }
    }
}
