package swashlight.findings.losses;

import java.util.OptionalDouble;

/**
 * One row of a bench table.
 *
 * @param speed ω of the shaft, rad/s, above 0
 * @param pressureDifference Δp between the ports, Pa, at least 0
 * @param flow measured at the high-pressure port, m³/s
 * @param torque measured at the shaft, N·m, where it was
 * @param temperature of the oil, K
 * @param share x of full stroke, 1, above 0 … 1
 */
public record BenchPoint(
        double speed, double pressureDifference, double flow, OptionalDouble torque, double temperature, double share) {
    /** @throws IllegalArgumentException naming the first value outside its range */
    public BenchPoint {
        demand("speed", speed, 1e-3, 1e4, "rad/s");
        demand("pressureDifference", pressureDifference, 0, 1e8, "Pa");
        demand("flow", flow, -1, 1, "m³/s");
        demand("torque", torque.orElse(0), -1e5, 1e5, "N·m");
        demand("temperature", temperature, 233, 423, "K");
        demand("share", share, 1e-3, 1, "");
    }

    private static void demand(String name, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException("bench point " + name + " is " + value + " " + unit
                    + "; it must lie between " + low + " and " + high);
        }
    }
}
