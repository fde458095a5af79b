package swashlight.findings.proof;

import java.util.Optional;
import swashlight.findings.expect.Condition;
import swashlight.findings.expect.Expected;
import swashlight.findings.finding.Candidate;
import swashlight.findings.reading.Reading;

/**
 * A reading to take after a repair.
 *
 * @param asked what and how
 * @param candidate the usual reading that it is; empty for one that was taken before
 * @param before what was read before; empty for a new one
 * @param low what one good repair in a hundred shows less than (a time: at most, told the other way round)
 * @param middle half of them
 * @param high one in a hundred shows more
 * @param instrument usual error at the middle, one standard deviation, SI unit of the reading
 * @param notices chance that a repair which changed nothing fails by this reading alone, 1
 * @param conditions how it is taken
 */
public record PlannedReading(
        Reading asked,
        Optional<Candidate> candidate,
        Optional<Reading> before,
        Expected low,
        Expected middle,
        Expected high,
        double instrument,
        double notices,
        java.util.List<Condition> conditions) {
    public PlannedReading {
        conditions = java.util.List.copyOf(conditions);
    }
}
