package swashlight.findings.finding;

import java.util.List;
import swashlight.findings.cause.Action;

/**
 * All causes that call for the same action.
 *
 * @param action what to do
 * @param prior probability before anything was read, 1
 * @param probability that it is needed, alone or with another, after readings and looks, 1
 * @param error standard error of the probability from chance in the computing, 1
 * @param verdict on the action
 * @param causes likeliest first
 */
public record ActionFinding(
        Action action, double prior, double probability, double error, Verdict verdict, List<CauseFinding> causes) {
    public ActionFinding {
        causes = List.copyOf(causes);
    }
}
