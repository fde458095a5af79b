package swashlight.findings.finding;

import java.util.List;
import swashlight.findings.cause.Action;

/**
 * The finding in one sentence's worth.
 *
 * @param verdict THIS when one action is as good as certain, else CANNOT_TELL
 * @param action the likeliest action
 * @param tied keys of the causes that share nine tenths of the probability, likeliest first
 * @param sameAction true when all tied causes call for the same action: telling them apart does not matter
 * @param contradiction true when no cause explains the readings without distrusting several of them
 * @param words in plain words
 */
public record Conclusion(
        Verdict verdict, Action action, List<String> tied, boolean sameAction, boolean contradiction, String words) {
    public Conclusion {
        tied = List.copyOf(tied);
    }
}
