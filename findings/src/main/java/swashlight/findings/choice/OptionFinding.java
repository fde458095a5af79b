package swashlight.findings.choice;

/**
 * One option over all suspects.
 *
 * @param option what is done
 * @param direct work, parts and core, 1 (currency)
 * @param time of one person, s
 * @param slow speed at the hill afterwards that one suspect in ten stays below, m/s
 * @param middle half of them, m/s
 * @param fast nine in ten, m/s
 * @param comeback chance that the customer comes back, 1
 * @param total expected cost in the end, comebacks and the right work after them included, 1 (currency)
 * @param error of the total from so few suspects, one standard deviation, 1 (currency)
 */
public record OptionFinding(
        RepairOption option,
        double direct,
        double time,
        double slow,
        double middle,
        double fast,
        double comeback,
        double total,
        double error) {}
