package swashlight.findings.tie;

import java.util.List;
import java.util.Optional;
import swashlight.findings.finding.CauseFinding;

/**
 * Causes of which what was read and seen favours none over another by more than three to one.
 *
 * @param causes likeliest first, at least two
 * @param probability of all of them together, 1
 * @param matters whether they call for different work
 * @param settled chance of the likeliest work among them, 1
 * @param separator the cheapest reading with the tools at hand that would probably tell; where none would, the one that most likely does; where none
 *     does, the one that narrows most
 * @param better the same with any tool, where that decides more often
 */
public record Tie(
        List<CauseFinding> causes,
        double probability,
        boolean matters,
        double settled,
        Optional<Separator> separator,
        Optional<Separator> better) {
    public Tie {
        causes = List.copyOf(causes);
    }
}
