package swashlight.findings.cause;

import java.util.EnumMap;
import java.util.Map;
import swashlight.findings.reading.Look;

/**
 * How often a look is noted under each fault, before any case was counted. Own estimate and common practice, no source. Looks are taken as
 * independent once the cause is known, which overstates several that say the same.
 */
final class LookOdds {
    private static final Map<Look, Row> ROWS = rows();

    private LookOdds() {}

    private record Row(double otherwise, Map<String, Double> under) {}

    /** Chance of noting a look under no fault in particular, 1. */
    static double otherwise(Look look) {
        return ROWS.get(look).otherwise();
    }

    /** Chance of noting a look under a fault by its key, 1. */
    static double under(Look look, String fault) {
        Row row = ROWS.get(look);
        return row.under().getOrDefault(fault, row.otherwise());
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
        put(rows, Look.OIL_OUTSIDE, 0.08, "oil-low 0.8 air-leak 0.3");
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
        stories(rows);
        return rows;
    }

    private static void stories(Map<Look, Row> rows) {
        put(
                rows,
                Look.CLICKS,
                0.04,
                "gears-damaged 0.7 differential-tight 0.3 axle-key-sheared 0.3 input-key-sheared 0.3 pump-spring-broken 0.5 "
                        + "motor-spring-broken 0.5 pump-piston-sticks 0.4 motor-piston-sticks 0.4");
        put(
                rows,
                Look.JERKS,
                0.08,
                "oil-aerated 0.8 air-leak 0.7 oil-low 0.6 filter-blocked 0.5 linkage-play 0.4 pump-spring-broken 0.6 "
                        + "motor-spring-broken 0.6 pump-piston-sticks 0.6 motor-piston-sticks 0.6 gears-damaged 0.4 belt-worn 0.3");
        put(
                rows,
                Look.WHEEL_TURNS_MACHINE_STANDS,
                0.03,
                "axle-key-sheared 0.9 tyre-grip-poor 0.8 duty-steep 0.3 overload 0.2");
        put(
                rows,
                Look.CAME_SUDDENLY,
                0.15,
                "input-key-sheared 0.7 axle-key-sheared 0.8 gears-damaged 0.7 crack-a 0.8 crack-b 0.8 crack-ab 0.8 "
                        + "pump-spring-broken 0.7 motor-spring-broken 0.7 check-a-stuck-open 0.6 check-b-stuck-open 0.6 "
                        + "check-a-stuck-shut 0.6 check-b-stuck-shut 0.6 bypass-left-open 0.8 bypass-not-closed 0.5 fan-broken 0.4 "
                        + "forward-travel-short 0.4 reverse-travel-short 0.4 " + wear(0.05));
        put(
                rows,
                Look.SINCE_SERVICE,
                0.06,
                "oil-aerated 0.8 oil-too-thin 0.5 bypass-not-closed 0.5 bypass-left-open 0.6 bleed-a-wrong 0.8 bleed-b-wrong 0.8 "
                        + "forward-travel-short 0.35 reverse-travel-short 0.35 neutral-forward 0.5 neutral-reverse 0.5 air-leak 0.3");
        put(rows, Look.BETTER_AFTER_PURGE, 0.05, "oil-aerated 0.9 air-leak 0.4 oil-low 0.3");
        put(
                rows,
                Look.FADES_HOT,
                0.2,
                wear(0.9)
                        + " oil-too-thin 0.9 oil-degraded 0.8 oil-overheated 0.9 fan-broken 0.9 fins-packed 0.85 overload 0.6 "
                        + "brake-drags 0.5 bypass-not-closed 0.5");
        put(
                rows,
                Look.WEAK_COLD,
                0.3,
                "belt-worn 0.7 input-key-sheared 0.8 engine-weak 0.9 bypass-not-closed 0.9 bypass-left-open 0.95 crack-ab 0.8 "
                        + "crack-a 0.7 crack-b 0.7 brake-drags 0.7 overload 0.6 healthy 0.1");
        put(
                rows,
                Look.WEAK_FORWARD_ONLY,
                0.04,
                "check-a-leaks 0.6 check-a-stuck-open 0.8 bleed-a-wrong 0.5 crack-a 0.7 forward-travel-short 0.5");
        put(
                rows,
                Look.WEAK_REVERSE_ONLY,
                0.05,
                "check-b-leaks 0.6 check-b-stuck-open 0.8 bleed-b-wrong 0.5 crack-b 0.7 reverse-travel-short 0.6");
        put(
                rows,
                Look.ENGINE_LABOURS,
                0.08,
                "engine-weak 0.9 overload 0.5 brake-drags 0.5 duty-steep 0.5 engine-slow 0.3");
        put(
                rows,
                Look.CREEPS_IN_NEUTRAL,
                0.05,
                "neutral-forward 0.9 neutral-reverse 0.9 return-weak 0.7 linkage-play 0.2");
        put(rows, Look.HARD_TO_PUSH, 0.05, "brake-drags 0.9 bypass-stuck 0.9 differential-tight 0.3 gears-damaged 0.2");
        put(
                rows,
                Look.ROLLS_AWAY,
                0.08,
                wear(0.7)
                        + " bypass-not-closed 0.9 bypass-left-open 0.95 brake-weak 0.4 axle-key-sheared 0.5 oil-too-thin 0.3");
        put(rows, Look.ARM_SHORT_OF_STOP, 0.05, "forward-travel-short 0.9 reverse-travel-short 0.6 linkage-play 0.3");
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
