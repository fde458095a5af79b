package swashlight.findings.next;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import swashlight.findings.belief.Belief;
import swashlight.findings.cause.Lore;
import swashlight.findings.choice.Ledger;
import swashlight.findings.cost.Prices;
import swashlight.findings.reading.MachineCase;

/** Looking and opening, what saves most first: stands beside the {@link Ranking} of readings. */
public final class Steps {
    private Steps() {}

    /** All that is left to look at or to open, by what it is worth. */
    public static List<StepWorth> of(Belief belief, Ledger ledger, Prices prices, Lore lore, MachineCase machine) {
        List<StepWorth> all = new ArrayList<>(new Looking(belief, ledger, prices, lore, machine).all());
        all.addAll(new Opening(belief, ledger, prices).all());
        all.sort(Comparator.comparingDouble(StepWorth::net).reversed());
        return List.copyOf(all);
    }

    /** Names of all of them, looks first. */
    public static List<String> keys() {
        return Stream.concat(Arrays.stream(LookErrand.values()).map(LookErrand::key), Stream.of(Opening.EVERYTHING))
                .toList();
    }
}
