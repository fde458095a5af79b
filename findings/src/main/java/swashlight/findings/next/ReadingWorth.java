package swashlight.findings.next;

import java.util.Set;

/**
 * One reading, judged by money.
 *
 * @param errand what is read
 * @param time of one person, warming up or cooling down with it, s
 * @param cost of that time, 1 (currency)
 * @param saving expected fall of the total cost, 1 (currency)
 * @param gain expected information about what is to be done, nat; unit 1
 * @param lacking tools that are not there
 */
public record ReadingWorth(Errand errand, double time, double cost, double saving, double gain, Set<Tool> lacking) {
    public ReadingWorth {
        lacking = Set.copyOf(lacking);
    }

    /** What remains of the saving, 1 (currency). */
    public double net() {
        return saving - cost;
    }
}
