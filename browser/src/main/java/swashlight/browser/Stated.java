package swashlight.browser;

import swashlight.drive.description.Dimension;

/** A condition of a reading that somebody stated; keys as in files. */
enum Stated {
    STROKE("stroke", Dimension.NUMBER, "share of full travel, negative in reverse"),
    THROTTLE("throttle", Dimension.NUMBER, "share of full governed speed"),
    INPUT_SPEED("inputSpeed", Dimension.ROTATION, "speed of the input shaft at the same moment"),
    OIL_TEMPERATURE("oilTemperature", Dimension.TEMPERATURE, "temperature of oil or case"),
    TEMPERATURE_ERROR("temperatureError", Dimension.TEMPERATURE, "its error, one standard deviation"),
    SLOPE("slope", Dimension.ANGLE, "positive when the front points uphill"),
    SLOPE_ERROR("slopeError", Dimension.ANGLE, "its error, one standard deviation"),
    DISTANCE("distance", Dimension.LENGTH, "of a timed run"),
    LOAD("load", Dimension.FORCE, "drawbar pull"),
    SINCE("since", Dimension.TIME, "time since a cold start"),
    AMBIENT("ambient", Dimension.TEMPERATURE, "air temperature"),
    LIFTED("lifted", Dimension.NUMBER, "1 when the wheels were clear of the ground"),
    HELD("held", Dimension.NUMBER, "1 when the wheels were held"),
    BACKWARDS("backwards", Dimension.NUMBER, "1 when it rolled or was pushed backwards");

    private final String key;
    private final Dimension dimension;
    private final String meaning;

    Stated(String key, Dimension dimension, String meaning) {
        this.key = key;
        this.dimension = dimension;
        this.meaning = meaning;
    }

    String key() {
        return key;
    }

    String unit() {
        return dimension.unit();
    }

    String meaning() {
        return meaning;
    }
}
