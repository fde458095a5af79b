package swashlight.findings.next;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import swashlight.findings.belief.Belief;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Lore;
import swashlight.findings.choice.Ledger;
import swashlight.findings.cost.Job;
import swashlight.findings.cost.Prices;
import swashlight.findings.reading.Look;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.ReadingKind;

/**
 * What looking, listening and asking are worth. All that is noted in one go counts together: k looks have 2^k answers. They are taken as
 * independent once the cause is known, which overstates several that say the same.
 */
final class Looking {
    private final Belief belief;
    private final Prices prices;
    private final Lore lore;
    private final MachineCase machine;
    private final Sorted sorted;

    Looking(Belief belief, Ledger ledger, Prices prices, Lore lore, MachineCase machine) {
        this.belief = belief;
        this.prices = prices;
        this.lore = lore;
        this.machine = machine;
        double[][] cost = Opening.costs(ledger);
        this.sorted = new Sorted(Sorted.actions(belief), cost, cost);
    }

    /** Every errand of which something is not noted yet. */
    List<StepWorth> all() {
        List<StepWorth> all = new ArrayList<>();
        for (LookErrand errand : LookErrand.values()) {
            List<Look> open = open(errand);
            if (!open.isEmpty()) {
                all.add(worth(errand, open));
            }
        }
        return all;
    }

    /** Looks that are not noted, and that no reading tells better. */
    private List<Look> open(LookErrand errand) {
        Set<ReadingKind> read = EnumSet.noneOf(ReadingKind.class);
        machine.readings().forEach(reading -> read.add(reading.kind()));
        return errand.looks().stream()
                .filter(look ->
                        !machine.seen().contains(look) && !machine.notSeen().contains(look))
                .filter(look -> !look.toldBetterBy(read))
                .toList();
    }

    private StepWorth worth(LookErrand errand, List<Look> open) {
        int count = belief.size();
        double[][] chance = new double[open.size()][count];
        Map<Cause, double[]> known = new HashMap<>();
        for (int s = 0; s < count; s++) {
            double[] of = known.computeIfAbsent(
                    belief.suspects().get(s).cause(),
                    cause -> open.stream()
                            .mapToDouble(look -> lore.chance(look, cause))
                            .toArray());
            for (int k = 0; k < of.length; k++) {
                chance[k][s] = of[k];
            }
        }
        sorted.begin();
        double[] told = new double[count];
        for (int answer = 0; answer < 1 << open.size(); answer++) {
            for (int s = 0; s < count; s++) {
                told[s] = 1;
                for (int k = 0; k < open.size(); k++) {
                    told[s] *= (answer & 1 << k) != 0 ? chance[k][s] : 1 - chance[k][s];
                }
            }
            sorted.told(told);
        }
        double time = prices.readings().getOrDefault(errand.key(), errand.time());
        double oil = errand.drains() ? prices.jobs().get(Job.CHANGE_OIL).parts() : 0;
        return new StepWorth(
                errand.key(),
                errand.words(),
                open,
                Optional.empty(),
                false,
                time,
                prices.ofTime(time) + oil,
                sorted.saving(),
                sorted.gain());
    }
}
