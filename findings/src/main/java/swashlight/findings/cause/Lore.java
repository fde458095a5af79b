package swashlight.findings.cause;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import swashlight.findings.reading.Look;
import swashlight.findings.reading.ReadingKind;

/**
 * What is known of causes before a number is read: how frequent they are, and what is seen under each. Seeds are estimates; counted cases move
 * them.
 *
 * <pre>
 *   odds of a cause   o = o_s N/Σ o_s + n          N = 100 cases, the seeds' weight;   n counted cases of it
 *   chance of a look  c = (c_s M + y)/(M + y + x)  M = 10 cases, the seed's weight;    y seen, x looked for and not seen
 * </pre>
 *
 * o, c: 1. Weights: own choice. Source: means of Dirichlet and beta laws (conjugate counting).
 */
public final class Lore {
    private static final double ODDS_WEIGHT = 100; // cases
    private static final double LOOK_WEIGHT = 10; // cases
    private static final double SURE = 1e-4; // chance nearer to 0 or 1 than that is never believed, 1

    private final Map<String, Integer> cases = new HashMap<>();
    private final Map<String, int[]> looks = new HashMap<>(); // seen, not seen
    private final double seedSum;

    private Lore(List<Tally> tallies) {
        seedSum = Causes.all().stream().mapToDouble(Cause::odds).sum();
        for (Tally tally : tallies) {
            if (tally.look().isEmpty()) {
                cases.merge(tally.cause(), tally.seen(), Integer::sum);
            } else {
                int[] counts =
                        looks.computeIfAbsent(place(tally.look().orElseThrow(), tally.cause()), key -> new int[2]);
                counts[0] += tally.seen();
                counts[1] += tally.notSeen();
            }
        }
    }

    /** Estimates alone. */
    public static Lore seeds() {
        return new Lore(List.of());
    }

    /** Estimates moved by counted cases. */
    public static Lore counted(List<Tally> tallies) {
        return new Lore(tallies);
    }

    /** Whether counted cases are in it. */
    public boolean counts() {
        return !cases.isEmpty() || !looks.isEmpty();
    }

    /** Odds of a cause, in cases; 1. */
    public double odds(Cause cause) {
        return cause.odds() * ODDS_WEIGHT / seedSum + cases.getOrDefault(cause.key(), 0);
    }

    /** Chance of noting a look under a cause, 1; two faults together multiply the odds by which each moves it. */
    public double chance(Look look, Cause cause) {
        if (cause.parts().isEmpty() || looks.containsKey(place(look, cause.key()))) {
            return counted(look, cause.key(), seed(look, cause));
        }
        double usual = LookOdds.otherwise(look) / (1 - LookOdds.otherwise(look));
        double odds = usual;
        for (Part part : cause.parts()) {
            String fault = part.fault().key();
            double under = counted(look, fault, LookOdds.under(look, fault));
            odds *= under / (1 - under) / usual;
        }
        return odds / (1 + odds);
    }

    private static double seed(Look look, Cause cause) {
        return cause.parts().size() > 1 ? LookOdds.otherwise(look) : LookOdds.under(look, cause.key());
    }

    private double counted(Look look, String key, double seed) {
        int[] counts = looks.getOrDefault(place(look, key), new int[2]);
        double chance = (seed * LOOK_WEIGHT + counts[0]) / (LOOK_WEIGHT + counts[0] + counts[1]);
        return Math.max(SURE, Math.min(1 - SURE, chance));
    }

    private static String place(Look look, String cause) {
        return look.key() + "/" + cause;
    }

    /** Chance of all that was seen and not seen under a cause, 1, but for what readings of these kinds tell better. */
    public double chance(Set<Look> seen, Set<Look> notSeen, Set<ReadingKind> read, Cause cause) {
        double chance = 1;
        for (Look look : Look.values()) {
            if (!look.toldBetterBy(read)) {
                if (seen.contains(look)) {
                    chance *= chance(look, cause);
                } else if (notSeen.contains(look)) {
                    chance *= 1 - chance(look, cause);
                }
            }
        }
        return chance;
    }
}
