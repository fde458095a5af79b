package swashlight.drive.unit;

/**
 * How a unit runs when a loss model is asked.
 *
 * @param share x, displacement over greatest displacement, unit 1, 0 … 1
 * @param pressureDifference Δp, Pa, not negative
 * @param speed ω, rad/s, positive
 */
public record RunningPoint(double share, double pressureDifference, double speed) {
    /** @throws IllegalArgumentException when a value is outside its range */
    public RunningPoint {
        if (!(share >= 0 && share <= 1) || !(pressureDifference >= 0) || !(speed > 0)) {
            throw new IllegalArgumentException("a running point needs 0 ≤ x ≤ 1, Δp ≥ 0, ω > 0: x " + share + ", Δp "
                    + pressureDifference + " Pa, ω " + speed + " rad/s");
        }
    }
}
