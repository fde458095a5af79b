package swashlight.findings.proof;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Causes;
import swashlight.findings.choice.RepairOption;
import swashlight.findings.cost.Job;
import swashlight.findings.finding.Finder;
import swashlight.findings.finding.FinderOptions;
import swashlight.findings.finding.Found;
import swashlight.findings.reading.MachineCase;

/** How often good repairs, and repairs that changed nothing, pass, fail or cannot be told. */
record Tally(String cause, int[] good, int[] unchanged) {
    static Tally of(String key, double severity, Job job, int machines) {
        Cause cause = Causes.find(key).orElseThrow();
        Tally tally = new Tally(key + " " + severity, new int[3], new int[3]);
        RepairOption done = new RepairOption(List.of(job));
        for (int n = 0; n < machines; n++) {
            Random chance = new Random(700 + n);
            double[] machine = Yard.machine(chance);
            double[] level = {severity};
            MachineCase before = Yard.read(machine, cause, level, Yard.asked(353.15, 0.15), chance, 1);
            Finder finder = new Finder(FinderOptions.quick(n));
            Found first = finder.found(before);
            MachineCase cured = Yard.read(machine, Yard.HEALTHY, new double[0], Yard.asked(338.15, 0.13), chance, 1);
            MachineCase left = Yard.read(machine, cause, level, Yard.asked(338.15, 0.13), chance, 1);
            tally.good[verdict(before, first, done, cured, finder, n)]++;
            tally.unchanged[verdict(before, first, done, left, finder, n)]++;
        }
        return tally;
    }

    private static int verdict(
            MachineCase before, Found found, RepairOption done, MachineCase after, Finder finder, int seed) {
        return Proof.of(before, found, done, after, finder.found(after), seed)
                .verdict()
                .ordinal();
    }

    int good(ProofVerdict verdict) {
        return good[verdict.ordinal()];
    }

    int unchanged(ProofVerdict verdict) {
        return unchanged[verdict.ordinal()];
    }

    @Override
    public String toString() {
        return cause + ": pass, fail, cannot tell: good " + Arrays.toString(good) + ", unchanged "
                + Arrays.toString(unchanged);
    }
}
