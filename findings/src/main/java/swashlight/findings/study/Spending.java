package swashlight.findings.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What many machines cost in the end by whoever decides on the same readings; all in the currency of the prices, unit 1.
 *
 * @param machines whose costs were worked out
 * @param promised mean cost that the finding expected of its choices, 1
 * @param shares one for each way to decide, in the order of {@link By}
 */
public record Spending(int machines, double promised, List<Share> shares) {
    public Spending {
        shares = List.copyOf(shares);
    }

    /** Who decides. */
    public enum By {
        /** The finding: what is cheapest in the end over all that is believed. */
        MONEY("money", Bills::byMoney),
        /** The finding: what the likeliest action says. */
        ACTION("action", Bills::byAction),
        /** A fixed chart. */
        CHART("chart", Bills::chart),
        /** Nobody: always exchange. */
        EXCHANGE("exchange", Bills::exchange),
        /** One who knows the truth. */
        TRUTH("truth", Bills::known);

        private final String key;
        private final ToDoubleFunction<Bills> cost;

        By(String key, ToDoubleFunction<Bills> cost) {
            this.key = key;
            this.cost = cost;
        }

        /** Stable name. */
        public String key() {
            return key;
        }
    }

    /**
     * One way to decide.
     *
     * @param by whose
     * @param mean cost, 1
     * @param error of the mean, one standard deviation, 1
     * @param dearer than by money on the same machines, mean, 1
     * @param dearerError of it, one standard deviation, 1
     */
    public record Share(By by, double mean, double error, double dearer, double dearerError) {}

    /** Of all rows that have bills; nothing when there are fewer than two. */
    static Optional<Spending> of(List<StudyRow> rows) {
        List<Bills> bills = rows.stream().flatMap(row -> row.bills().stream()).toList();
        if (bills.size() < 2) {
            return Optional.empty();
        }
        List<Share> shares = new ArrayList<>();
        for (By by : By.values()) {
            double[] cost = mean(bills, by.cost);
            double[] more = mean(bills, bill -> by.cost.applyAsDouble(bill) - bill.byMoney());
            shares.add(new Share(by, cost[0], cost[1], more[0], more[1]));
        }
        return Optional.of(new Spending(bills.size(), mean(bills, Bills::promised)[0], shares));
    }

    /** One way to decide. */
    public Share share(By by) {
        return shares.get(by.ordinal());
    }

    /** Mean and its standard error. */
    private static double[] mean(List<Bills> bills, ToDoubleFunction<Bills> of) {
        double sum = 0;
        double square = 0;
        for (Bills bill : bills) {
            sum += of.applyAsDouble(bill);
        }
        double mean = sum / bills.size();
        for (Bills bill : bills) {
            double off = of.applyAsDouble(bill) - mean;
            square += off * off;
        }
        return new double[] {mean, Math.sqrt(square / bills.size() / (bills.size() - 1.0))};
    }
}
