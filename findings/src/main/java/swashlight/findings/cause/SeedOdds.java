package swashlight.findings.cause;

import java.util.HashMap;
import java.util.Map;

/**
 * Seed odds and actions by fault. By group: belt, pulley, key 27; engine 4; linkage and neutral 10; bypass 5; brake 5; wheels 5; oil, air
 * and filter 15; cooling and use 7; running parts 18; valves 4; gears 4. Within a group: own estimate. Common practice, no source.
 */
final class SeedOdds {
    private static final Map<String, Row> ROWS = rows();

    private SeedOdds() {}

    /** One row of the table: odds (1), whether the severity comes in whole pieces, what to do. */
    record Row(double odds, boolean counted, Action action) {}

    /** The row of a fault. */
    static Row of(String fault) {
        Row row = ROWS.get(fault);
        if (row == null) {
            throw new IllegalStateException("fault " + fault + " has no seed odds; give it a row in SeedOdds");
        }
        return row;
    }

    private static Map<String, Row> rows() {
        Map<String, Row> rows = new HashMap<>();
        for (String unit : new String[] {"pump", "motor"}) {
            put(rows, unit + "-bores-worn", 2.0, Action.RENEW_RUNNING_SET);
            put(rows, unit + "-bad-piston", 0.6, Action.RENEW_RUNNING_SET);
            rows.put(unit + "-spring-broken", new Row(0.4, true, Action.RENEW_RUNNING_SET));
            rows.put(unit + "-piston-sticks", new Row(0.4, true, Action.RENEW_RUNNING_SET));
            put(rows, unit + "-face-worn", 2.5, Action.RENEW_RUNNING_SET);
            put(rows, unit + "-face-scored", 2.0, Action.RENEW_RUNNING_SET);
            put(rows, unit + "-bridge-scored", 0.5, Action.RENEW_RUNNING_SET);
            put(rows, unit + "-thrust-worn", 0.4, Action.RENEW_RUNNING_SET);
        }
        put(rows, "crack-a", 0.15, Action.RENEW_RUNNING_SET);
        put(rows, "crack-b", 0.15, Action.RENEW_RUNNING_SET);
        put(rows, "crack-ab", 0.2, Action.RENEW_RUNNING_SET);
        for (String side : new String[] {"a", "b"}) {
            put(rows, "check-" + side + "-leaks", 1.0, Action.RENEW_MAKE_UP);
            put(rows, "check-" + side + "-stuck-open", 0.5, Action.RENEW_MAKE_UP);
            put(rows, "check-" + side + "-stuck-shut", 0.35, Action.RENEW_MAKE_UP);
            put(rows, "bleed-" + side + "-wrong", 0.15, Action.RENEW_MAKE_UP);
        }
        put(rows, "filter-blocked", 2.5, Action.RENEW_MAKE_UP);
        put(rows, "air-leak", 1.3, Action.RENEW_MAKE_UP);
        put(rows, "oil-low", 3.5, Action.CHANGE_OIL);
        put(rows, "oil-aerated", 3.3, Action.CHANGE_OIL);
        put(rows, "oil-too-thin", 2.0, Action.CHANGE_OIL);
        put(rows, "oil-degraded", 1.7, Action.CHANGE_OIL);
        put(rows, "oil-wet", 0.7, Action.CHANGE_OIL);
        put(rows, "bypass-not-closed", 3.0, Action.CLOSE_BYPASS);
        put(rows, "bypass-left-open", 1.5, Action.CLOSE_BYPASS);
        put(rows, "bypass-stuck", 0.5, Action.CLOSE_BYPASS);
        put(rows, "linkage-play", 2.5, Action.ADJUST_CONTROL);
        put(rows, "forward-travel-short", 3.5, Action.ADJUST_CONTROL);
        put(rows, "reverse-travel-short", 1.2, Action.ADJUST_CONTROL);
        put(rows, "neutral-forward", 1.2, Action.ADJUST_CONTROL);
        put(rows, "neutral-reverse", 1.2, Action.ADJUST_CONTROL);
        put(rows, "return-weak", 0.4, Action.ADJUST_CONTROL);
        put(rows, "belt-worn", 22.0, Action.RENEW_BELT);
        put(rows, "pulley-wrong", 1.0, Action.RENEW_BELT);
        put(rows, "input-key-sheared", 4.0, Action.RENEW_BELT);
        put(rows, "engine-slow", 2.5, Action.SERVICE_ENGINE);
        put(rows, "engine-weak", 1.5, Action.SERVICE_ENGINE);
        put(rows, "brake-drags", 4.6, Action.FREE_BRAKE);
        put(rows, "brake-weak", 0.4, Action.FREE_BRAKE);
        put(rows, "tyre-small", 2.0, Action.RIGHT_WHEELS);
        put(rows, "tyre-grip-poor", 3.0, Action.RIGHT_WHEELS);
        put(rows, "gears-damaged", 1.5, Action.REPAIR_GEARS);
        put(rows, "axle-key-sheared", 1.5, Action.REPAIR_GEARS);
        put(rows, "differential-tight", 1.0, Action.REPAIR_GEARS);
        put(rows, "overload", 2.0, Action.CHANGE_USE);
        put(rows, "duty-steep", 1.0, Action.CHANGE_USE);
        put(rows, "oil-overheated", 1.0, Action.RESTORE_COOLING);
        put(rows, "fan-broken", 1.2, Action.RESTORE_COOLING);
        put(rows, "fins-packed", 1.8, Action.RESTORE_COOLING);
        return Map.copyOf(rows);
    }

    private static void put(Map<String, Row> rows, String fault, double odds, Action action) {
        rows.put(fault, new Row(odds, false, action));
    }
}
