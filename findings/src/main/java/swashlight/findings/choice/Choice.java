package swashlight.findings.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import swashlight.findings.belief.Belief;
import swashlight.findings.cost.Prices;

/**
 * What to do, cheapest in the end first.
 *
 * @param hill what is required where
 * @param required speed at the hill, m/s
 * @param options all, cheapest first
 * @param margin expected cost of the second less that of the first, 1 (currency)
 * @param marginError of it from so few suspects, one standard deviation, 1 (currency)
 * @param perfect expected cost if the cause were known, 1 (currency): what no testing can beat
 */
public record Choice(
        Hill hill, double required, List<OptionFinding> options, double margin, double marginError, double perfect) {
    private static final double SURE = 2; // standard errors
    private static final double SLIGHT = 0.03; // of the total, 1: a difference nobody should quarrel about (own choice)

    public Choice {
        options = List.copyOf(options);
    }

    /** The best. */
    public OptionFinding best() {
        return options.get(0);
    }

    /** Whether the first is cheaper than the second by more than chance and by more than a trifle. */
    public boolean matters() {
        return margin > SURE * marginError && margin > SLIGHT * best().total();
    }

    /** Ranks what a ledger holds. */
    public static Choice of(Belief belief, Ledger ledger, Prices prices, Hill hill) {
        int count = ledger.suspects();
        List<Integer> order = new ArrayList<>();
        double[] mean = new double[ledger.options().size()];
        double[] even = new double[count];
        Arrays.fill(even, 1);
        ledger.expected(even, mean);
        for (int o = 0; o < mean.length; o++) {
            order.add(o);
        }
        order.sort((a, b) -> Double.compare(mean[a], mean[b]));
        List<OptionFinding> found = new ArrayList<>();
        for (int o : order) {
            found.add(finding(belief, ledger, prices, o, mean[o]));
        }
        double square = 0;
        double perfect = 0;
        int first = order.get(0);
        int second = order.get(1);
        double margin = mean[second] - mean[first];
        for (int s = 0; s < count; s++) {
            double off = ledger.cost(s, second) - ledger.cost(s, first) - margin;
            square += off * off;
            double least = Double.MAX_VALUE;
            for (int o = 0; o < mean.length; o++) {
                least = Math.min(least, ledger.cost(s, o));
            }
            perfect += least / count;
        }
        double error = Math.sqrt(square / (count * Math.max(1.0, count - 1)));
        return new Choice(hill, ledger.required(), found, margin, error, perfect);
    }

    private static OptionFinding finding(Belief belief, Ledger ledger, Prices prices, int option, double mean) {
        int count = ledger.suspects();
        double[] speeds = new double[count];
        double direct = 0;
        double fails = 0;
        double square = 0;
        RepairOption what = ledger.options().get(option);
        for (int s = 0; s < count; s++) {
            speeds[s] = ledger.speed(s, option);
            direct += what.direct(prices, belief.suspects().get(s).cause()) / count;
            fails += ledger.fails(s, option) ? 1.0 / count : 0;
            double off = ledger.cost(s, option) - mean;
            square += off * off;
        }
        Arrays.sort(speeds);
        return new OptionFinding(
                what,
                direct,
                what.time(prices),
                speeds[count / 10],
                speeds[count / 2],
                speeds[Math.min(count - 1, 9 * count / 10)],
                fails,
                mean,
                Math.sqrt(square / (count * Math.max(1.0, count - 1))));
    }
}
