package swashlight.findings.proof;

import java.util.Arrays;
import swashlight.findings.fit.NormalLaw;
import swashlight.findings.reading.ReadingKind;

/**
 * What good repairs of one machine show for a reading under exact conditions. A reading passes when the machine is, nine to one, no worse than
 * one good repair in a hundred; it fails when, nine to one, it is worse.
 *
 * <pre>
 *   P = Φ((a − low)/σ)  where less is worse,   Φ((high − a)/σ)  where more is worse,   the lesser where either is
 *
 *   a, σ        reading, and how well it is known     SI unit of its comparison
 *   low, high   one good repair in a hundred lies beyond  SI unit of its comparison
 * </pre>
 */
public final class Band {
    private static final double ONE_IN_A_HUNDRED = 0.01;
    private static final double ONE_DEVIATION = 0.8413; // share of a normal law below one standard deviation, 1
    private static final double SURE = 0.9; // 1, as elsewhere in findings
    private static final double SURE_DEVIATIONS = 1.2815515655446004; // normal quantile of SURE, 1

    private final Worse worse;
    private final double low;
    private final double middle;
    private final double high;
    private final double spread;

    private Band(Worse worse, double[] sorted) {
        this.worse = worse;
        low = quantile(sorted, ONE_IN_A_HUNDRED);
        middle = quantile(sorted, 0.5);
        high = quantile(sorted, 1 - ONE_IN_A_HUNDRED);
        spread = (quantile(sorted, ONE_DEVIATION) - quantile(sorted, 1 - ONE_DEVIATION)) / 2;
    }

    /** The band of a kind of reading from what good repairs show, SI unit of its comparison. */
    static Band of(ReadingKind kind, double[] shown) {
        double[] sorted = shown.clone();
        Arrays.sort(sorted);
        return new Band(Worse.of(kind), sorted);
    }

    static double quantile(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) Math.min(sorted.length - 2.0, Math.floor(place));
        return sorted.length == 1 ? sorted[0] : sorted[below] + (place - below) * (sorted[below + 1] - sorted[below]);
    }

    /** One good repair in a hundred lies below, SI unit of the comparison. */
    public double low() {
        return low;
    }

    /** Half of them lie below, SI unit of the comparison. */
    public double middle() {
        return middle;
    }

    /** One in a hundred lies above, SI unit of the comparison. */
    public double high() {
        return high;
    }

    /** Chance that a machine is no worse than one good repair in a hundred, 1; value and error in the SI unit of the comparison. */
    public double chance(double value, double error) {
        double enough = NormalLaw.below((value - low) / error);
        double notTooMuch = NormalLaw.below((high - value) / error);
        return switch (worse) {
            case LESS -> enough;
            case MORE -> notTooMuch;
            case EITHER -> Math.min(enough, notTooMuch);
        };
    }

    /** How far a reading lies on the worse side of the middle, in standard deviations of good repairs and its error together, 1. */
    double worse(double value, double error) {
        double off = (value - middle) / Math.sqrt(error * error + spread * spread);
        return switch (worse) {
            case LESS -> Math.max(0, -off);
            case MORE -> Math.max(0, off);
            case EITHER -> Math.abs(off);
        };
    }

    /** What a reading says; value and error in the SI unit of the comparison. */
    public ProofVerdict verdict(double value, double error) {
        double chance = chance(value, error);
        return chance >= SURE ? ProofVerdict.PASS : chance <= 1 - SURE ? ProofVerdict.FAIL : ProofVerdict.CANNOT_TELL;
    }

    /**
     * Chance that a machine which really shows a value fails, 1.
     *
     * @param value what it would show without instrument error, SI unit of the comparison
     * @param instrument error of one reading, same unit
     * @param error with which it is judged, same unit
     */
    double failing(double value, double instrument, double error) {
        double tooLittle = NormalLaw.below((low - SURE_DEVIATIONS * error - value) / instrument);
        double tooMuch = NormalLaw.below((value - high - SURE_DEVIATIONS * error) / instrument);
        return switch (worse) {
            case LESS -> tooLittle;
            case MORE -> tooMuch;
            case EITHER -> tooLittle + tooMuch;
        };
    }
}
