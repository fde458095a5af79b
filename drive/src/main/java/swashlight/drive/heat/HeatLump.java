package swashlight.drive.heat;

/**
 * A body of one temperature that is heated and gives off heat in proportion to its rise: the plainest warm-up.
 *
 * <pre>
 *   C dT/dt = P − G (T − T_a)
 *   T(t) = T_a + P/G + (T_0 − T_a − P/G) e^(−t/τ),   τ = C/G
 *
 *   C    heat capacity                 J/K
 *   G    heat flow per kelvin, h A     W/K
 *   P    heating                       W
 *   T_a, T_0  surroundings, start      K
 * </pre>
 *
 * Holds while P and G do not change; a drive's own losses fall as its oil warms, so its warm-up follows this only piece by piece.
 * Source: energy balance. Check: {@code lump-rise}, {@code lump-time}, {@code lump-temperature}.
 *
 * @param capacity C, J/K
 * @param conductance G, W/K
 */
public record HeatLump(double capacity, double conductance) {
    /** @throws IllegalArgumentException when a value is not positive */
    public HeatLump {
        if (!(capacity > 0) || !(conductance > 0)) {
            throw new IllegalArgumentException(
                    "a heat lump needs C, G > 0: " + capacity + " J/K, " + conductance + " W/K");
        }
    }

    /** Rise over the surroundings at which it settles under a heating (W), K. */
    public double restingRise(double heating) {
        return heating / conductance;
    }

    /** τ, s. */
    public double timeConstant() {
        return capacity / conductance;
    }

    /** Rise over the surroundings after a time (s), from a rise at the start (K), under a heating (W); K. */
    public double rise(double startRise, double heating, double time) {
        double resting = restingRise(heating);
        return resting + (startRise - resting) * Math.exp(-time / timeConstant());
    }
}
