package swashlight.drive.description;

/** One number of a drive. The closed list is {@link Parameters#all()}. */
public sealed interface Parameter
        permits OilParameter,
                UnitParameter,
                LoopParameter,
                MakeUpParameter,
                InputParameter,
                OutputParameter,
                HeatParameter {
    /** The fixed facts behind the accessors below. */
    Facts facts();

    /** Place in a vector of all parameters, 0 … {@link Parameters#count()} − 1; unit 1. */
    int index();

    /** Section and name, as in files: {@code pump.boreClearance}. */
    default String key() {
        return facts().section() + "." + facts().name();
    }

    /** The section: oil, pump, motor, loop, … */
    default String section() {
        return facts().section();
    }

    /** The quantity's spelt name within its section: {@code boreClearance}. (An enum's own {@code name()} is its constant's.) */
    default String term() {
        return facts().name();
    }

    /** What it measures. */
    default Dimension dimension() {
        return facts().dimension();
    }

    /** Least allowed value, SI unit of {@link #dimension()}. */
    default double low() {
        return facts().low();
    }

    /** Greatest allowed value, SI unit of {@link #dimension()}. */
    default double high() {
        return facts().high();
    }

    /** One standard deviation of a typical value: unit 1 when {@link #relativeSpread()}, else the SI unit of the dimension. */
    default double typicalSpread() {
        return facts().spread();
    }

    /** True when {@link #typicalSpread()} is a share of the value. */
    default boolean relativeSpread() {
        return facts().relative();
    }

    /** One plain line saying what it is. */
    default String meaning() {
        return facts().meaning();
    }
}
