package swashlight.desk.work;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import swashlight.desk.report.Measure;
import swashlight.drive.description.Dimension;

/** One number of the circumstances, with its usual value and its range (SI unit of its dimension). */
public enum Condition {
    STROKE("stroke", Dimension.NUMBER, Measure.SHARE, 1, -1, 1),
    THROTTLE("throttle", Dimension.NUMBER, Measure.SHARE, 1, 0.2, 1),
    INPUT_SPEED("inputSpeed", Dimension.ROTATION, Measure.ROTATION, 0, -700, 700),
    OIL_TEMPERATURE("oilTemperature", Dimension.TEMPERATURE, Measure.TEMPERATURE, 333.15, 230, 430),
    SLOPE("slope", Dimension.ANGLE, Measure.ANGLE, 0, -0.7, 0.7),
    LOAD("load", Dimension.FORCE, Measure.FORCE, 0, 0, 1e5),
    PUSHED_SPEED("pushedSpeed", Dimension.SPEED, Measure.SPEED, 0, -10, 10),
    BRAKE("brake", Dimension.NUMBER, Measure.SHARE, 0, 0, 1),
    BYPASS("bypass", Dimension.NUMBER, Measure.SHARE, 0, 0, 1),
    AMBIENT_PRESSURE("ambientPressure", Dimension.PRESSURE, Measure.PRESSURE, 101325, 5e4, 1.1e5),
    AIR_TEMPERATURE("ambient", Dimension.TEMPERATURE, Measure.TEMPERATURE, 293.15, 220, 340);

    private final String key;
    private final Dimension dimension;
    private final Measure measure;
    private final double usual;
    private final double low;
    private final double high;

    Condition(String key, Dimension dimension, Measure measure, double usual, double low, double high) {
        this.key = key;
        this.dimension = dimension;
        this.measure = measure;
        this.usual = usual;
        this.low = low;
        this.high = high;
    }

    /** Its name in files and in JSON. */
    public String key() {
        return key;
    }

    /** Its name as an option, without the dashes. */
    public String option() {
        return switch (this) {
            case OIL_TEMPERATURE -> "oil";
            case PUSHED_SPEED -> "pushed";
            case AMBIENT_PRESSURE -> "air";
            case AIR_TEMPERATURE -> "outside";
            case INPUT_SPEED -> "input-speed";
            default -> key;
        };
    }

    /** What it measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** How it is shown. */
    public Measure measure() {
        return measure;
    }

    /** The value it has when nobody states one. */
    public double usual() {
        return usual;
    }

    /** Least allowed value. */
    public double low() {
        return low;
    }

    /** Greatest allowed value. */
    public double high() {
        return high;
    }

    /** All names, as the command line writes them. */
    public static List<String> keys() {
        return Arrays.stream(values()).map(Condition::option).toList();
    }

    /** The condition with a name, also as the command line writes it. */
    public static Optional<Condition> find(String key) {
        for (Condition condition : values()) {
            if (condition.key.equals(key) || condition.option().equals(key)) {
                return Optional.of(condition);
            }
        }
        return Optional.empty();
    }
}
