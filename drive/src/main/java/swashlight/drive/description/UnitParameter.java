package swashlight.drive.description;

/** One number of the pump or of the motor. */
public record UnitParameter(Place place, UnitProperty property) implements Parameter {
    private static final int PER_UNIT = 39;

    /** How many there are in pump and motor together; unit 1. */
    static final int COUNT = 2 * PER_UNIT;

    /** The pump's. */
    public static UnitParameter pump(UnitProperty property) {
        return new UnitParameter(Place.PUMP, property);
    }

    /** The motor's. */
    public static UnitParameter motor(UnitProperty property) {
        return new UnitParameter(Place.MOTOR, property);
    }

    @Override
    public Facts facts() {
        return property.facts().in(place.section());
    }

    @Override
    public int index() {
        return OilParameter.COUNT + place.ordinal() * PER_UNIT + property.ordinal();
    }
}
