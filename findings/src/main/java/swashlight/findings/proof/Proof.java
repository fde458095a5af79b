package swashlight.findings.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import swashlight.findings.belief.Belief;
import swashlight.findings.choice.RepairOption;
import swashlight.findings.evidence.CauseMachine;
import swashlight.findings.evidence.Unknowns;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Forecast;
import swashlight.findings.expect.Rehearsal;
import swashlight.findings.finding.Found;
import swashlight.findings.reading.MachineCase;

/**
 * Readings before and after a repair, brought to common conditions and held against good repairs of this machine.
 *
 * <pre>
 *   corrected = read + middle of (common − taken)    SI unit of the comparison
 *   σ² = instrument² + spread² of (common − taken)   over the machines believed after those readings, errors of conditions with them
 * </pre>
 *
 * Fails when one reading fails, or when hardly one good repair in a hundred looks as bad in all readings together. Passes when none fails, one
 * good repair in ten looks as bad, and the readings would have noticed a repair that changed nothing. Otherwise nobody can tell.
 */
public final class Proof {
    private static final double TELLS = 0.5; // chance to notice of a reading that showed something, 1
    private static final long OTHER_STREAM = 0x2545F491L;

    private Proof() {}

    /**
     * What a repair comes to.
     *
     * @param before the case as it came in
     * @param found what was found of it
     * @param done the repair
     * @param after the same machine read afterwards
     * @param foundAfter what those readings say on their own
     * @param seed of all chance
     */
    public static ProofFinding of(
            MachineCase before, Found found, RepairOption done, MachineCase after, Found foundAfter, long seed) {
        List<Comparison> first = ProofPlan.usable(before.readings());
        List<Comparison> taken = ProofPlan.usable(after.readings());
        List<Comparison> common = new ArrayList<>();
        List<Optional<Comparison>> partners = new ArrayList<>();
        for (Comparison each : taken) {
            Optional<Comparison> partner = CommonConditions.partner(each, first);
            partners.add(partner);
            common.add(partner.map(own -> CommonConditions.common(own, each)).orElse(CommonConditions.exact(each)));
        }
        Judging judging = Judging.of(found.belief(), done, taken, common, seed);
        double[][] now = shown(foundAfter.belief(), taken, common, seed);
        List<ProvedReading> readings = new ArrayList<>();
        for (int i = 0; i < taken.size(); i++) {
            ProvedReading.Figure shown = corrected(taken.get(i), now[i], now[taken.size() + i]);
            Optional<Comparison> partner = partners.get(i);
            Optional<ProvedReading.Figure> earlier = Optional.empty();
            if (partner.isPresent()) {
                double[][] then = shown(found.belief(), List.of(partner.get()), List.of(common.get(i)), seed);
                earlier = Optional.of(corrected(partner.get(), then[0], then[1]));
            }
            Band good = judging.exact(i);
            readings.add(new ProvedReading(
                    taken.get(i).reading(),
                    partner.map(Comparison::reading),
                    common.get(i),
                    shown,
                    earlier,
                    good,
                    good.chance(shown.value(), shown.error()),
                    good.verdict(shown.value(), shown.error())));
        }
        boolean[] all = new boolean[taken.size()];
        Arrays.fill(all, true);
        double notices = judging.noticed(all);
        double asBad = judging.asBad(
                readings.stream().mapToDouble(each -> each.shown().value()).toArray(),
                readings.stream().mapToDouble(each -> each.shown().error()).toArray(),
                seed);
        List<PlannedReading> lacking = lacking(before, found.belief(), done, partners, seed);
        return new ProofFinding(
                verdict(readings, notices, asBad),
                notices,
                judging.cures(),
                asBad,
                readings,
                lacking,
                foundAfter.finding());
    }

    private static ProofVerdict verdict(List<ProvedReading> readings, double notices, double asBad) {
        boolean fails = asBad < ProofFinding.TOO_BAD;
        for (ProvedReading each : readings) {
            fails |= each.verdict() == ProofVerdict.FAIL;
        }
        boolean passes =
                !readings.isEmpty() && asBad >= ProofFinding.GOOD_ENOUGH && notices >= ProofFinding.NOTICES_ENOUGH;
        return fails ? ProofVerdict.FAIL : passes ? ProofVerdict.PASS : ProofVerdict.CANNOT_TELL;
    }

    /** Readings of the case that would notice, and that nobody took again. */
    private static List<PlannedReading> lacking(
            MachineCase before, Belief belief, RepairOption done, List<Optional<Comparison>> partners, long seed) {
        List<PlannedReading> lacking = new ArrayList<>();
        for (PlannedReading planned : ProofPlan.of(before, belief, done, seed).again()) {
            boolean taken = partners.stream()
                    .flatMap(Optional::stream)
                    .anyMatch(partner -> partner.reading().equals(planned.asked()));
            if (!taken && planned.notices() >= TELLS) {
                lacking.add(planned);
            }
        }
        return lacking;
    }

    private static ProvedReading.Figure corrected(Comparison read, double[] asTaken, double[] asCommon) {
        Shift shift = Shift.between(asTaken, asCommon);
        double error = Math.sqrt(read.error() * read.error() + shift.spread() * shift.spread());
        return new ProvedReading.Figure(read.value() + shift.middle(), error);
    }

    /** What readings show on the machines of a belief as they stand, as taken and then under common conditions. */
    private static double[][] shown(Belief belief, List<Comparison> taken, List<Comparison> common, long seed) {
        Rehearsal rehearsal = ProofPlan.twice(taken, common);
        Unknowns unknowns = new Unknowns(belief.drive(), rehearsal.errors());
        int readings = rehearsal.comparisons().size();
        double[][] shown = new double[readings][belief.size()];
        Forecast forecast = new Forecast(readings);
        Random chance = new Random(seed ^ OTHER_STREAM);
        for (int s = 0; s < belief.size(); s++) {
            new CauseMachine(belief.suspects().get(s).cause(), unknowns, rehearsal)
                    .predict(belief.suspects().get(s).severity(), belief.deviations(s, unknowns, chance), forecast);
            for (int i = 0; i < readings; i++) {
                shown[i][s] = forecast.value(i);
            }
        }
        return shown;
    }
}
