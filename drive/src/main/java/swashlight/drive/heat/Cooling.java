package swashlight.drive.heat;

import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.HeatParameter;
import swashlight.drive.description.InputParameter;

/**
 * How the case gives its heat to the air.
 *
 * <pre>
 *   G = a (G_still + b (G_fan − G_still) ω/ω_0)
 *
 *   G          conductance to the air               W/K
 *   G_still    without a fan                        W/K
 *   G_fan      with the fan at the usual speed      W/K
 *   a          share of the surface that is clear   1     0.05 … 1
 *   b          share of the fan's effect left       1     0 … 1
 *   ω/ω_0      input speed over its usual speed     1     0 … 1.5
 *   C          heat capacity of drive and oil       J/K
 * </pre>
 *
 * Source: one-lump balance, Newton's law of cooling; fan share proportional to speed: common practice, no source. Check:
 * {@code lump-time}.
 *
 * @param capacity C, J/K
 * @param still a G_still, W/K
 * @param perFanSpeed a b (G_fan − G_still)/ω_0, W·s/(K·rad)
 * @param mostFanSpeed highest fan speed counted, rad/s
 */
public record Cooling(double capacity, double still, double perFanSpeed, double mostFanSpeed) {
    private static final double MOST_FAN_SHARE = 1.5; // of the usual speed, 1

    /** Cooling of a drive as described. */
    public static Cooling of(DriveDescription drive) {
        return of(drive.vector());
    }

    /** Cooling from a vector of values in index order, SI. */
    public static Cooling of(double[] vector) {
        double clear = vector[HeatParameter.FIN_SHARE.index()];
        double still = vector[HeatParameter.CONDUCTANCE_STILL.index()];
        double gain = Math.max(0, vector[HeatParameter.CONDUCTANCE_FAN.index()] - still);
        double usualSpeed =
                vector[InputParameter.ENGINE_NO_LOAD_SPEED.index()] * vector[InputParameter.BELT_SPEED_RATIO.index()];
        return new Cooling(
                vector[HeatParameter.CAPACITY.index()],
                clear * still,
                clear * vector[HeatParameter.FAN_SHARE.index()] * gain / usualSpeed,
                MOST_FAN_SHARE * usualSpeed);
    }

    /**
     * Conductance to the air.
     *
     * @param inputSpeed ω of the input shaft, rad/s
     * @return G, W/K
     */
    public double conductance(double inputSpeed) {
        return still + perFanSpeed * Math.min(mostFanSpeed, Math.abs(inputSpeed));
    }

    /**
     * Time constant τ = C/G.
     *
     * @param inputSpeed ω of the input shaft, rad/s
     * @return τ, s
     */
    public double timeConstant(double inputSpeed) {
        return capacity / conductance(inputSpeed);
    }
}
