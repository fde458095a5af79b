package swashlight.findings.choice;

import java.util.List;
import swashlight.drive.description.Parameters;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.SteadyPoint;
import swashlight.drive.steady.SteadySolver;
import swashlight.findings.belief.Belief;
import swashlight.findings.belief.Suspect;
import swashlight.findings.cause.Part;
import swashlight.findings.cost.Job;

/** The speed of one suspect at the customer's hill with some of its faults put right; what was computed once is kept. */
final class AfterRepair {
    private static final double UNKNOWN = -1; // m/s
    private static final String OIL = "oil";
    private static final List<String> INSIDE = List.of(OIL, "pump", "motor", "loop", "makeUp");

    private final Belief belief;
    private final Duty duty;
    private final SteadySolver solver = new SteadySolver();
    private final SteadyPoint point = new SteadyPoint();
    private final double[] vector = new double[Parameters.count()];
    private final boolean[] oil;
    private final boolean[] inside;
    private final double[] known = new double[4 * Job.Renews.values().length];

    AfterRepair(Belief belief, Hill hill) {
        this.belief = belief;
        this.duty = hill.duty();
        int size = belief.unknowns().parameters();
        oil = new boolean[size];
        inside = new boolean[size];
        for (int j = 0; j < size; j++) {
            String name = belief.unknowns().name(j);
            String section = name.substring(0, name.indexOf('.'));
            oil[j] = section.equals(OIL);
            inside[j] = INSIDE.contains(section);
        }
    }

    /** The speed of the drive exactly as described, m/s. */
    double described() {
        return speed(belief.drive().vector(), duty);
    }

    /** Goes on to the next suspect. */
    void forget() {
        java.util.Arrays.fill(known, UNKNOWN);
    }

    /** Speed of a suspect after an option, m/s; 0 when it stands, goes back, or finds no settled state. */
    double speed(Suspect suspect, RepairOption option) {
        List<Part> parts = suspect.cause().parts();
        int left = 0;
        for (int p = 0; p < parts.size(); p++) {
            left |= option.cures(parts.get(p)) ? 0 : 1 << p;
        }
        Job.Renews renews = option.renews();
        int place = left + 4 * renews.ordinal();
        if (known[place] < 0) {
            known[place] = computed(suspect, left, renews);
        }
        return known[place];
    }

    private double computed(Suspect suspect, int left, Job.Renews renews) {
        double[] z = suspect.unknowns().clone();
        for (int j = 0; j < oil.length; j++) {
            boolean renewed = renews == Job.Renews.INSIDE ? inside[j] : renews == Job.Renews.OIL && oil[j];
            z[j] = renewed ? 0 : z[j];
        }
        belief.unknowns().fill(z, vector);
        Duty asked = duty;
        List<Part> parts = suspect.cause().parts();
        for (int p = 0; p < parts.size(); p++) {
            if ((left & 1 << p) != 0) {
                parts.get(p).fault().apply(vector, suspect.severity()[p]);
                asked = parts.get(p).fault().on(asked, suspect.severity()[p]);
            }
        }
        return speed(vector, asked);
    }

    private double speed(double[] values, Duty asked) {
        solver.load(values);
        if (!solver.solve(asked)) {
            return 0;
        }
        point.fill(solver);
        return Math.max(0, point.groundSpeed());
    }
}
