package swashlight.findings.cost;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

/**
 * What work, parts and mistakes cost one workshop. Money is in its own currency, written as unit 1.
 *
 * @param currency its sign or name
 * @param labour of one person, currency/s; unit 1/s
 * @param jobs time and parts of each kind of work; of the exchange without its core
 * @param core what is asked for an exchanged drive until the old one comes back
 * @param comeback what a customer who comes back costs before the right work is done: fetching, finding the cause for certain this time,
 *     good will, 1
 * @param downtime what the machine's standing costs the customer, currency/s of work; unit 1/s
 * @param readings time of readings that differs from the usual, by their keys, s
 */
public record Prices(
        String currency,
        double labour,
        Map<Job, Price> jobs,
        Core core,
        double comeback,
        double downtime,
        Map<String, Double> readings) {
    private static final double HOUR = 3600; // s
    private static final double UNIT = 700; // invented price of a new light drive, to which the rest is relative

    /** @throws IllegalArgumentException when a number is below 0 or absurd, or a kind of work has no price */
    public Prices {
        demand("labour", labour, 1e6);
        demand("comeback", comeback, 1e9);
        demand("downtime", downtime, 1e6);
        if (jobs.size() != Job.values().length) {
            throw new IllegalArgumentException(
                    "prices of " + jobs.size() + " kinds of work; all " + Job.values().length + " are needed");
        }
        jobs = Map.copyOf(jobs);
        readings = Map.copyOf(readings);
    }

    /**
     * What is asked for the old drive.
     *
     * @param deposit paid and given back when the core is taken, 1
     * @param refused chance that it is not taken, 1
     * @param noTrouble charged when nothing is found wrong with it, 1
     */
    public record Core(double deposit, double refused, double noTrouble) {
        /** @throws IllegalArgumentException when a number is outside its range */
        public Core {
            demand("deposit", deposit, 1e9);
            demand("chance refused", refused, 1);
            demand("no-trouble charge", noTrouble, 1e9);
        }

        /** Expected cost of giving back a drive that was bad or sound inside, 1 (currency). */
        public double expected(boolean sound) {
            return deposit * refused + (sound ? noTrouble : 0);
        }
    }

    /** Invented: a light drive at 700, work at 85 an hour, the rest in usual proportion (common practice, no source). */
    public static Prices invented() {
        return relativeTo(UNIT, 85);
    }

    /**
     * The usual proportions (common practice, no source).
     *
     * @param unit price of a new drive, 1 (currency)
     * @param hourly labour, currency/h; unit 1
     */
    public static Prices relativeTo(double unit, double hourly) {
        Map<Job, Price> jobs = new EnumMap<>(Job.class);
        put(jobs, Job.CHANGE_USE, 0.5, 0.20 * unit);
        put(jobs, Job.ADJUST_CONTROL, 0.75, 0.01 * unit);
        put(jobs, Job.CLOSE_BYPASS, 0.5, 0.01 * unit);
        put(jobs, Job.RENEW_BELT, 0.8, 0.07 * unit);
        put(jobs, Job.SERVICE_ENGINE, 1.5, 0.06 * unit);
        put(jobs, Job.FREE_BRAKE, 0.8, 0.03 * unit);
        put(jobs, Job.RIGHT_WHEELS, 0.6, 0.08 * unit);
        put(jobs, Job.RESTORE_COOLING, 0.6, 0.03 * unit);
        put(jobs, Job.CHANGE_OIL, 1.3, 0.06 * unit);
        put(jobs, Job.RENEW_MAKE_UP, 2.5, 0.08 * unit);
        put(jobs, Job.REPAIR_GEARS, 3.5, 0.30 * unit);
        put(jobs, Job.RENEW_RUNNING_SET, 4, 0.55 * unit);
        put(jobs, Job.EXCHANGE_DRIVE, 2.3, 0.65 * unit);
        put(jobs, Job.NEW_DRIVE, 2.3, unit);
        Core core = new Core(0.2 * unit, 0.1, 0.1 * unit);
        double comeback = 4 * hourly + 0.1 * unit;
        return new Prices("¤", hourly / HOUR, jobs, core, comeback, 0, new HashMap<>());
    }

    private static void put(Map<Job, Price> jobs, Job job, double hours, double parts) {
        jobs.put(job, new Price(hours * HOUR, parts));
    }

    /** Cost of time at work, s; unit 1 (currency), the customer's waiting with it. */
    public double ofTime(double time) {
        return time * (labour + downtime);
    }

    /** Cost of a kind of work before anything about the core, 1 (currency). */
    public double of(Job job) {
        Price price = jobs.get(job);
        return price.parts() + ofTime(price.time());
    }

    static void demand(String name, double value, double most) {
        if (!(value >= 0 && value <= most)) {
            throw new IllegalArgumentException(name + " is " + value + "; it must lie between 0 and " + most);
        }
    }
}
