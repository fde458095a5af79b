package swashlight.findings.cause;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import swashlight.findings.reading.Look;
import swashlight.findings.reading.ReadingKind;

/** Laws of counting: few cases hardly move a seed, many replace it; what a reading tells better is left aside. */
final class LoreTest {
    private static final Cause BELT = Causes.find("belt-worn").orElseThrow();
    private static final Cause BRAKE = Causes.find("brake-drags").orElseThrow();

    @Test
    void manyCasesReplaceTheSeed() {
        Lore counted = Lore.counted(List.of(new Tally("belt-worn", Optional.of(Look.BELT_GLAZED), 2000, 8000)));
        assertThat(counted.chance(Look.BELT_GLAZED, BELT)).isCloseTo(0.2, within(0.001));
        assertThat(counted.chance(Look.BELT_GLAZED, BRAKE))
                .isEqualTo(Lore.seeds().chance(Look.BELT_GLAZED, BRAKE));
    }

    /** Mean of a beta law: (10·0.75 + 1)/(10 + 1), by hand. */
    @Test
    void oneCaseMovesALittle() {
        double seed = Lore.seeds().chance(Look.BELT_GLAZED, BELT);
        Lore counted = Lore.counted(List.of(new Tally("belt-worn", Optional.of(Look.BELT_GLAZED), 1, 0)));
        assertThat(seed).isCloseTo(0.75, within(1e-12));
        assertThat(counted.chance(Look.BELT_GLAZED, BELT)).isCloseTo(8.5 / 11, within(1e-12));
    }

    @Test
    void countedCasesMoveTheOdds() {
        Lore seeds = Lore.seeds();
        Lore counted = Lore.counted(List.of(new Tally("brake-drags", Optional.empty(), 50, 0)));
        assertThat(counted.odds(BRAKE) - seeds.odds(BRAKE)).isCloseTo(50, within(1e-9));
        assertThat(counted.odds(BELT)).isEqualTo(seeds.odds(BELT));
        double sum = Causes.all().stream().mapToDouble(seeds::odds).sum();
        assertThat(sum).isCloseTo(100, within(1e-9));
    }

    /** Two faults of which each makes a look likelier make it likelier still; no chance leaves 0 … 1. */
    @Test
    void twoFaultsShowMoreThanOne() {
        Lore lore = Lore.seeds();
        Cause pair = Causes.find("pump-face-worn+oil-degraded").orElseThrow();
        Cause one = Causes.find("pump-face-worn").orElseThrow();
        assertThat(lore.chance(Look.FADES_HOT, pair)).isGreaterThan(lore.chance(Look.FADES_HOT, one));
        for (Cause cause : Causes.all()) {
            for (Look look : Look.values()) {
                assertThat(lore.chance(look, cause)).isStrictlyBetween(0.0, 1.0);
            }
        }
    }

    @Test
    void whatAReadingTellsBetterIsLeftAside() {
        Lore lore = Lore.seeds();
        Set<Look> seen = Set.of(Look.HARD_TO_PUSH);
        assertThat(lore.chance(seen, Set.of(), Set.of(), BRAKE)).isGreaterThan(0.5);
        assertThat(lore.chance(seen, Set.of(), Set.of(ReadingKind.PUSH_FORCE), BRAKE))
                .isEqualTo(1);
    }
}
