package swashlight.drive.heat;

/**
 * One moment of a warm-up.
 *
 * @param time since the start, s
 * @param temperature of oil and case, K
 * @param heat lost inside the drive, W
 * @param groundSpeed m/s
 * @param axleSpeed rad/s
 * @param highPressure higher of the two side pressures, absolute, Pa
 */
public record WarmPoint(
        double time, double temperature, double heat, double groundSpeed, double axleSpeed, double highPressure) {}
