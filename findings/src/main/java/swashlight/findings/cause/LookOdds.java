package swashlight.findings.cause;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import swashlight.findings.reading.Look;

/**
 * How often a look is noted under each cause. Own estimate and common practice, no source: to be replaced by counted cases. Looks are taken
 * as independent once the cause is known, which overstates several that say the same.
 */
public final class LookOdds {
    private static final Map<Look, Row> ROWS = rows();

    private LookOdds() {}

    private record Row(double otherwise, Map<String, Double> under) {}

    /** Chance of noting a look under a cause, 1; two faults together multiply the odds by which each moves it. */
    public static double chance(Look look, Cause cause) {
        Row row = ROWS.get(look);
        double usual = row.otherwise() / (1 - row.otherwise());
        double odds = usual;
        for (Part part : cause.parts()) {
            double under = row.under().getOrDefault(part.fault().key(), row.otherwise());
            odds *= under / (1 - under) / usual;
        }
        return odds / (1 + odds);
    }

    /** Chance of all that was seen and not seen under a cause, 1. */
    public static double chance(Set<Look> seen, Set<Look> notSeen, Cause cause) {
        double chance = 1;
        for (Look look : Look.values()) {
            if (seen.contains(look)) {
                chance *= chance(look, cause);
            } else if (notSeen.contains(look)) {
                chance *= 1 - chance(look, cause);
            }
        }
        return chance;
    }

    private static Map<Look, Row> rows() {
        Map<Look, Row> rows = new EnumMap<>(Look.class);
        put(
                rows,
                Look.OIL_CLEAR,
                0.5,
                "oil-wet 0.05 oil-aerated 0.2 oil-degraded 0.25 oil-overheated 0.3 air-leak 0.3");
        put(rows, Look.OIL_DARK, 0.25, "oil-degraded 0.6 oil-overheated 0.5 fan-broken 0.4 fins-packed 0.4");
        put(rows, Look.OIL_MILKY, 0.03, "oil-wet 0.9 oil-aerated 0.15");
        put(rows, Look.OIL_FOAMY, 0.05, "oil-aerated 0.7 air-leak 0.7 oil-low 0.5 oil-wet 0.2");
        put(rows, Look.OIL_BURNT, 0.06, "oil-degraded 0.4 oil-overheated 0.5 fan-broken 0.35 fins-packed 0.35");
        put(rows, Look.OIL_BELOW_MARK, 0.08, "oil-low 0.95 air-leak 0.2");
        put(rows, Look.DEBRIS_NONE, 0.4, wear(0.12) + " gears-damaged 0.05");
        put(rows, Look.DEBRIS_GREY_PASTE, 0.5, "gears-damaged 0.7");
        put(
                rows,
                Look.DEBRIS_STEEL_FLAKES,
                0.06,
                "gears-damaged 0.6 differential-tight 0.4 pump-thrust-worn 0.5 motor-thrust-worn 0.5 pump-bad-piston 0.3 "
                        + "motor-bad-piston 0.3");
        put(rows, Look.DEBRIS_BRONZE, 0.06, wear(0.45));
        put(
                rows,
                Look.DEBRIS_CHIPS,
                0.03,
                "gears-damaged 0.5 axle-key-sheared 0.15 pump-spring-broken 0.3 motor-spring-broken 0.3");
        put(
                rows,
                Look.WHINE_WITH_INPUT,
                0.1,
                "filter-blocked 0.8 oil-aerated 0.7 air-leak 0.7 oil-low 0.65 check-a-stuck-shut 0.5 check-b-stuck-shut 0.5 "
                        + "pump-thrust-worn 0.6 pump-spring-broken 0.5 pump-piston-sticks 0.5");
        put(
                rows,
                Look.NOISE_WITH_GROUND_SPEED,
                0.08,
                "gears-damaged 0.7 differential-tight 0.4 motor-thrust-worn 0.6 motor-spring-broken 0.5 "
                        + "motor-piston-sticks 0.5 axle-key-sheared 0.3");
        put(rows, Look.BELT_GLAZED, 0.12, "belt-worn 0.75 pulley-wrong 0.25 overload 0.3");
        put(rows, Look.FINS_DIRTY, 0.2, "fins-packed 0.95 oil-overheated 0.4");
        put(rows, Look.FAN_DAMAGED, 0.04, "fan-broken 0.95 oil-overheated 0.15");
        put(rows, Look.MARKS_SHIFTED, 0.03, "input-key-sheared 0.95");
        return rows;
    }

    private static String wear(double chance) {
        StringBuilder text = new StringBuilder();
        for (String unit : new String[] {"pump", "motor"}) {
            for (String part : new String[] {"bores-worn", "bad-piston", "face-worn", "face-scored", "bridge-scored"}) {
                text.append(unit)
                        .append('-')
                        .append(part)
                        .append(' ')
                        .append(chance)
                        .append(' ');
            }
        }
        return text.toString().trim();
    }

    private static void put(Map<Look, Row> rows, Look look, double otherwise, String under) {
        Map<String, Double> chances = new java.util.HashMap<>();
        String[] words = under.split(" ");
        for (int i = 0; i + 1 < words.length; i += 2) {
            chances.put(words[i], Double.parseDouble(words[i + 1]));
        }
        rows.put(look, new Row(otherwise, Map.copyOf(chances)));
    }
}
