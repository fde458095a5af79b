package swashlight.checks;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A unit that check rows may use, with its way to SI: SI value = factor × (number + offset).
 *
 * <p>The factors are exact by definition or products of exact ones; theme {@code units} holds the absolute values that
 * NIST SP 811 prints, and a test compares them.
 *
 * @param name   as written in the rows
 * @param factor SI units in one of this unit
 * @param offset added to the number before the factor; zero except for temperatures
 * @param si     the SI unit it becomes
 */
public record CheckUnit(String name, double factor, double offset, String si) {

    private static final double INCH = 0.0254; // m, exact
    private static final double FOOT = 0.3048; // m, exact
    private static final double POUND = 0.45359237; // kg, exact
    private static final double GRAVITY = 9.80665; // m/s2, exact (standard)
    private static final double LBF = POUND * GRAVITY; // N, exact
    private static final double GALLON = 231 * INCH * INCH * INCH; // m3, exact: 231 cubic inches
    private static final double TURN = 2 * Math.PI; // rad

    private static final Map<String, CheckUnit> TABLE = table();

    /** The unit of that name, or a complaint that names it. */
    public static CheckUnit of(String name) {
        CheckUnit unit = TABLE.get(name);
        if (unit == null) {
            throw new IllegalArgumentException("unit '" + name + "' is not known to the checks: add it to CheckUnit");
        }
        return unit;
    }

    /** The SI value of a number of these units. */
    public double toSi(double number) {
        return factor * (number + offset);
    }

    private static Map<String, CheckUnit> table() {
        Map<String, CheckUnit> table = new LinkedHashMap<>();
        put(table, "1", 1, "1");
        put(table, "%", 0.01, "1");
        lengthsAreasVolumes(table);
        put(table, "rad", 1, "rad");
        put(table, "deg", Math.PI / 180, "rad");
        motion(table);
        massesAndForces(table);
        pressures(table);
        put(table, "W", 1, "W");
        put(table, "kW", 1e3, "W");
        put(table, "hp", 550 * FOOT * LBF, "W");
        put(table, "PS", 75 * GRAVITY, "W");
        put(table, "Btu/h", 1055.05585262 / 3600, "W");
        flowsAndOil(table);
        heat(table);
        return table;
    }

    private static void lengthsAreasVolumes(Map<String, CheckUnit> table) {
        put(table, "m", 1, "m");
        put(table, "cm", 1e-2, "m");
        put(table, "mm", 1e-3, "m");
        put(table, "um", 1e-6, "m");
        put(table, "in", INCH, "m");
        put(table, "ft", FOOT, "m");
        put(table, "mile", 5280 * FOOT, "m");
        put(table, "m2", 1, "m2");
        put(table, "cm2", 1e-4, "m2");
        put(table, "mm2", 1e-6, "m2");
        put(table, "in2", INCH * INCH, "m2");
        put(table, "m3", 1, "m3");
        put(table, "L", 1e-3, "m3");
        put(table, "cm3", 1e-6, "m3");
        put(table, "in3", INCH * INCH * INCH, "m3");
        put(table, "gal", GALLON, "m3");
        put(table, "cm3/rev", 1e-6, "m3");
        put(table, "in3/rev", INCH * INCH * INCH, "m3");
    }

    private static void motion(Map<String, CheckUnit> table) {
        put(table, "s", 1, "s");
        put(table, "min", 60, "s");
        put(table, "h", 3600, "s");
        put(table, "m/s", 1, "m/s");
        put(table, "m/s2", 1, "m/s2");
        put(table, "km/h", 1 / 3.6, "m/s");
        put(table, "mph", 5280 * FOOT / 3600, "m/s");
        put(table, "ft/s", FOOT, "m/s");
        put(table, "rad/s", 1, "rad/s");
        put(table, "rpm", TURN / 60, "rad/s");
        put(table, "Hz", 1, "1/s");
        put(table, "1/s", 1, "1/s");
        put(table, "rev", 1, "rev");
    }

    private static void massesAndForces(Map<String, CheckUnit> table) {
        put(table, "kg", 1, "kg");
        put(table, "lb", POUND, "kg");
        put(table, "lbf.s2/in", LBF / INCH, "kg");
        put(table, "kg.m2", 1, "kg.m2");
        put(table, "N", 1, "N");
        put(table, "kN", 1e3, "N");
        put(table, "lbf", LBF, "N");
        put(table, "kgf", GRAVITY, "N");
        put(table, "N.m", 1, "N.m");
        put(table, "N.m.s", 1, "N.m.s");
        put(table, "in.lbf", INCH * LBF, "N.m");
        put(table, "ft.lbf", FOOT * LBF, "N.m");
    }

    private static void pressures(Map<String, CheckUnit> table) {
        put(table, "Pa", 1, "Pa");
        put(table, "kPa", 1e3, "Pa");
        put(table, "MPa", 1e6, "Pa");
        put(table, "GPa", 1e9, "Pa");
        put(table, "bar", 1e5, "Pa");
        put(table, "atm", 101325, "Pa");
        put(table, "psi", LBF / (INCH * INCH), "Pa");
        put(table, "1/Pa", 1, "1/Pa");
        put(table, "1/bar", 1e-5, "1/Pa");
        put(table, "1/psi", INCH * INCH / LBF, "1/Pa");
        put(table, "Pa/K", 1, "Pa/K");
        put(table, "bar/K", 1e5, "Pa/K");
    }

    private static void flowsAndOil(Map<String, CheckUnit> table) {
        put(table, "m3/s", 1, "m3/s");
        put(table, "L/s", 1e-3, "m3/s");
        put(table, "L/min", 1e-3 / 60, "m3/s");
        put(table, "mL/min", 1e-6 / 60, "m3/s");
        put(table, "cm3/s", 1e-6, "m3/s");
        put(table, "mm3/s", 1e-9, "m3/s");
        put(table, "gpm", GALLON / 60, "m3/s");
        put(table, "ft3/s", FOOT * FOOT * FOOT, "m3/s");
        put(table, "m3/(s.Pa)", 1, "m3/(s.Pa)");
        put(table, "m2/s", 1, "m2/s");
        put(table, "mm2/s", 1e-6, "m2/s");
        put(table, "Pa.s", 1, "Pa.s");
        put(table, "mPa.s", 1e-3, "Pa.s");
        put(table, "kg/m3", 1, "kg/m3");
    }

    private static void heat(Map<String, CheckUnit> table) {
        put(table, "K", 1, "K");
        table.put("degC", new CheckUnit("degC", 1, 273.15, "K"));
        table.put("degF", new CheckUnit("degF", 5.0 / 9, 459.67, "K"));
        put(table, "1/K", 1, "1/K");
        put(table, "1/degF", 1.8, "1/K");
        put(table, "J/K", 1, "J/K");
        put(table, "J/(kg.K)", 1, "J/(kg.K)");
        put(table, "kJ/(kg.K)", 1e3, "J/(kg.K)");
        put(table, "W/K", 1, "W/K");
        put(table, "W/(m.K)", 1, "W/(m.K)");
        put(table, "W/(m2.K)", 1, "W/(m2.K)");
    }

    private static void put(Map<String, CheckUnit> table, String name, double factor, String si) {
        table.put(name, new CheckUnit(name, factor, 0, si));
    }
}
