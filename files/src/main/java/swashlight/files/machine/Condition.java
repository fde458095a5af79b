package swashlight.files.machine;

import swashlight.drive.description.Dimension;
import swashlight.files.document.Range;

/** The conditions a reading may state, with their keys and what they may be. Ranges: what a duty can be, and common sense. */
public enum Condition {
    STROKE("stroke", "share of full travel, negative in reverse", Range.of(Dimension.NUMBER, -1, 1)),
    THROTTLE("throttle", "share of full governed speed", Range.of(Dimension.NUMBER, 0.2, 1)),
    INPUT_SPEED("inputSpeed", "speed of the input shaft at the same moment", Range.of(Dimension.ROTATION, 0, 700)),
    OIL_TEMPERATURE("oilTemperature", "temperature of oil or case", Range.of(Dimension.TEMPERATURE, 230, 430)),
    SLOPE("slope", "positive when the front points uphill", Range.slope(-0.7, 0.7)),
    DISTANCE("distance", "of a timed run", Range.of(Dimension.LENGTH, 0.05, 2000)),
    LOAD("load", "drawbar pull", Range.of(Dimension.FORCE, 0, 1e5)),
    SINCE("since", "time since a cold start", Range.of(Dimension.TIME, 0, 1e5)),
    AMBIENT("ambient", "air temperature", Range.of(Dimension.TEMPERATURE, 220, 330));

    private final String key;
    private final String meaning;
    private final Range range;

    Condition(String key, String meaning, Range range) {
        this.key = key;
        this.meaning = meaning;
        this.range = range;
    }

    /** Name in files. */
    public String key() {
        return key;
    }

    /** One plain line saying what it is. */
    public String meaning() {
        return meaning;
    }

    /** What it may be. */
    public Range range() {
        return range;
    }
}
