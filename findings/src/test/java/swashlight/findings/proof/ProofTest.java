package swashlight.findings.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Causes;
import swashlight.findings.choice.RepairOption;
import swashlight.findings.cost.Job;
import swashlight.findings.finding.Finder;
import swashlight.findings.finding.FinderOptions;
import swashlight.findings.finding.Found;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;

/** Repairs of machines of the model whose truth is known. */
class ProofTest {
    private static final double HOT = 353.15; // K
    private static final Cause SCORED = Causes.find("motor-face-scored").orElseThrow();
    private static final RepairOption RUNNING_SET = new RepairOption(List.of(Job.RENEW_RUNNING_SET));
    private static final RepairOption RUNNING_SET_AND_BELT =
            new RepairOption(List.of(Job.RENEW_RUNNING_SET, Job.RENEW_BELT));
    private static final RepairOption BELT = new RepairOption(List.of(Job.RENEW_BELT));

    private static Found found(MachineCase machine, int number) {
        return new Finder(FinderOptions.quick(number)).found(machine);
    }

    private static ProofFinding proof(MachineCase before, RepairOption done, MachineCase after, int number) {
        return Proof.of(before, found(before, number), done, after, found(after, number), number);
    }

    /** Good repairs and repairs that changed nothing, read on a cooler day and a gentler hill: an unchanged machine never passes. */
    @Test
    void goodRepairsPassAndUnchangedMachinesFail() {
        Tally tally = Tally.of("motor-face-scored", 170e-6, Job.RENEW_RUNNING_SET, 6);
        assertThat(tally.good(ProofVerdict.PASS)).isGreaterThanOrEqualTo(4);
        assertThat(tally.good(ProofVerdict.FAIL)).isLessThanOrEqualTo(1);
        assertThat(tally.unchanged(ProofVerdict.PASS)).isZero();
        assertThat(tally.unchanged(ProofVerdict.FAIL)).isGreaterThanOrEqualTo(4);
    }

    /** Many of several kinds, told for docs/teardown.md: {@code -DargLine="-Dproofs=60"}. */
    @Test
    @EnabledIfSystemProperty(named = "proofs", matches = "[0-9]+")
    void tells() {
        int machines = Integer.getInteger("proofs");
        System.out.println(Tally.of("motor-face-scored", 170e-6, Job.RENEW_RUNNING_SET, machines));
        System.out.println(Tally.of("motor-face-scored", 100e-6, Job.RENEW_RUNNING_SET, machines));
        System.out.println(Tally.of("pump-bores-worn", 55e-6, Job.RENEW_RUNNING_SET, machines));
        System.out.println(Tally.of("belt-worn", 0.88, Job.RENEW_BELT, machines));
        System.out.println(Tally.of("oil-too-thin", 0.5, Job.CHANGE_OIL, machines));
        System.out.println(Tally.of("brake-drags", 60, Job.FREE_BRAKE, machines));
    }

    /** Half the fault left: better than before, and still no pass, since it is held against a good repair. */
    @Test
    void betterThanBeforeIsNotEnough() {
        Random chance = new Random(11);
        double[] machine = Yard.machine(chance);
        MachineCase before = Yard.read(machine, SCORED, new double[] {220e-6}, Yard.asked(HOT, 0.15), chance, 1);
        MachineCase after = Yard.read(machine, SCORED, new double[] {130e-6}, Yard.asked(HOT, 0.15), chance, 1);
        ProofFinding proof = proof(before, RUNNING_SET, after, 1);
        ProvedReading climb = proof.readings().get(1);
        assertThat(climb.gain().orElseThrow().value())
                .isGreaterThan(2 * climb.gain().orElseThrow().error());
        assertThat(proof.verdict()).isEqualTo(ProofVerdict.FAIL);
        assertThat(proof.after().actions().get(0).action().key()).isEqualTo("renew-running-set");
    }

    /** A belt renewed on a drive with a worn pump: held against that worn drive and not a new one, the belt passes. */
    @Test
    void wearThatTheWorkDoesNotTouchStays() {
        Random chance = new Random(31);
        double[] machine = Yard.machine(chance);
        Cause both = Causes.find("pump-face-worn+belt-worn").orElseThrow();
        Cause pump = Causes.find("pump-face-worn").orElseThrow();
        MachineCase before = Yard.read(machine, both, new double[] {28e-6, 0.9}, Yard.asked(HOT, 0.12), chance, 1);
        MachineCase after = Yard.read(machine, pump, new double[] {28e-6}, Yard.asked(HOT, 0.12), chance, 1);
        MachineCase fresh = Yard.read(machine, Yard.HEALTHY, new double[0], Yard.asked(HOT, 0.12), chance, 1);
        ProofFinding proof = proof(before, BELT, after, 1);
        assertThat(proof.verdict()).isNotEqualTo(ProofVerdict.FAIL);
        assertThat(proof.cures()).isLessThan(0.5);
        assertThat(after.readings().get(1).value())
                .isLessThan(0.95 * fresh.readings().get(1).value());
        assertThat(proof(before, BELT, before, 1).verdict()).isEqualTo(ProofVerdict.FAIL);
        assertThat(proof(before, RUNNING_SET_AND_BELT, after, 1).verdict()).isEqualTo(ProofVerdict.FAIL);
    }

