package swashlight.findings.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import swashlight.findings.belief.Belief;
import swashlight.findings.cause.Action;
import swashlight.findings.choice.Hill;
import swashlight.findings.choice.Ledger;
import swashlight.findings.choice.RepairOption;
import swashlight.findings.cost.Job;
import swashlight.findings.cost.Prices;

/**
 * What one machine costs in the end, comebacks and the right work after them included, by whoever decides on the same readings. All costs in the
 * currency of the prices, unit 1; the time of the readings, the same for all, is not in it.
 *
 * @param chosen key of the work that the finding expects to be cheapest
 * @param charted key of the work that a fixed chart calls for
 * @param promised cost that the finding expects of its choice, 1
 * @param byMoney true cost of that choice, 1
 * @param byAction true cost of doing what the likeliest action says, 1
 * @param exchange true cost of exchanging the drive whatever is read, 1
 * @param chart true cost of following the chart, 1
 * @param known cost of the best work for one who knows the truth, 1
 */
public record Bills(
        String chosen,
        String charted,
        double promised,
        double byMoney,
        double byAction,
        double exchange,
        double chart,
        double known) {

    /** Of a machine, of what is believed about it and of the likeliest action. */
    static Bills of(Simulated truth, Belief belief, Action likeliest, Prices prices, Hill hill) {
        Ledger believed = Ledger.of(belief, prices, hill);
        double[] expected = new double[believed.options().size()];
        double[] even = new double[believed.suspects()];
        Arrays.fill(even, 1);
        believed.expected(even, expected);
        int best = 0;
        for (int o = 1; o < expected.length; o++) {
            best = expected[o] < expected[best] ? o : best;
        }
        RepairOption chosen = believed.options().get(best);
        RepairOption charted = FixedChart.work(truth.machine());
        List<RepairOption> options = new ArrayList<>(believed.options());
        Ledger.of(truth.known(), prices, hill).options().stream()
                .filter(option -> !options.contains(option))
                .forEach(options::add);
        Ledger real = Ledger.of(options, truth.known(), prices, hill);
        double known = Double.MAX_VALUE;
        for (int o = 0; o < options.size(); o++) {
            known = Math.min(known, real.cost(0, o));
        }
        return new Bills(
                chosen.key(),
                charted.key(),
                expected[best],
                cost(real, chosen),
                cost(real, single(likeliest)),
                cost(real, new RepairOption(List.of(Job.EXCHANGE_DRIVE))),
                cost(real, charted),
                known);
    }

    private static RepairOption single(Action action) {
        return new RepairOption(Job.of(action).stream().toList());
    }

    private static double cost(Ledger real, RepairOption option) {
        return real.cost(0, real.options().indexOf(option));
    }
}
