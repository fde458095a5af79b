package swashlight.findings.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import swashlight.findings.belief.Belief;
import swashlight.findings.choice.RepairOption;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Expected;
import swashlight.findings.expect.Rehearsal;
import swashlight.findings.finding.Candidate;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;

/**
 * Which readings prove a repair of one machine, and what each should be after a good one.
 *
 * <p>Those of the case again, under the same conditions, so that before and after compare; and of the usual ones those that would notice best if
 * the repair had changed nothing.
 *
 * @param again readings of the case
 * @param more usual readings, those that notice best first
 * @param notices chance that a repair which changed nothing fails by one of them at least, 1
 * @param cures of the machines with something wrong that the case may be, the share on which this work leaves nothing wrong, 1
 */
public record ProofPlan(List<PlannedReading> again, List<PlannedReading> more, double notices, double cures) {
    private static final int MOST = 5;
    private static final double WORTH = 0.2; // chance to notice, 1
    private static final double LONGEST = 300; // s that anyone waits for a wheel to creep on

    public ProofPlan {
        again = List.copyOf(again);
        more = List.copyOf(more);
    }

    /**
     * The plan.
     *
     * @param before the case as it came in
     * @param belief after its readings
     * @param done the repair
     */
    public static ProofPlan of(MachineCase before, Belief belief, RepairOption done, long seed) {
        List<Comparison> asked = new ArrayList<>();
        List<Optional<Candidate>> candidates = new ArrayList<>();
        for (Comparison own : usable(before.readings())) {
            asked.add(own);
            candidates.add(Optional.empty());
        }
        int again = asked.size();
        for (Candidate candidate : Candidate.of(before.drive())) {
            Comparison own = Comparison.of(
                    new Reading(candidate.key(), candidate.kind(), 1, OptionalDouble.empty(), candidate.setup()));
            asked.add(own);
            candidates.add(Optional.of(candidate));
        }
        Judging judging = Judging.of(belief, done, asked, asked, seed);
        List<PlannedReading> all = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            all.add(planned(asked.get(i), candidates.get(i), judging, i));
        }
        List<PlannedReading> more = new ArrayList<>(all.subList(again, all.size()));
        more.removeIf(each -> each.notices() < WORTH || lasts(each) > LONGEST);
        more.sort(Comparator.comparingDouble(PlannedReading::notices).reversed());
        List<PlannedReading> best = more.subList(0, Math.min(MOST, more.size()));
        boolean[] taken = new boolean[all.size()];
        for (int i = 0; i < taken.length; i++) {
            taken[i] = i < again || best.contains(all.get(i));
        }
        return new ProofPlan(all.subList(0, again), best, judging.noticed(taken), judging.cures());
    }

    /** Readings that can be compared; a dimension belongs to a teardown. */
    static List<Comparison> usable(List<Reading> readings) {
        return readings.stream()
                .filter(reading -> reading.kind() != ReadingKind.PART_DIMENSION)
                .filter(reading -> Comparison.hindrance(reading).isEmpty())
                .map(Comparison::of)
                .toList();
    }

    /** How long half of the good repairs take for a timed reading, s; 0 for any other. */
    private static double lasts(PlannedReading planned) {
        boolean timed = planned.asked().kind() == ReadingKind.ROLL_TIME
                || planned.asked().kind() == ReadingKind.RUN_TIME;
        if (!timed) {
            return 0;
        }
        return planned.middle() instanceof Expected.Value middle ? middle.value() : Double.MAX_VALUE;
    }

    private static PlannedReading planned(Comparison own, Optional<Candidate> candidate, Judging judging, int place) {
        Band real = judging.real(place);
        Expected one = own.told(real.low());
        Expected other = own.told(real.high());
        boolean turned = own.told(1) instanceof Expected.Value first
                && own.told(2) instanceof Expected.Value second
                && second.value() < first.value();
        double instrument = own.told(real.middle()) instanceof Expected.Value middle
                ? new Reading(
                                "",
                                own.reading().kind(),
                                middle.value(),
                                own.reading().error(),
                                own.reading().setup())
                        .standardError()
                : own.reading().kind().usualError(0);
        return new PlannedReading(
                own.reading(),
                candidate,
                candidate.isPresent() ? Optional.empty() : Optional.of(own.reading()),
                turned ? other : one,
                own.told(real.middle()),
                turned ? one : other,
                instrument,
                judging.notices(place),
                own.conditions().all());
    }

    /** Readings of the case and further ones. */
    public List<PlannedReading> all() {
        List<PlannedReading> all = new ArrayList<>(again);
        all.addAll(more);
        return all;
    }

    /** Rehearsal of readings twice: as they are taken, then under exact conditions. */
    static Rehearsal twice(List<Comparison> taken, List<Comparison> common) {
        List<Comparison> both = new ArrayList<>(taken);
        common.forEach(each -> both.add(CommonConditions.exact(each)));
        return new Rehearsal(both);
    }
}
