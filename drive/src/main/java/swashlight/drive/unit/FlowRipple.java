package swashlight.drive.unit;

/**
 * Flow ripple of N pistons in rigid oil without leaks: what geometry alone does.
 *
 * <pre>
 *   (max − min)/mean   (π/2N) tan(π/4N)  odd N      (π/N) tan(π/2N)  even N
 *   (max − min)/max    1 − cos(π/2N)     odd N      1 − cos(π/N)     even N
 *   cycles a turn      o = 2N            odd N      o = N            even N
 *   order m o          2/((m o)² − 1) of the mean, m = 1, 2 …; every other order is empty
 *   sum of sines       mean N/π, greatest and least from the above
 * </pre>
 *
 * State which denominator is meant: books differ. Holds for sinusoidal pistons in any working order; oil that yields adds the tone at
 * order N. Source: Fourier series of a half sine, N of them; formulas as in Ivantysyn and Ivantysynova 2001 (from memory). Check:
 * {@code ripple-over-mean}, {@code ripple-over-max}, {@code ripple-cycles}, {@code ripple-harmonic}, {@code sine-sum-mean}.
 *
 * @param pistons N, unit 1, from 3
 */
public record FlowRipple(int pistons) {
    /** @throws IllegalArgumentException for fewer than three pistons */
    public FlowRipple {
        if (pistons < 3) {
            throw new IllegalArgumentException("flow ripple needs at least 3 pistons; given " + pistons);
        }
    }

    /** Ripple cycles a turn o, unit 1. */
    public int cyclesPerTurn() {
        return pistons % 2 == 0 ? pistons : 2 * pistons;
    }

    /** (max − min)/mean, unit 1. */
    public double overMean() {
        double half = Math.PI / (2.0 * cyclesPerTurn()); // half the angle between ripples over 2, rad
        return 2 * half * Math.tan(half);
    }

    /** (max − min)/max, unit 1. */
    public double overMax() {
        return 1 - Math.cos(Math.PI / cyclesPerTurn());
    }

    /** Amplitude of one order over the mean, unit 1. */
    public double harmonic(int order) {
        boolean empty = order <= 0 || order % cyclesPerTurn() != 0;
        return empty ? 0 : 2 / ((double) order * order - 1);
    }

    /** Mean sum of the positive sines, N/π, unit 1. */
    public double meanSum() {
        return pistons / Math.PI;
    }

    /** Greatest sum of the positive sines, unit 1. */
    public double greatestSum() {
        return meanSum() * overMean() / overMax();
    }

    /** Least sum of the positive sines, unit 1. */
    public double leastSum() {
        return greatestSum() * (1 - overMax());
    }

    /** Frequency of the pistons N ω/2π at a shaft speed ω (rad/s), Hz. */
    public double pistonFrequency(double speed) {
        return pistons * speed / (2 * Math.PI);
    }
}
