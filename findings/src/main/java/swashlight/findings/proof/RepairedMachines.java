package swashlight.findings.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import swashlight.drive.description.Parameters;
import swashlight.findings.belief.Belief;
import swashlight.findings.belief.Suspect;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Part;
import swashlight.findings.choice.RepairOption;
import swashlight.findings.cost.Job;
import swashlight.findings.evidence.Unknowns;
import swashlight.findings.expect.Forecast;
import swashlight.findings.expect.Rehearsal;

/**
 * The suspects of a belief after a repair: as good ones and as if it had changed nothing (faults as they were), renewed parts drawn anew in
 * both. A good repair leaves the faults that its work does not touch, so that it is held against this worn machine and not a new one; but where
 * it touches none of them it was the wrong work, and what it should have come to is a machine with nothing wrong.
 */
final class RepairedMachines {
    private static final String OIL = "oil";
    private static final List<String> INSIDE = List.of(OIL, "pump", "motor", "loop", "makeUp");
    private static final long OTHER_STREAM = 0x5DEECE66DL;

    private final Belief belief;
    private final RepairOption done;
    private final boolean[] renewed;
    private final long seed;

    RepairedMachines(Belief belief, RepairOption done, long seed) {
        this.belief = belief;
        this.done = done;
        this.seed = seed;
        Unknowns unknowns = belief.unknowns();
        renewed = new boolean[unknowns.parameters()];
        for (int j = 0; j < renewed.length; j++) {
            String name = unknowns.name(j);
            String section = name.substring(0, name.indexOf('.'));
            renewed[j] = done.renews() == Job.Renews.INSIDE
                    ? INSIDE.contains(section)
                    : done.renews() == Job.Renews.OIL && section.equals(OIL);
        }
    }

    int size() {
        return belief.size();
    }

    /** Whether a suspect had anything wrong, so that a repair could miss it. */
    boolean sick(int suspect) {
        return !belief.suspects().get(suspect).cause().parts().isEmpty();
    }

    /** Whether work puts right at least one of the faults of a cause and leaves another. */
    static boolean leavesSome(RepairOption done, Cause cause) {
        return !done.cures(cause) && cause.parts().stream().anyMatch(done::cures);
    }

    /** Of the suspects with something wrong, the share on which the work leaves nothing wrong, 1; 1 where none has anything. */
    double cures() {
        int wrong = 0;
        int cured = 0;
        for (Suspect suspect : belief.suspects()) {
            wrong += suspect.cause().parts().isEmpty() ? 0 : 1;
            cured += !suspect.cause().parts().isEmpty() && done.cures(suspect.cause()) ? 1 : 0;
        }
        return wrong > 0 ? cured / (double) wrong : 1;
    }

    /** What is wrong with a suspect after a good repair. */
    private Suspect repaired(Suspect suspect) {
        List<Part> parts = suspect.cause().parts();
        List<Part> left = new ArrayList<>();
        double[] levels = new double[parts.size()];
        for (int p = 0; p < parts.size(); p++) {
            if (leavesSome(done, suspect.cause()) && !done.cures(parts.get(p))) {
                levels[left.size()] = suspect.severity()[p];
                left.add(parts.get(p));
            }
        }
        return new Suspect(new Cause(left, suspect.cause().odds()), levels, suspect.unknowns());
    }

    /**
     * What readings show on every suspect, by reading, then suspect; SI unit of each comparison. Where there is no settled state the machine
     * stands: 0.
     *
     * @param good repaired well, or as if nothing had been done
     */
    double[][] shown(Rehearsal rehearsal, boolean good) {
        int readings = rehearsal.comparisons().size();
        double[][] shown = new double[readings][size()];
        Unknowns unknowns = new Unknowns(belief.drive(), rehearsal.errors());
        Random chance = new Random(seed ^ OTHER_STREAM);
        Forecast forecast = new Forecast(readings);
        double[] vector = new double[Parameters.count()];
        double[] errors = new double[rehearsal.errors().size()];
        for (int s = 0; s < size(); s++) {
            double[] z = belief.deviations(s, unknowns, chance);
            for (int j = 0; j < renewed.length; j++) {
                double fresh =
                        chance.nextGaussian(); // always drawn, so that good and unchanged machines are the same ones
                z[j] = renewed[j] ? fresh : z[j];
            }
            System.arraycopy(z, unknowns.parameters(), errors, 0, errors.length);
            unknowns.fill(z, vector);
            Suspect believed = belief.suspects().get(s);
            Suspect suspect = good ? repaired(believed) : believed;
            suspect.cause().apply(vector, suspect.severity());
            rehearsal.run(vector, duty -> suspect.cause().on(duty, suspect.severity()), errors, forecast);
            for (int i = 0; i < readings; i++) {
                shown[i][s] = forecast.value(i);
            }
        }
        return shown;
    }
}
