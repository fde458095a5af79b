package swashlight.desk.report;

import static swashlight.drive.description.Dimension.NUMBER;

import java.util.Map;
import swashlight.drive.description.Dimension;
import swashlight.files.unit.UnitSystem;
import swashlight.files.unit.UnitTable;

/** What a number measures and the one unit it is shown in, metric and US customary, so that a column of them can be compared. */
public enum Measure {
    /** Words, no number. */
    NONE(NUMBER, "", ""),
    /** Each row has its own. */
    OWN(NUMBER, "", ""),
    RATIO(NUMBER, "", ""),
    /** Standard deviations that something is off. */
    DEVIATIONS(NUMBER, "", ""),
    SHARE(NUMBER, "%", "%"),
    /** A probability, which is never said to be 100 %. */
    CHANCE(NUMBER, "%", "%"),
    SPEED(Dimension.SPEED, "m/s", "mph"),
    CREEP(Dimension.SPEED, "mm/s", "in/s"),
    ROTATION(Dimension.ROTATION, "rpm", "rpm"),
    TORQUE(Dimension.TORQUE, "N.m", "ft.lbf"),
    FORCE(Dimension.FORCE, "N", "lbf"),
    /** Above the air outside unless its name says absolute. */
    PRESSURE(Dimension.PRESSURE, "bar", "psi"),
    MODULUS(Dimension.PRESSURE, "MPa", "ksi"),
    PER_PRESSURE(Dimension.PER_PRESSURE, "1/GPa", "1/psi"),
    FLOW(Dimension.FLOW, "L/min", "gpm"),
    FLOW_PER_PRESSURE(Dimension.FLOW_PER_PRESSURE, "L/(min.bar)", "gpm/psi"),
    PER_VOLUME(Dimension.PER_VOLUME, "1/mm3", "1/in3"),
    POWER(Dimension.POWER, "W", "hp"),
    TEMPERATURE(Dimension.TEMPERATURE, "°C", "°F"),
    /** A difference of temperatures. */
    WARMTH(Dimension.TEMPERATURE, "K", "°F"),
    PER_TEMPERATURE(Dimension.PER_TEMPERATURE, "1/K", "1/°F"),
    HEAT_CAPACITY(Dimension.HEAT_CAPACITY, "kJ/K", "Btu/°F"),
    HEAT_CONDUCTANCE(Dimension.HEAT_CONDUCTANCE, "W/K", "Btu/(h.°F)"),
    ANGLE(Dimension.ANGLE, "deg", "deg"),
    ANGLE_RATE(Dimension.ANGLE_RATE, "deg/s", "deg/s"),
    LENGTH(Dimension.LENGTH, "m", "ft"),
    SMALL_LENGTH(Dimension.LENGTH, "mm", "in"),
    FINE_LENGTH(Dimension.LENGTH, "µm", "thou"),
    AREA(Dimension.AREA, "mm2", "in2"),
    VOLUME(Dimension.VOLUME, "cm3", "in3"),
    DISPLACEMENT(Dimension.DISPLACEMENT, "cm3/rev", "in3/rev"),
    VISCOSITY(Dimension.VISCOSITY, "mm2/s", "cSt"),
    DENSITY(Dimension.DENSITY, "kg/m3", "lb/ft3"),
    MASS(Dimension.MASS, "kg", "lb"),
    INERTIA(Dimension.INERTIA, "kg.cm2", "lb.in2"),
    STIFFNESS(Dimension.STIFFNESS, "N.m/rad", "ft.lbf/rad"),
    TIME(Dimension.TIME, "s", "s"),
    MINUTES(Dimension.TIME, "min", "min"),
    FREQUENCY(Dimension.FREQUENCY, "Hz", "Hz");

    private final Dimension dimension;
    private final Map<UnitSystem, String> labels;

    Measure(Dimension dimension, String metric, String customary) {
        this.dimension = dimension;
        this.labels = Map.of(UnitSystem.SI, metric, UnitSystem.US, customary);
    }

    /** The unit to show it in. */
    public Scale scale(UnitSystem system) {
        String label = labels.get(system);
        return Scale.of(
                UnitTable.find(dimension, label)
                        .orElseThrow(() -> new IllegalStateException(label + " is no unit of " + dimension)),
                this == WARMTH);
    }

    /** The usual measure of a parameter's or a severity's number, by its dimension and its size (SI unit of the dimension). */
    public static Measure of(Dimension dimension, double size) {
        return switch (dimension) {
            case NUMBER -> RATIO;
            case LENGTH -> Math.abs(size) < 1e-3 ? FINE_LENGTH : Math.abs(size) < 0.2 ? SMALL_LENGTH : LENGTH;
            case PRESSURE -> Math.abs(size) < 1e8 ? PRESSURE : MODULUS;
            default -> valueOf(dimension.name());
        };
    }
}
