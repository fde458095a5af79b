package swashlight.drive.unit;

/**
 * A pump or motor without any loss, running: the yardstick of the efficiencies.
 *
 * <pre>
 *   Q = V ω/2π       ideal flow      m³/s
 *   T = V Δp/2π      ideal torque    N·m
 *
 *   V   displacement a turn          m³/rev
 *   ω   shaft speed                  rad/s
 *   Δp  pressure difference          Pa
 * </pre>
 *
 * Source: ISO 4391 (definitions, from memory). Check: {@code ideal-torque}, {@code ideal-torque-in}.
 *
 * @param displacement V, m³/rev
 * @param speed ω, rad/s
 * @param pressureDifference Δp, Pa
 */
public record IdealUnit(double displacement, double speed, double pressureDifference) {
    private static final double TURN = 2 * Math.PI; // rad a turn

    /** Q, m³/s. */
    public double flow() {
        return displacement * speed / TURN;
    }

    /** T, N·m. */
    public double torque() {
        return displacement * pressureDifference / TURN;
    }
}
