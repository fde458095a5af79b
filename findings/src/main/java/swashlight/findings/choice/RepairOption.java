package swashlight.findings.choice;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Part;
import swashlight.findings.cost.Job;
import swashlight.findings.cost.Price;
import swashlight.findings.cost.Prices;

/**
 * What could be done: nothing, one kind of work, or two together.
 *
 * @param jobs none, one or two
 */
public record RepairOption(List<Job> jobs) {
    /** Key of doing nothing. */
    public static final String LEAVE_ALONE = "leave-alone";

    public RepairOption {
        jobs = List.copyOf(jobs);
    }

    /** Stable name: {@code leave-alone}, the work's key, or both with a plus between. */
    public String key() {
        return jobs.isEmpty()
                ? LEAVE_ALONE
                : String.join("+", jobs.stream().map(Job::key).toList());
    }

    /** Whether a fault is right afterwards. */
    public boolean cures(Part part) {
        return jobs.stream().anyMatch(job -> job.cures(part));
    }

    /** Whether nothing is left of a cause. */
    public boolean cures(Cause cause) {
        return cause.parts().stream().allMatch(this::cures);
    }

    /** What is as new afterwards. */
    public Job.Renews renews() {
        Job.Renews most = Job.Renews.NOTHING;
        for (Job job : jobs) {
            most = job.renews().compareTo(most) > 0 ? job.renews() : most;
        }
        return most;
    }

    /** Time of one person, s. */
    public double time(Prices prices) {
        return jobs.stream().map(prices.jobs()::get).mapToDouble(Price::time).sum();
    }

    /** Work, parts and core on a machine with a cause, 1 (currency). */
    public double direct(Prices prices, Cause cause) {
        double sum = 0;
        for (Job job : jobs) {
            sum += prices.of(job);
            if (job == Job.EXCHANGE_DRIVE) {
                sum += prices.core().expected(cause.parts().stream().noneMatch(Job::inside));
            }
        }
        return sum;
    }

    /**
     * Nothing, each kind of work, and every two of those that the leading causes call for, an exchange with work outside among them.
     *
     * @param leading kinds of work that causes worth naming call for
     */
    static List<RepairOption> all(List<Job> leading) {
        List<RepairOption> all = new ArrayList<>();
        all.add(new RepairOption(List.of()));
        for (Job job : Job.values()) {
            all.add(new RepairOption(List.of(job)));
        }
        Set<Job> pairing = EnumSet.noneOf(Job.class);
        pairing.addAll(leading);
        if (pairing.contains(Job.RENEW_RUNNING_SET) || pairing.contains(Job.REPAIR_GEARS)) {
            pairing.add(Job.EXCHANGE_DRIVE);
        }
        List<Job> few = List.copyOf(pairing);
        for (int i = 0; i < few.size(); i++) {
            for (int j = i + 1; j < few.size(); j++) {
                boolean twice =
                        few.get(i).renews() == Job.Renews.INSIDE && few.get(j).renews() == Job.Renews.INSIDE;
                if (!twice) {
                    all.add(new RepairOption(List.of(few.get(i), few.get(j))));
                }
            }
        }
        return all;
    }
}
