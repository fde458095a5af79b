package swashlight.findings.tie;

import java.util.Set;
import swashlight.findings.next.Errand;
import swashlight.findings.next.Tool;

/**
 * A reading that would tell what is to be done, were the cause one of a group.
 *
 * @param errand what is read
 * @param time of one person, warming up or cooling down with it, s
 * @param cost of that time, 1 (currency)
 * @param decides chance that afterwards one kind of work is as good as certain within the group, 1
 * @param right expected chance of the work that is likeliest afterwards, within the group, 1
 * @param lacking tools that are not there
 */
public record Separator(Errand errand, double time, double cost, double decides, double right, Set<Tool> lacking) {
    public Separator {
        lacking = Set.copyOf(lacking);
    }
}
