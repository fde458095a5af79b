package swashlight.findings.wear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.DriveDescription;

/** Limits are where a machine just reaches what is required, and share one allowance. */
class LimitTableTest {
    private static final PartLeak LEAK = new PartLeak(70e5, 353.15);
    private static final Requirement CLIMB =
            new Requirement(Requirement.Kind.SPEED, true, 0.85, Math.toRadians(8), 0, 353.15, false);

    private static LimitTable table(DriveDescription drive, int machines) {
        return LimitTable.of(drive, List.of(CLIMB), LEAK, machines, 7);
    }

    private static PartLimit row(LimitTable table, String key) {
        return table.rows().stream()
                .filter(row -> row.part().key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /** Law: a thousandth less wear than the limit reaches it, a thousandth more does not; every part of an exactly known drive. */
    @Test
    void aLimitIsWhereTheMachineJustReachesIt() {
        DriveDescription drive = Drives.exact();
        LimitTable table = table(drive, 1);
        assertThat(table.reached()).isEqualTo(1);
        for (PartLimit row : table.rows()) {
            if (row.alone().decides()) {
                double limit = row.alone().wear().middle();
                double room = limit - row.fresh().middle();
                double[] just = drive.vector();
                double form = form(drive, row.part());
                row.part().wear(just, limit - 0.005 * room, form);
                assertThat(table.yardstick().margin(just)).as(row.part().key()).isPositive();
                double[] over = drive.vector();
                row.part().wear(over, limit + 0.005 * room, form);
                assertThat(table.yardstick().margin(over)).as(row.part().key()).isNegative();
            }
        }
    }

    /** The shape that was drawn for the only machine. */
    private static double form(DriveDescription drive, WearPart part) {
        return new WornMachines(drive, List.of(), 1, 7).form(0, part);
    }

    /** Law: whatever leaks from both sides to the case costs the same speed for the same litres, so all such limits leak alike. */
    @Test
    void limitsOfPartsThatLeakAlikeLeakAlike() {
        LimitTable table = table(Drives.exact(), 1);
        double piston = added(row(table, "pump-worst-piston"));
        for (String key : List.of("pump-face-score", "motor-face-score", "motor-worst-piston")) {
            assertThat(added(row(table, key)) / piston).as(key).isCloseTo(1, within(0.02));
        }
    }

    private static double added(PartLimit row) {
        return row.leak() - row.leakFresh();
    }

    /** Law: what B's valve leaks does not matter to a machine that must only climb forwards, for B is then the low side. */
    @Test
    void theLowSideDoesNotDecide() {
        LimitTable table = table(Drives.typical(), 40);
        assertThat(row(table, "make-up-valve-b").alone().beyond()).isGreaterThan(0.9);
        assertThat(row(table, "make-up-valve-b").alone().decides()).isFalse();
        assertThat(row(table, "make-up-valve-a").alone().decides()).isTrue();
    }

    /** With all parts worn to their shared limits at once the machine just reaches it. */
    @Test
    void sharedLimitsUseUpTheAllowanceTogether() {
        DriveDescription drive = Drives.exact();
        LimitTable table = table(drive, 1);
        double[] all = drive.vector();
        for (PartLimit row : table.rows()) {
            if (row.alone().decides()) {
                row.part().wear(all, row.alike().middle(), form(drive, row.part()));
            }
        }
        assertThat(table.yardstick().margin(all)).isCloseTo(0, within(1e-3));
    }

    /** Law: hotter oil, a steeper hill or more load leave less room; asking for less leaves more. */
    @Test
    void whoAsksForMoreMayWearLess() {
        DriveDescription drive = Drives.exact();
        double usual = limit(drive, CLIMB);
        assertThat(limit(
                        drive,
                        new Requirement(Requirement.Kind.SPEED, true, 0.85, Math.toRadians(12), 0, 353.15, false)))
                .isLessThan(usual);
        assertThat(limit(
                        drive,
                        new Requirement(Requirement.Kind.SPEED, true, 0.85, Math.toRadians(8), 300, 353.15, false)))
                .isLessThan(usual);
        assertThat(limit(
                        drive,
                        new Requirement(Requirement.Kind.SPEED, true, 0.85, Math.toRadians(8), 0, 373.15, false)))
                .isLessThan(usual);
        assertThat(limit(
                        drive, new Requirement(Requirement.Kind.SPEED, true, 0.7, Math.toRadians(8), 0, 353.15, false)))
                .isGreaterThan(usual);
    }

    private static double limit(DriveDescription drive, Requirement requirement) {
        LimitTable table = LimitTable.of(drive, List.of(requirement), LEAK, 1, 7);
        return row(table, "motor-piston-play").alone().wear().middle();
    }

    /** A roll: engine off, what leaks lets it creep, and the speed goes with the third power of the play where pistons leak alone. */
    @Test
    void aRollHasALimitToo() {
        DriveDescription drive = Drives.exact();
        Requirement roll = new Requirement(Requirement.Kind.ROLL, false, 0.05, -0.1, 0, 353.15, false);
        LimitTable table = LimitTable.of(drive, List.of(roll), LEAK, 1, 7);
        PartLimit play = row(table, "motor-piston-play");
        assertThat(play.alone().decides()).isTrue();
        double[] vector = drive.vector();
        play.part().wear(vector, play.alone().wear().middle(), 1);
        table.yardstick().margin(vector);
        assertThat(table.yardstick().performed(0)).isCloseTo(0.05, within(1e-4));
    }

    /** A machine that misses it new has no room at all, and says so. */
    @Test
    void whatNobodyReachesHasNoRoom() {
        Requirement race = new Requirement(Requirement.Kind.SPEED, false, 20, 0, 0, 353.15, false);
        LimitTable table = LimitTable.of(Drives.typical(), List.of(race), LEAK, 20, 7);
        assertThat(table.reached()).isZero();
        assertThat(table.rows())
                .allMatch(row -> row.alone().without() == 1 && !row.alone().decides());
        assertThat(Optional.of(table.yardstick().sensible())).contains(true);
    }
}
