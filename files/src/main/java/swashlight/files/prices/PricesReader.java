package swashlight.files.prices;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import swashlight.drive.description.Dimension;
import swashlight.files.document.Fields;
import swashlight.files.document.Heading;
import swashlight.files.document.Measure;
import swashlight.files.document.Range;
import swashlight.findings.cost.Job;
import swashlight.findings.cost.Price;
import swashlight.findings.cost.Prices;

/** Reads prices. What is left out follows from the price of a new drive and of an hour's work in the usual proportion. */
final class PricesReader {
    static final Range TIME = Range.of(Dimension.TIME, 0, 1e6);
    static final Range CHANCE = Range.of(Dimension.NUMBER, 0, 1);
    private static final double MOST = 1e7; // currency
    private static final double UNIT = 700; // invented
    private static final double HOURLY = 85; // invented
    private static final double HOUR = 3600; // s
    private static final int LONGEST = 60; // characters
    private static final int LONGEST_CURRENCY = 12; // characters

    private final Fields root;
    private String currency = "";

    PricesReader(Fields root) {
        this.root = root;
    }

    Prices read() {
        Heading.read(root, "prices", "prices");
        currency = root.text("currency", LONGEST_CURRENCY).orElse("");
        double hourly = money(root, "labour", "/h").orElse(HOURLY);
        double unit = money(root, "newDrive", "").orElse(UNIT);
        Prices usual = Prices.relativeTo(unit, hourly);
        Map<Job, Price> jobs = new EnumMap<>(usual.jobs());
        root.branch("jobs").ifPresent(branch -> {
            for (Job job : Job.values()) {
                branch.branch(job.key()).ifPresent(one -> jobs.put(job, price(one, jobs.get(job))));
            }
            branch.close();
        });
        Prices.Core core =
                root.branch("core").map(one -> core(one, usual.core())).orElse(usual.core());
        double comeback = money(root, "comeback", "").orElse(usual.comeback());
        double downtime = money(root, "downtime", "/h").orElse(0) / HOUR;
        Map<String, Double> readings = new HashMap<>();
        root.branch("readings").ifPresent(branch -> {
            for (String key : Reads.KEYS) {
                branch.measure(key, TIME).ifPresent(time -> readings.put(key, time.value()));
            }
            branch.close();
        });
        root.close();
        String named = currency.isEmpty() ? usual.currency() : currency;
        return new Prices(named, hourly / HOUR, jobs, core, comeback, downtime, readings);
    }

    private Price price(Fields one, Price usual) {
        double time = one.measure("time", TIME).map(Measure::value).orElse(usual.time());
        double parts = money(one, "parts", "").orElse(usual.parts());
        one.close();
        return new Price(time, parts);
    }

    private Prices.Core core(Fields one, Prices.Core usual) {
        double deposit = money(one, "deposit", "").orElse(usual.deposit());
        double refused = one.measure("refused", CHANCE).map(Measure::value).orElse(usual.refused());
        double noTrouble = money(one, "noTrouble", "").orElse(usual.noTrouble());
        one.close();
        return new Prices.Core(deposit, refused, noTrouble);
    }

    /** An amount: a number, the file's currency before or behind it or not at all, and what it is for. */
    private OptionalDouble money(Fields fields, String key, String per) {
        String given = fields.text(key, LONGEST).orElse("");
        if (given.isEmpty()) {
            return OptionalDouble.empty();
        }
        String text = given.strip();
        if (!per.isEmpty() && text.endsWith(per)) {
            text = text.substring(0, text.length() - per.length()).strip();
        }
        if (!currency.isEmpty() && text.endsWith(currency)) {
            text = text.substring(0, text.length() - currency.length()).strip();
        } else if (!currency.isEmpty() && text.startsWith(currency)) {
            text = text.substring(currency.length()).strip();
        }
        boolean number = text.matches("[0-9]{1,8}(\\.[0-9]{1,4})?");
        double amount = number ? Double.parseDouble(text) : -1;
        if (amount < 0 || amount > MOST) {
            String example = ("90 " + currency).strip() + per;
            fields.complain(
                    "not-money",
                    key,
                    given,
                    "an amount of money from 0 to 10 million is needed here",
                    "write a number, or a number with the file's currency, such as " + example);
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(amount);
    }
}
