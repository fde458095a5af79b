package swashlight.findings.tie;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.TypicalDrive;
import swashlight.findings.cost.Prices;
import swashlight.findings.finding.CauseFinding;
import swashlight.findings.finding.Finder;
import swashlight.findings.finding.FinderOptions;
import swashlight.findings.finding.Found;
import swashlight.findings.next.Prospect;
import swashlight.findings.next.Tool;
import swashlight.findings.reading.MachineCase;

/** What a machine of which nothing was read cannot tell: everything, since evidence is 1 for every cause. */
class TiesTest {
    private static final Prices PRICES = Prices.invented();
    private static Found found;
    private static Prospect prospect;

    @BeforeAll
    static void nothingRead() {
        DriveDescription drive = TypicalDrive.complete("typical", true, Map.of());
        MachineCase nothing = new MachineCase("nothing read", true, "", drive, List.of(), Set.of(), Set.of());
        found = new Finder(FinderOptions.usual(1)).found(nothing);
        prospect = Prospect.of(found.belief(), PRICES, 1);
    }

    /** By definition: P(c | nothing) / P(c) = 1 for all, so all that are likely enough stand in one group. */
    @Test
    void withoutReadingsAllCausesAreOneGroup() {
        List<Tie> ties = ties(Tool.usual());
        assertThat(ties).hasSize(1);
        assertThat(ties.get(0).causes()).hasSameSizeAs(likely()).containsAll(likely());
        assertThat(ties.get(0).matters()).isTrue();
    }

    @Test
    void aReadingNeedsItsTools() {
        assertThat(ties(Set.of())
                        .get(0)
                        .separator()
                        .map(reading -> reading.errand().tools()))
                .isIn(Optional.empty(), Optional.of(Set.of()));
        ties(Tool.usual())
                .get(0)
                .separator()
                .ifPresent(reading -> assertThat(reading.lacking()).isEmpty());
        ties(Set.of())
                .get(0)
                .better()
                .ifPresent(reading -> assertThat(reading.lacking()).isNotEmpty());
    }

    private static List<CauseFinding> likely() {
        return found.finding().causes().stream()
                .filter(cause -> cause.probability() >= 0.02)
                .toList();
    }

    private static List<Tie> ties(Set<Tool> have) {
        return new Ties(prospect, PRICES, have, List.of()).of(found.finding());
    }
}
