package swashlight.findings.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.TypicalDrive;
import swashlight.findings.belief.Belief;
import swashlight.findings.cause.Action;
import swashlight.findings.cause.Cause;
import swashlight.findings.cost.Job;
import swashlight.findings.cost.Price;
import swashlight.findings.cost.Prices;
import swashlight.findings.finding.Finder;
import swashlight.findings.finding.FinderOptions;
import swashlight.findings.finding.Found;
import swashlight.findings.next.Prospect;
import swashlight.findings.next.Ranking;
import swashlight.findings.next.ReadingWorth;
import swashlight.findings.next.Tool;
import swashlight.findings.reading.MachineCase;

/** Costs on a crowd that nothing was read of. */
class LedgerTest {
    private static final DriveDescription DRIVE = TypicalDrive.complete("typical", true, Map.of());
    private static Belief belief;

    @BeforeAll
    static void believe() {
        MachineCase nothing = new MachineCase("nothing read", true, "", DRIVE, List.of(), Set.of(), Set.of());
        Found found = new Finder(FinderOptions.usual(1)).found(nothing);
        belief = found.belief();
    }

    /**
     * By hand: exchange 700 and 2.5 h at 90 are 925, a belt 60 and 0.7 h are 123; who exchanges a drive behind a bad belt pays both, 1048.
     */
    @Test
    void whoeverPaysForTheWrongWorkPaysForTheRightOneToo() {
        Map<Job, Price> jobs = new EnumMap<>(Prices.invented().jobs());
        jobs.put(Job.EXCHANGE_DRIVE, new Price(2.5 * 3600, 700));
        jobs.put(Job.RENEW_BELT, new Price(0.7 * 3600, 60));
        Prices prices = new Prices("", 90 / 3600.0, jobs, new Prices.Core(0, 0, 0), 0, 0, Map.of());
        Ledger ledger = Ledger.of(belief, prices, Hill.usual());
        int exchange = option(ledger, "exchange-drive");
        int belt = option(ledger, "renew-belt");
        int belts = 0;
        for (int s = 0; s < belief.size(); s++) {
            Cause cause = belief.suspects().get(s).cause();
            if (cause.key().equals("belt-worn") && !ledger.fails(s, belt)) {
                belts++;
                assertThat(ledger.cost(s, exchange)).isEqualTo(1048, within(1e-9));
                assertThat(ledger.cost(s, belt)).isEqualTo(123, within(1e-9));
            }
            if (cause.action() == Action.RENEW_RUNNING_SET && !ledger.fails(s, exchange)) {
                assertThat(ledger.cost(s, exchange)).isEqualTo(925, within(1e-9));
            }
        }
        assertThat(belts).isGreaterThan(20);
    }

    @Test
    void soundMachinesReachWhatIsRequiredAndExchangeCuresOnlyWhatIsInside() {
        Ledger ledger = Ledger.of(belief, Prices.invented(), Hill.usual());
        int leave = option(ledger, "leave-alone");
        int fresh = option(ledger, "new-drive");
        int sound = 0;
        int reach = 0;
        for (int s = 0; s < belief.size(); s++) {
            Cause cause = belief.suspects().get(s).cause();
            if (cause.parts().isEmpty()) {
                sound++;
                reach += ledger.fails(s, leave) ? 0 : 1;
            } else {
                assertThat(ledger.fails(s, leave)).isTrue();
            }
            boolean outside = Set.of(
                            Action.RENEW_BELT,
                            Action.ADJUST_CONTROL,
                            Action.FREE_BRAKE,
                            Action.RIGHT_WHEELS,
                            Action.CHANGE_USE,
                            Action.SERVICE_ENGINE,
                            Action.RESTORE_COOLING)
                    .contains(cause.action());
            if (outside) {
                assertThat(ledger.fails(s, fresh)).as(cause.key()).isTrue();
            }
        }
        assertThat(reach).isGreaterThanOrEqualTo((int) (0.9 * sound));
    }

    @Test
    void knowingTheCauseIsNeverDearerThanTheBestChoice() {
        Ledger ledger = Ledger.of(belief, Prices.invented(), Hill.usual());
        Choice choice = Choice.of(belief, ledger, Prices.invented(), Hill.usual());
        assertThat(choice.perfect()).isLessThanOrEqualTo(choice.best().total());
        assertThat(choice.margin()).isGreaterThanOrEqualTo(0);
        for (OptionFinding option : choice.options()) {
            assertThat(option.total()).isGreaterThanOrEqualTo(choice.best().total());
            assertThat(option.comeback()).isBetween(0.0, 1.0);
        }
    }

    /** No reading can save more than knowing the cause; a reading whose tool is not there is not proposed. */
    @Test
    void readingsSaveLessThanKnowingAndOnlyPossibleOnesAreProposed() {
        Prices prices = Prices.invented();
        Ledger ledger = Ledger.of(belief, prices, Hill.usual());
        Choice choice = Choice.of(belief, ledger, prices, Hill.usual());
        double most = choice.best().total() - choice.perfect();
        Prospect prospect = Prospect.of(belief, prices, 1);
        Ranking all = Ranking.of(prospect, ledger, prices, Set.of(Tool.values()), List.of());
        assertThat(all.impossible()).isEmpty();
        for (ReadingWorth reading : all.possible()) {
            assertThat(reading.saving()).isBetween(0.0, most + 1e-9);
        }
        assertThat(all.next()).isPresent();
        Ranking level = Ranking.of(prospect, ledger, prices, Set.of(Tool.TAPE, Tool.STOPWATCH), List.of());
        assertThat(level.possible())
                .isNotEmpty()
                .allMatch(reading -> Set.of(Tool.TAPE, Tool.STOPWATCH)
                        .containsAll(reading.errand().tools()));
    }

    private static int option(Ledger ledger, String key) {
        return ledger.options().stream().map(RepairOption::key).toList().indexOf(key);
    }
}
