package swashlight.findings.proof;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import swashlight.findings.belief.Belief;
import swashlight.findings.choice.RepairOption;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Rehearsal;

/** What good repairs show for some readings, and how well those would notice a repair that changed nothing. SI units of the comparisons. */
final class Judging {
    private static final int REPEATS = 8; // readings of each machine

    private final List<Comparison> taken;
    private final double[][] good; // under common conditions; by reading, then suspect
    private final double[][] unchanged;
    private final boolean[] sick;
    private final double cures;
    private final Band[] real;
    private final Band[] exact;
    private final double[] correction; // middle of common less taken on good machines
    private final double[] scatter; // from machine to machine

    private Judging(List<Comparison> taken, double[][] good, double[][] unchanged, RepairedMachines machines) {
        this.taken = taken;
        this.good = Arrays.copyOfRange(good, taken.size(), good.length);
        this.unchanged = unchanged;
        sick = new boolean[machines.size()];
        for (int s = 0; s < sick.length; s++) {
            sick[s] = machines.sick(s);
        }
        cures = machines.cures();
        int count = taken.size();
        real = new Band[count];
        exact = new Band[count];
        correction = new double[count];
        scatter = new double[count];
        for (int i = 0; i < count; i++) {
            real[i] = Band.of(taken.get(i).reading().kind(), good[i]);
            exact[i] = Band.of(taken.get(i).reading().kind(), good[count + i]);
            Shift shift = Shift.between(good[i], good[count + i]);
            correction[i] = shift.middle();
            scatter[i] = shift.spread();
        }
    }

    /** Of readings as taken, and under the conditions in which they are compared. */
    static Judging of(Belief belief, RepairOption done, List<Comparison> taken, List<Comparison> common, long seed) {
        RepairedMachines machines = new RepairedMachines(belief, done, seed);
        Rehearsal rehearsal = ProofPlan.twice(taken, common);
        return new Judging(taken, machines.shown(rehearsal, true), machines.shown(rehearsal, false), machines);
    }

    /** What good repairs show as the reading is taken, errors of its conditions with it. */
    Band real(int reading) {
        return real[reading];
    }

    /** What good repairs show under exact common conditions. */
    Band exact(int reading) {
        return exact[reading];
    }

    /** Of the machines with something wrong that the case may be, the share on which this work leaves nothing wrong, 1. */
    double cures() {
        return cures;
    }

    /** Chance that one reading fails a machine on which nothing was changed, 1; 0 where nothing was wrong with any. */
    double notices(int reading) {
        boolean[] alone = new boolean[taken.size()];
        alone[reading] = true;
        return noticed(alone);
    }

    /** Chance that one of some readings at least fails a machine on which nothing was changed, 1. */
    double noticed(boolean[] readings) {
        double sum = 0;
        int count = 0;
        for (int s = 0; s < sick.length; s++) {
            if (sick[s]) {
                double unseen = 1;
                for (int i = 0; i < readings.length; i++) {
                    unseen *= readings[i] ? 1 - failing(i, s) : 1;
                }
                sum += 1 - unseen;
                count++;
            }
        }
        return count > 0 ? sum / count : 0;
    }

    /**
     * Chance that a good repair looks as bad as these readings or worse, all of them together, 1.
     *
     * <pre>
     *   T = Σ z²,   z = how far a reading lies on the worse side of the middle of good repairs, over √(σ² + their variance)
     * </pre>
     *
     * against the same of good machines of the crowd, each read with the same errors; so readings that go together are not counted twice.
     *
     * @param shown readings under common conditions
     * @param errors of them, one standard deviation
     */
    double asBad(double[] shown, double[] errors, long seed) {
        Random chance = new Random(seed);
        double observed = badness(shown, errors);
        int worse = 0;
        int all = 0;
        double[] drawn = new double[shown.length];
        for (int s = 0; s < sick.length; s++) {
            for (int repeat = 0; repeat < REPEATS; repeat++) {
                for (int i = 0; i < drawn.length; i++) {
                    drawn[i] = good[i][s] + errors[i] * chance.nextGaussian();
                }
                worse += badness(drawn, errors) >= observed ? 1 : 0;
                all++;
            }
        }
        return (worse + 1.0) / (all + 1.0);
    }

    private double badness(double[] shown, double[] errors) {
        double sum = 0;
        for (int i = 0; i < shown.length; i++) {
            double z = exact[i].worse(shown[i], errors[i]);
            sum += z * z;
        }
        return sum;
    }

    private double failing(int reading, int suspect) {
        double shown = unchanged[reading][suspect] + correction[reading];
        double instrument = CommonConditions.instrument(taken.get(reading), unchanged[reading][suspect]);
        double error = Math.sqrt(instrument * instrument + scatter[reading] * scatter[reading]);
        return exact[reading].failing(shown, instrument, error);
    }
}