    /** A number read without error on a cooler day comes to what the machine really does under the conditions of before. */
    @Test
    void readingsAreBroughtToTheConditionsOfBefore() {
        Random chance = new Random(5);
        double[] machine = Yard.machine(chance);
        List<Reading> hot = Yard.asked(HOT, 0.15);
        MachineCase before = Yard.read(machine, SCORED, new double[] {110e-6}, hot, chance, 0);
        MachineCase after = Yard.read(machine, SCORED, new double[] {110e-6}, Yard.asked(313.15, 0.12), chance, 0);
        ProofFinding proof = proof(before, RUNNING_SET, after, 1);
        for (int i = 0; i < proof.readings().size(); i++) {
            ProvedReading each = proof.readings().get(i);
            double truth = before.readings().get(i).value();
            assertThat(each.before().orElseThrow().label())
                    .isEqualTo(each.after().label());
            assertThat(each.shown().value())
                    .as(each.after().label())
                    .isCloseTo(truth, within(2 * each.shown().error()));
        }
        ProvedReading climb = proof.readings().get(1);
        double off = Math.abs(climb.after().value() - before.readings().get(1).value());
        double left = Math.abs(climb.shown().value() - before.readings().get(1).value());
        assertThat(left).isLessThan(off / 3);
    }

    /** Readings that would not notice prove nothing, whatever they show; what showed the fault is asked for again. */
    @Test
    void aPassOfBlindReadingsIsNoProof() {
        Random chance = new Random(8);
        double[] machine = Yard.machine(chance);
        MachineCase before = Yard.read(machine, SCORED, new double[] {170e-6}, Yard.asked(HOT, 0.15), chance, 1);
        List<Reading> engineOnly = Yard.asked(HOT, 0.15).subList(4, 5);
        MachineCase after = Yard.read(machine, Yard.HEALTHY, new double[0], engineOnly, chance, 0);
        ProofFinding proof = proof(before, RUNNING_SET, after, 1);
        assertThat(proof.notices()).isLessThan(0.5);
        assertThat(proof.verdict()).isEqualTo(ProofVerdict.CANNOT_TELL);
        assertThat(proof.lacking()).isNotEmpty();
    }

    /** The plan asks for what would notice, and expects of a repaired machine what it does. */
    @Test
    void thePlanExpectsWhatARepairedMachineShows() {
        Random chance = new Random(21);
        double[] machine = Yard.machine(chance);
        Cause worn = Causes.find("belt-worn").orElseThrow();
        MachineCase before = Yard.read(machine, worn, new double[] {0.9}, Yard.asked(HOT, 0.15), chance, 1);
        ProofPlan plan = ProofPlan.of(before, found(before, 1).belief(), BELT, 1);
        assertThat(plan.notices()).isGreaterThan(0.9);
        assertThat(plan.again()).hasSize(before.readings().size());
        PlannedReading input = plan.again().get(3);
        assertThat(input.notices()).isGreaterThan(0.8);
        MachineCase repaired = Yard.read(machine, Yard.HEALTHY, new double[0], Yard.asked(HOT, 0.15), chance, 0);
        double truth = repaired.readings().get(3).value();
        assertThat(truth).isBetween(number(input.low()), number(input.high()));
        assertThat(before.readings().get(3).value()).isLessThan(number(input.low()));
    }

    private static double number(swashlight.findings.expect.Expected expected) {
        return ((swashlight.findings.expect.Expected.Value) expected).value();
    }

    @Test
    void sameQuestionSameAnswer() {
        Random chance = new Random(2);
        double[] machine = Yard.machine(chance);
        MachineCase before = Yard.read(machine, SCORED, new double[] {110e-6}, Yard.asked(HOT, 0.15), chance, 1);
        Found found = found(before, 1);
        ProofPlan one = ProofPlan.of(before, found.belief(), RUNNING_SET, 4);
        assertThat(one).isEqualTo(ProofPlan.of(before, found.belief(), RUNNING_SET, 4));
    }
}
