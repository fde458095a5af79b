package swashlight.findings.next;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.TypicalDrive;
import swashlight.findings.belief.Belief;
import swashlight.findings.cause.Lore;
import swashlight.findings.choice.Hill;
import swashlight.findings.choice.Ledger;
import swashlight.findings.cost.Prices;
import swashlight.findings.finding.Finder;
import swashlight.findings.finding.FinderOptions;
import swashlight.findings.reading.Look;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.wear.WearPart;

/** Looking and opening on a crowd of machines that come in weak and of which nothing was read. */
class StepsTest {
    private static final DriveDescription DRIVE = TypicalDrive.complete("typical", true, Map.of());
    private static final Prices PRICES = Prices.invented();
    private static Belief belief;
    private static Ledger ledger;

    @BeforeAll
    static void believe() {
        belief = new Finder(FinderOptions.usual(1)).found(noted(Set.of())).belief();
        ledger = Ledger.of(belief, PRICES, Hill.usual());
    }

    private static MachineCase noted(Set<Look> seen) {
        return new MachineCase("nothing read", true, "", DRIVE, List.of(), seen, Set.of());
    }

    private static List<StepWorth> steps(Set<Look> seen) {
        return Steps.of(belief, ledger, PRICES, Lore.seeds(), noted(seen));
    }

    private static StepWorth step(String key) {
        return steps(Set.of()).stream()
                .filter(each -> each.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Played out: 40,000 times a suspect is the truth, its looks are drawn by the table, the crowd is weighed by what was noted, and the work
     * that is then cheapest is paid for on the truth. The mean cost falls by the saving foretold, within four standard errors.
     */
    @Test
    void lookingSavesWhatItSavesWhenPlayedOut() {
        Lore lore = Lore.seeds();
        for (LookErrand errand : List.of(LookErrand.LISTEN, LookErrand.BELT, LookErrand.DEBRIS)) {
            Random chance = new Random(17);
            Map<Integer, Integer> best = new HashMap<>();
            double sum = 0;
            double square = 0;
            int plays = 40_000;
            int without = cheapest(filled(1));
            for (int n = 0; n < plays; n++) {
                int truth = chance.nextInt(belief.size());
                int noted = 0;
                for (int k = 0; k < errand.looks().size(); k++) {
                    double under = lore.chance(
                            errand.looks().get(k), belief.suspects().get(truth).cause());
                    noted |= chance.nextDouble() < under ? 1 << k : 0;
                }
                int answer = noted;
                int work = best.computeIfAbsent(noted, seen -> cheapest(weights(errand, lore, answer)));
                double fall = ledger.cost(truth, without) - ledger.cost(truth, work);
                sum += fall;
                square += fall * fall;
            }
            double mean = sum / plays;
            double error = Math.sqrt((square / plays - mean * mean) / plays);
            assertThat(step(errand.key()).saving()).as(errand.key()).isCloseTo(mean, within(4 * error + 1e-9));
        }
    }

    private static double[] weights(LookErrand errand, Lore lore, int noted) {
        double[] weight = filled(1);
        for (int s = 0; s < weight.length; s++) {
            Set<Look> seen = EnumSet.noneOf(Look.class);
            Set<Look> not = EnumSet.noneOf(Look.class);
            for (int k = 0; k < errand.looks().size(); k++) {
                ((noted & 1 << k) != 0 ? seen : not).add(errand.looks().get(k));
            }
            weight[s] =
                    lore.chance(seen, not, Set.of(), belief.suspects().get(s).cause());
        }
        return weight;
    }

    private static double[] filled(double value) {
        double[] all = new double[belief.size()];
        java.util.Arrays.fill(all, value);
        return all;
    }

    private static int cheapest(double[] weight) {
        double[] expected = new double[ledger.options().size()];
        ledger.expected(weight, expected);
        int best = 0;
        for (int o = 1; o < expected.length; o++) {
            best = expected[o] < expected[best] ? o : best;
        }
        return best;
    }

    /** Nobody is asked for what is noted already, and every look there is can be asked for once. */
    @Test
    void everyLookIsInOneErrandAndNoneIsAskedForTwice() {
        Set<Look> all = EnumSet.noneOf(Look.class);
        for (LookErrand errand : LookErrand.values()) {
            errand.looks()
                    .forEach(look -> assertThat(all.add(look)).as(look.key()).isTrue());
        }
        Set<Look> left = EnumSet.complementOf(EnumSet.copyOf(all));
        assertThat(left)
                .as("a number tells these: creep, push, roll, arm")
                .containsExactlyInAnyOrder(
                        Look.CREEPS_IN_NEUTRAL, Look.HARD_TO_PUSH, Look.ROLLS_AWAY, Look.ARM_SHORT_OF_STOP);
        List<StepWorth> after = steps(Set.of(Look.BELT_GLAZED, Look.MARKS_SHIFTED));
        assertThat(after).noneMatch(each -> each.key().equals("look-belt"));
        assertThat(after).anyMatch(each -> each.key().equals("look-cooling"));
    }

    /** Nothing saves more than knowing the cause; opening shows at least as much as one part of it, but for the edge of a few machines. */
    @Test
    void nothingSavesMoreThanKnowing() {
        double known = 0;
        for (int s = 0; s < ledger.suspects(); s++) {
            double least = Double.MAX_VALUE;
            for (int o = 0; o < ledger.options().size(); o++) {
                least = Math.min(least, ledger.cost(s, o));
            }
            known += least / ledger.suspects();
        }
        double[] now = new double[ledger.options().size()];
        ledger.expected(filled(1), now);
        double most = now[cheapest(filled(1))] - known;
        double opened = step("open-drive").saving();
        double spared = PRICES.ofTime(2.25 * 3600);
        for (StepWorth each : steps(Set.of())) {
            assertThat(each.saving()).as(each.key()).isBetween(0.0, most + (each.opens() ? spared : 0));
            assertThat(each.cost()).isGreaterThan(0);
            if (each.part().isPresent()) {
                assertThat(each.saving()).as(each.key()).isLessThan(opened + 0.02 * most);
            }
        }
        assertThat(steps(Set.of()))
                .filteredOn(StepWorth::opens)
                .hasSize(1 + WearPart.all().size());
    }

    /** Two minutes at a worn belt tell more of a machine that may have one than of any other; what was counted moves it. */
    @Test
    void beltsAreLookedAt() {
        assertThat(step("look-belt").net()).isGreaterThan(0);
        assertThat(step("open-drive").cost())
                .isGreaterThan(20 * step("look-belt").cost());
        assertThat(steps(Set.of()).get(0).net())
                .isGreaterThan(step("open-drive").net());
    }
}
