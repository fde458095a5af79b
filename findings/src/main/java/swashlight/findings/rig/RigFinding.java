package swashlight.findings.rig;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import swashlight.findings.fit.Account;
import swashlight.findings.fit.Estimate;
import swashlight.findings.fit.Figures;

/**
 * What a rig's cycles say.
 *
 * @param cycles the leak of each cycle
 * @param verdicts its class, in the same order
 * @param estimates the healthy law's own leak, and the form of each class of leak
 * @param account what was assumed, given, fitted, left out
 */
public record RigFinding(
        List<CycleLeak> cycles, List<LeakRule.Verdict> verdicts, List<Estimate> estimates, Account account) {
    /** Keeps its own copies. */
    public RigFinding {
        cycles = List.copyOf(cycles);
        verdicts = List.copyOf(verdicts);
        estimates = List.copyOf(estimates);
    }

    /**
     * Leaks and classes of all cycles among some plateaus.
     *
     * @param healthy learnt from healthy cycles
     * @param plateaus any cycles of the same duty
     * @param rule where the classes meet
     */
    public static RigFinding of(HealthyFlow healthy, List<Plateau> plateaus, LeakRule rule) {
        List<CycleLeak> cycles = healthy.leaks(plateaus);
        List<LeakRule.Verdict> verdicts = new ArrayList<>();
        Map<LeakClass, List<CycleLeak>> byClass = new EnumMap<>(LeakClass.class);
        for (LeakClass one : LeakClass.values()) {
            byClass.put(one, new ArrayList<>());
        }
        for (CycleLeak cycle : cycles) {
            LeakRule.Verdict verdict = rule.of(cycle);
            verdicts.add(verdict);
            byClass.get(verdict.likeliest()).add(cycle);
        }
        double unit = RigAssumptions.LITRE_PER_MINUTE;
        List<Estimate> estimates = new ArrayList<>();
        estimates.add(Estimate.symmetric(
                "own-leak",
                healthy.ownLeak() / unit,
                healthy.factor() * healthy.ownLeakSpread() / unit,
                "L/min",
                "leak through the sound pump's gaps at 156 bar and 36 °C, as far as it answers to the oil's thinning"));
        for (LeakClass one : List.of(LeakClass.SOME, LeakClass.SEVERE)) {
            LeakForm.of(byClass.get(one), byClass.get(LeakClass.NONE), one.words())
                    .ifPresent(estimates::addAll);
        }
        return new RigFinding(cycles, verdicts, estimates, RigAccount.of(healthy, rule));
    }

    /** The finding as text, a line a cycle. */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (Estimate estimate : estimates) {
            text.append("  ").append(estimate.line()).append('\n');
        }
        text.append("cycle  oil °C  bar     leak L/min  [95 %]            class\n");
        for (int i = 0; i < cycles.size(); i++) {
            CycleLeak cycle = cycles.get(i);
            Estimate leak = cycle.estimate();
            text.append(cycle.cycle())
                    .append("  ")
                    .append(Figures.fixed(cycle.temperature() - 273.15, 1))
                    .append("  ")
                    .append(Figures.fixed(cycle.pressure() / 1e5, 1))
                    .append("  ")
                    .append(Figures.fixed(leak.value(), 3))
                    .append("  [")
                    .append(Figures.fixed(leak.low(), 3))
                    .append(", ")
                    .append(Figures.fixed(leak.high(), 3))
                    .append("]  ")
                    .append(verdicts.get(i).words())
                    .append('\n');
        }
        return text.append(account.text()).toString();
    }
}
