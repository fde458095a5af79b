package swashlight.findings.next;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import swashlight.findings.belief.Belief;
import swashlight.findings.belief.Suspect;
import swashlight.findings.cause.Cause;
import swashlight.findings.evidence.CauseMachine;
import swashlight.findings.evidence.Unknowns;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Expected;
import swashlight.findings.expect.Forecast;
import swashlight.findings.expect.Rehearsal;
import swashlight.findings.reading.Reading;

/** What every errand would show on every suspect, errors of conditions with it, and how wide the instrument errs there. */
public final class Foreseen {
    private static final double SLOW = 1e-4; // SI unit of a comparison: a speed that still has a time

    private final double[][] value; // by errand, then suspect; SI unit of the comparison
    private final double[][] error;
    private final boolean[][] solved;

    private Foreseen(int errands, int suspects) {
        value = new double[errands][suspects];
        error = new double[errands][suspects];
        solved = new boolean[errands][suspects];
    }

    /** Takes all errands on all suspects; those under the same conditions share a solution. */
    public static Foreseen of(Belief belief, List<Errand> errands, long seed) {
        List<Comparison> asked = new ArrayList<>();
        for (Errand errand : errands) {
            asked.add(Comparison.of(new Reading(
                    errand.reading().key(),
                    errand.reading().kind(),
                    1,
                    OptionalDouble.empty(),
                    errand.reading().setup())));
        }
        Rehearsal rehearsal = new Rehearsal(asked);
        Unknowns unknowns = new Unknowns(belief.drive(), rehearsal.errors());
        Foreseen foreseen = new Foreseen(asked.size(), belief.size());
        Forecast forecast = new Forecast(asked.size());
        Random chance = new Random(seed);
        Map<Cause, CauseMachine> machines = new HashMap<>();
        for (int s = 0; s < belief.size(); s++) {
            Suspect suspect = belief.suspects().get(s);
            machines.computeIfAbsent(suspect.cause(), cause -> new CauseMachine(cause, unknowns, rehearsal))
                    .predict(suspect.severity(), belief.deviations(s, unknowns, chance), forecast);
            for (int e = 0; e < asked.size(); e++) {
                foreseen.value[e][s] = forecast.value(e);
                foreseen.solved[e][s] = forecast.solved(e);
                foreseen.error[e][s] = instrument(asked.get(e), forecast.value(e));
            }
        }
        return foreseen;
    }

    /** The instrument's usual error where the comparison stands at a value, both SI unit of the comparison. */
    private static double instrument(Comparison comparison, double value) {
        Reading asked = comparison.reading();
        double told =
                comparison.told(Math.max(Math.abs(value), SLOW)) instanceof Expected.Value number ? number.value() : 0;
        return Comparison.of(new Reading(asked.label(), asked.kind(), told, OptionalDouble.empty(), asked.setup()))
                .error();
    }

    /** What an errand shows on each suspect, SI unit of its comparison. */
    public double[] values(int errand) {
        return value[errand].clone();
    }

    /** The instrument's error on each suspect, one standard deviation, SI unit of its comparison. */
    public double[] errors(int errand) {
        return error[errand].clone();
    }

    /** Whether each suspect found a settled state. */
    public boolean[] solved(int errand) {
        return solved[errand].clone();
    }
}
