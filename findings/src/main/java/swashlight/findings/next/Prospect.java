package swashlight.findings.next;

import java.util.List;
import swashlight.findings.belief.Belief;
import swashlight.findings.cost.Prices;
import swashlight.findings.finding.Candidate;

/**
 * What every usual reading would show on every suspect: worked out once, for whoever ranks and whoever separates.
 *
 * @param belief the suspects
 * @param errands the readings
 * @param foreseen what each shows on each
 */
public record Prospect(Belief belief, List<Errand> errands, Foreseen foreseen) {
    public Prospect {
        errands = List.copyOf(errands);
    }

    /** Of a belief; prices tell the times; the seed is that of unstated errors of conditions. */
    public static Prospect of(Belief belief, Prices prices, long seed) {
        List<Errand> errands = Candidate.of(belief.drive()).stream()
                .map(candidate -> Errand.of(candidate, prices))
                .toList();
        return new Prospect(belief, errands, Foreseen.of(belief, errands, seed));
    }
}
