package swashlight.files.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Units that may stand in the brackets of a bench table's header, with their exact factors.
 * Source: NIST SP 811 (pound, inch, US gallon: exact definitions).
 */
final class HeaderUnit {
    private static final double TURN = 2 * Math.PI;
    private static final double POUND_FORCE = 4.4482216152605;
    private static final double INCH = 0.0254;
    private static final double US_GALLON = 231 * INCH * INCH * INCH;
    private static final double CELSIUS_ZERO = 273.15;
    private static final double FAHRENHEIT_ZERO = 459.67;

    private static final Map<String, Map<String, double[]>> KNOWN = known();

    private HeaderUnit() {}

    /** What is measured, with the units it may be given in, for messages. */
    static String unitsOf(String quantity) {
        return String.join(", ", KNOWN.get(quantity).keySet());
    }

    /** Factor and offset so that SI = factor · (number + offset), if the unit is known. */
    static Optional<double[]> of(String quantity, String unit) {
        return Optional.ofNullable(
                KNOWN.get(quantity).get(unit.replace('·', '.').replace("³", "3")));
    }

    private static Map<String, Map<String, double[]>> known() {
        Map<String, Map<String, double[]>> known = new LinkedHashMap<>();
        put(known, "speed", "rpm", TURN / 60, 0);
        put(known, "speed", "rev/min", TURN / 60, 0);
        put(known, "speed", "1/min", TURN / 60, 0);
        put(known, "speed", "rev/s", TURN, 0);
        put(known, "speed", "rad/s", 1, 0);
        put(known, "pressure", "bar", 1e5, 0);
        put(known, "pressure", "MPa", 1e6, 0);
        put(known, "pressure", "kPa", 1e3, 0);
        put(known, "pressure", "Pa", 1, 0);
        put(known, "pressure", "psi", POUND_FORCE / (INCH * INCH), 0);
        put(known, "flow", "L/min", 1e-3 / 60, 0);
        put(known, "flow", "l/min", 1e-3 / 60, 0);
        put(known, "flow", "m3/s", 1, 0);
        put(known, "flow", "cm3/s", 1e-6, 0);
        put(known, "flow", "gpm", US_GALLON / 60, 0);
        put(known, "torque", "N.m", 1, 0);
        put(known, "torque", "Nm", 1, 0);
        put(known, "torque", "in.lbf", INCH * POUND_FORCE, 0);
        put(known, "torque", "ft.lbf", 12 * INCH * POUND_FORCE, 0);
        put(known, "temperature", "°C", 1, CELSIUS_ZERO);
        put(known, "temperature", "degC", 1, CELSIUS_ZERO);
        put(known, "temperature", "K", 1, 0);
        put(known, "temperature", "°F", 5.0 / 9, FAHRENHEIT_ZERO);
        put(known, "temperature", "degF", 5.0 / 9, FAHRENHEIT_ZERO);
        put(known, "share", "1", 1, 0);
        put(known, "share", "%", 0.01, 0);
        return known;
    }

    private static void put(
            Map<String, Map<String, double[]>> known, String quantity, String unit, double factor, double offset) {
        Map<String, double[]> units = new LinkedHashMap<>(known.getOrDefault(quantity, Map.of()));
        units.put(unit, new double[] {factor, offset});
        known.put(quantity, units);
    }
}
