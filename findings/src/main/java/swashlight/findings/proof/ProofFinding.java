package swashlight.findings.proof;

import java.util.List;
import swashlight.findings.finding.Finding;

/**
 * What a repair comes to.
 *
 * @param verdict of all readings together
 * @param notices chance that these readings would have failed a repair which changed nothing, 1
 * @param cures of the machines with something wrong that the case might have been, the share on which this work leaves nothing wrong, 1
 * @param asBad chance that a good repair looks as bad or worse in all readings together, 1
 * @param readings in the order taken
 * @param lacking readings of the case that showed something and were not taken again
 * @param after what the readings after the repair say is wrong now
 */
public record ProofFinding(
        ProofVerdict verdict,
        double notices,
        double cures,
        double asBad,
        List<ProvedReading> readings,
        List<PlannedReading> lacking,
        Finding after) {
    /** A pass of readings that would hardly have noticed a failure is no proof; chance, 1. */
    public static final double NOTICES_ENOUGH = 0.8; // own choice

    /** Good repairs that look as bad less often than this are none; chance, 1. */
    public static final double TOO_BAD = 0.01; // own choice

    /** Readings as bad as those of one good repair in ten leave nothing to object to; chance, 1. */
    public static final double GOOD_ENOUGH = 0.1; // own choice

    public ProofFinding {
        readings = List.copyOf(readings);
        lacking = List.copyOf(lacking);
    }
}
