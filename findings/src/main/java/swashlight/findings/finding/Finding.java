package swashlight.findings.finding;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import swashlight.findings.fit.Account;

/**
 * What a case comes to.
 *
 * @param caseName name of the case
 * @param conclusion the answer first
 * @param actions likeliest first, each with the causes that call for it; all causes are there, and a pair may call for two
 * @param readings beside what leading causes predict, in the order of the case
 * @param worst the reading that fits worst, when there are readings
 * @param missing what is still missing
 * @param effort seed and cost
 * @param account what was given, assumed, left out
 */
public record Finding(
        String caseName,
        Conclusion conclusion,
        List<ActionFinding> actions,
        List<ReadingFinding> readings,
        Optional<WorstFit> worst,
        Missing missing,
        Effort effort,
        Account account) {
    public Finding {
        actions = List.copyOf(actions);
        readings = List.copyOf(readings);
    }

    /** All causes, likeliest first. */
    public List<CauseFinding> causes() {
        return ranked(actions);
    }

    /** The causes of some actions, each once, likeliest first. */
    static List<CauseFinding> ranked(List<ActionFinding> actions) {
        return actions.stream()
                .flatMap(action -> action.causes().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new))
                .stream()
                .sorted((a, b) -> Double.compare(b.probability(), a.probability()))
                .toList();
    }

    /** Probability of a cause by its key, 1; 0 when there is no such cause. */
    public double probability(String causeKey) {
        return causes().stream()
                .filter(cause -> cause.cause().key().equals(causeKey))
                .mapToDouble(CauseFinding::probability)
                .sum();
    }
}
