package swashlight.findings.losses;

import java.util.List;
import java.util.Optional;
import swashlight.drive.unit.LossModel;
import swashlight.findings.fit.Account;
import swashlight.findings.fit.Estimate;
import swashlight.findings.fit.Figures;

/**
 * Which losses explain a bench table.
 *
 * @param estimates displacement, derived capacity, each loss of the best set, belief in each loss
 * @param flowSets sets of flow losses, best first
 * @param torqueSets sets of torque losses, best first; empty without torque
 * @param model the best sets as a loss model, without their constants
 * @param bulkModulus B of the compression loss, Pa; empty if it is not in the best set
 * @param account what was assumed, given, fitted, left out
 */
public record LossFinding(
        List<Estimate> estimates,
        List<TermSet> flowSets,
        List<TermSet> torqueSets,
        LossModel model,
        Optional<Double> bulkModulus,
        Account account) {
    private static final int SETS_SHOWN = 5;

    /** Keeps its own copies. */
    public LossFinding {
        estimates = List.copyOf(estimates);
        flowSets = List.copyOf(flowSets);
        torqueSets = List.copyOf(torqueSets);
    }

    /**
     * The estimate with a key, if there is one.
     *
     * @param key such as laminar
     */
    public Optional<Estimate> estimate(String key) {
        return estimates.stream().filter(e -> e.key().equals(key)).findFirst();
    }

    /** The whole finding as text. */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (Estimate estimate : estimates) {
            text.append("  ").append(estimate.line()).append('\n');
        }
        sets(text, "flow losses, L/min", flowSets, 6e4);
        sets(text, "torque losses, N·m", torqueSets, 1);
        return text.append(account.text()).toString();
    }

    private static void sets(StringBuilder text, String title, List<TermSet> sets, double unit) {
        if (!sets.isEmpty()) {
            text.append("sets of ").append(title).append(": belief, scatter, error at what was left out\n");
        }
        for (TermSet set : sets.subList(0, Math.min(SETS_SHOWN, sets.size()))) {
            text.append("  ")
                    .append(Figures.fixed(100 * set.weight(), 1))
                    .append(" %  ")
                    .append(Figures.significant(unit * set.deviation(), 3))
                    .append("  ")
                    .append(Figures.significant(unit * set.unseen(), 3))
                    .append("  ")
                    .append(set.terms().isEmpty() ? "no loss" : String.join(" + ", set.terms()))
                    .append('\n');
        }
    }
}
