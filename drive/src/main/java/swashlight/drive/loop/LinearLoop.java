package swashlight.drive.loop;

/**
 * The simplest transmission: ideal pump, ideal motor, one laminar leak between the lines.
 *
 * <pre>
 *   Δp  = T/D_m
 *   ω_m = (x D_p ω_p − C Δp)/D_m
 *   stalled  Δp = x D_p ω_p/C          without relief
 *
 *   D_p, D_m  displacement a radian    m³
 *   x         stroke                   1       −1 … 1
 *   C         leak                     m³/(s·Pa)
 *   T         torque at the motor      N·m
 * </pre>
 *
 * A yardstick, not the drive: the whole steady view must meet it when everything else is taken away. Source: definition. Check:
 * {@code steady-speed}, {@code steady-pressure}, {@code stall-pressure}.
 *
 * @param pumpDisplacement D_p, m³ a radian
 * @param motorDisplacement D_m, m³ a radian
 * @param leak C, m³/(s·Pa)
 */
public record LinearLoop(double pumpDisplacement, double motorDisplacement, double leak) {
    /** @throws IllegalArgumentException when a displacement is not positive or the leak is negative */
    public LinearLoop {
        if (!(pumpDisplacement > 0) || !(motorDisplacement > 0) || !(leak >= 0)) {
            throw new IllegalArgumentException("a linear loop needs D_p, D_m > 0 and C ≥ 0: " + pumpDisplacement
                    + " m³, " + motorDisplacement + " m³, " + leak + " m³/(s·Pa)");
        }
    }

    /** Δp that a motor torque (N·m) asks for, Pa. */
    public double pressure(double torque) {
        return torque / motorDisplacement;
    }

    /** ω_m for a pump speed (rad/s), stroke (unit 1) and motor torque (N·m), rad/s. */
    public double motorSpeed(double pumpSpeed, double stroke, double torque) {
        return (stroke * pumpDisplacement * pumpSpeed - leak * pressure(torque)) / motorDisplacement;
    }

    /** Δp with the motor held and no relief valve, for a pump speed (rad/s) and stroke (unit 1), Pa. */
    public double stallPressure(double pumpSpeed, double stroke) {
        return stroke * pumpDisplacement * pumpSpeed / leak;
    }
}
