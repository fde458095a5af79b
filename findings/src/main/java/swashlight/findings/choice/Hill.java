package swashlight.findings.choice;

import swashlight.drive.oil.Oil;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.InputState;
import swashlight.drive.steady.WheelState;

/**
 * What this customer's machine must do: full stroke and throttle up a slope.
 *
 * @param slope rad
 * @param load drawbar pull, N
 * @param oilTemperature K
 * @param share of the sound drive's speed there that must be reached, 1
 */
public record Hill(double slope, double load, double oilTemperature, double share) {
    /** 8°, no load, oil at 80 °C, 85 % of a sound drive's speed (own choice, no source). */
    public static Hill usual() {
        return new Hill(Math.toRadians(8), 0, 353.15, 0.85);
    }

    /** @throws IllegalArgumentException when a number is outside its range */
    public Hill {
        if (!(Math.abs(slope) <= 0.6 && load >= 0 && load <= 1e5 && share >= 0 && share <= 1.5)) {
            throw new IllegalArgumentException("hill: slope " + slope + " rad (−0.6 … 0.6), load " + load
                    + " N (0 … 1e5), share " + share + " (0 … 1.5)");
        }
    }

    /** The duty that it is. */
    public Duty duty() {
        return new Duty(
                new InputState.Running(1),
                1,
                oilTemperature,
                new WheelState.Ground(slope, load),
                0,
                0,
                Oil.ATMOSPHERE,
                false);
    }
}
