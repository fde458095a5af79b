package swashlight.drive.description;

/** What a number measures, with its SI unit; text in other units is read and written by the room {@code files}. */
public enum Dimension {
    NUMBER("1"),
    LENGTH("m"),
    AREA("m2"),
    VOLUME("m3"),
    DISPLACEMENT("m3/rev"),
    ANGLE("rad"),
    SPEED("m/s"),
    ROTATION("rad/s"),
    ANGLE_RATE("rad/s"),
    MASS("kg"),
    FORCE("N"),
    TORQUE("N.m"),
    INERTIA("kg.m2"),
    STIFFNESS("N.m/rad"),
    PRESSURE("Pa"),
    PER_PRESSURE("1/Pa"),
    FLOW("m3/s"),
    FLOW_PER_PRESSURE("m3/(s.Pa)"),
    PER_VOLUME("1/m3"),
    VISCOSITY("m2/s"),
    DENSITY("kg/m3"),
    TEMPERATURE("K"),
    PER_TEMPERATURE("1/K"),
    HEAT_CAPACITY("J/K"),
    HEAT_CONDUCTANCE("W/K"),
    POWER("W"),
    TIME("s"),
    FREQUENCY("Hz");

    private final String unit;

    Dimension(String unit) {
        this.unit = unit;
    }

    /** The SI unit, as text. */
    public String unit() {
        return unit;
    }
}
