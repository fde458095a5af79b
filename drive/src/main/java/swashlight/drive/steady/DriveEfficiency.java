package swashlight.drive.steady;

import java.util.Optional;

/**
 * How well a drive that pushes its load does: from input shaft to axle, the bearings' and gears' losses included.
 *
 * <pre>
 *   η   = T_axle ω_axle / (T_p ω_p)              0 … 1
 *   η_v = V_m ω_m / (V_p ω_p)                    share of the pump's geometric flow that turns the motor
 *   η_hm = η/η_v
 * </pre>
 *
 * Source: ISO 4391 for the parts (from memory); the whole as their product. Check: {@code transmission-overall}.
 *
 * @param overall η, unit 1
 * @param volumetric η_v of pump and motor together, unit 1
 * @param hydromechanical η_hm of pump, motor and gears together, unit 1
 */
public record DriveEfficiency(double overall, double volumetric, double hydromechanical) {
    /** The efficiency at a solved point; empty where the drive does not push (standing, overrunning, pushed, engine off). */
    public static Optional<DriveEfficiency> of(SteadyPoint point) {
        double in = point.pumpTorque() * point.pumpSpeed();
        double geometric = Math.abs(point.intoA(LedgerItem.PUMP_CARRY));
        double out = point.axleTorque() * point.axleSpeed();
        if (!(in > 0 && out > 0 && geometric > 0)) {
            return Optional.empty();
        }
        double volumetric = Math.abs(point.intoA(LedgerItem.MOTOR_CARRY)) / geometric;
        double overall = out / in;
        return Optional.of(new DriveEfficiency(overall, volumetric, overall / volumetric));
    }
}
