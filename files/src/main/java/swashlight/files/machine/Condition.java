package swashlight.files.machine;

import swashlight.drive.description.Dimension;
import swashlight.files.document.Range;

/** The conditions a reading may state, with their keys and what they may be. Ranges: what a duty can be, and common sense. */
public enum Condition {
    /** Share of full travel, negative in reverse. */
    STROKE("stroke", Range.of(Dimension.NUMBER, -1, 1)),
    /** Share of full governed speed. */
    THROTTLE("throttle", Range.of(Dimension.NUMBER, 0.2, 1)),
    /** Speed of the input shaft at the same moment. */
    INPUT_SPEED("inputSpeed", Range.of(Dimension.ROTATION, 0, 700)),
    /** Temperature of oil or case. */
    OIL_TEMPERATURE("oilTemperature", Range.of(Dimension.TEMPERATURE, 230, 430)),
    /** Positive when the front points uphill. */
    SLOPE("slope", Range.slope(-0.7, 0.7)),
    /** Of a timed run. */
    DISTANCE("distance", Range.of(Dimension.LENGTH, 0.05, 2000)),
    /** Drawbar pull. */
    LOAD("load", Range.of(Dimension.FORCE, 0, 1e5)),
    /** Time since a cold start. */
    SINCE("since", Range.of(Dimension.TIME, 0, 1e5)),
    /** Air temperature. */
    AMBIENT("ambient", Range.of(Dimension.TEMPERATURE, 220, 330));

    private final String key;
    private final Range range;

    Condition(String key, Range range) {
        this.key = key;
        this.range = range;
    }

    /** Name in files. */
    public String key() {
        return key;
    }

    /** What it may be. */
    public Range range() {
        return range;
    }
}
