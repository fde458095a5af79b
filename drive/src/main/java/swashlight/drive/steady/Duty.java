package swashlight.drive.steady;

import swashlight.drive.oil.Oil;

/**
 * The conditions of one steady situation.
 *
 * <pre>
 *   input            what turns the input shaft
 *   stroke           pedal or lever, share of full travel          1     −1 … 1 (negative: reverse)
 *   oilTemperature   temperature of the oil in the loop            K     230 … 430
 *   wheels           what the wheels stand on
 *   brake            share of the brake's capacity applied         1     0 … 1
 *   bypass           how far the bypass is pulled open             1     0 … 1
 *   ambientPressure  air pressure in case and sump                 Pa    5e4 … 1.1e5
 *   fromRest         true when the machine starts from standstill (breakaway friction counts)
 * </pre>
 */
public record Duty(
        InputState input,
        double stroke,
        double oilTemperature,
        WheelState wheels,
        double brake,
        double bypass,
        double ambientPressure,
        boolean fromRest) {
    /** @throws IllegalArgumentException naming the first number outside its range */
    public Duty {
        demand("stroke", stroke, -1, 1);
        demand("oil temperature (K)", oilTemperature, 230, 430);
        demand("brake", brake, 0, 1);
        demand("bypass", bypass, 0, 1);
        demand("ambient pressure (Pa)", ambientPressure, 5e4, 1.1e5);
    }

    /**
     * Driving on the ground at full throttle.
     *
     * @param stroke share of full travel, −1 … 1, unit 1
     * @param oilTemperature K
     * @param slope rad, positive uphill
     */
    public static Duty driving(double stroke, double oilTemperature, double slope) {
        return new Duty(
                new InputState.Running(1),
                stroke,
                oilTemperature,
                new WheelState.Ground(slope, 0),
                0,
                0,
                Oil.ATMOSPHERE,
                false);
    }

    /**
     * Engine off and neutral on a slope: the roll-down test.
     *
     * @param oilTemperature K
     * @param slope rad, positive when the front points uphill
     */
    public static Duty rollDown(double oilTemperature, double slope) {
        return driving(0, oilTemperature, slope).with(new InputState.Off());
    }

    /** A copy with another input. */
    public Duty with(InputState other) {
        return new Duty(other, stroke, oilTemperature, wheels, brake, bypass, ambientPressure, fromRest);
    }

    /** A copy with other wheels. */
    public Duty with(WheelState other) {
        return new Duty(input, stroke, oilTemperature, other, brake, bypass, ambientPressure, fromRest);
    }

    /** A copy at another oil temperature, K. */
    public Duty withOilTemperature(double kelvin) {
        return new Duty(input, stroke, kelvin, wheels, brake, bypass, ambientPressure, fromRest);
    }

    /** A copy with another stroke, −1 … 1, unit 1. */
    public Duty withStroke(double share) {
        return new Duty(input, share, oilTemperature, wheels, brake, bypass, ambientPressure, fromRest);
    }

    /** A copy with another share of the brake applied, 0 … 1, unit 1. */
    public Duty withBrake(double share) {
        return new Duty(input, stroke, oilTemperature, wheels, share, bypass, ambientPressure, fromRest);
    }

    /** A copy with the bypass pulled by another share, 0 … 1, unit 1. */
    public Duty withBypass(double share) {
        return new Duty(input, stroke, oilTemperature, wheels, brake, share, ambientPressure, fromRest);
    }

    /** A copy that starts from standstill. */
    public Duty startingFromRest() {
        return new Duty(input, stroke, oilTemperature, wheels, brake, bypass, ambientPressure, true);
    }

    private static void demand(String name, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(name + " is " + value + "; it must lie between " + low + " and " + high);
        }
    }
}
