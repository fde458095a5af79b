package swashlight.findings.expect;

import swashlight.drive.description.Dimension;

/** What must be known about how a reading was taken. */
public enum ConditionKind {
    STROKE("stroke", Dimension.NUMBER),
    THROTTLE("throttle", Dimension.NUMBER),
    INPUT_SPEED("inputSpeed", Dimension.ROTATION),
    OIL_TEMPERATURE("oilTemperature", Dimension.TEMPERATURE),
    SLOPE("slope", Dimension.ANGLE),
    DISTANCE("distance", Dimension.LENGTH),
    LOAD("load", Dimension.FORCE),
    SINCE("since", Dimension.TIME),
    AMBIENT("ambient", Dimension.TEMPERATURE),
    PART("part", Dimension.NUMBER);

    private final String key;
    private final Dimension dimension;

    ConditionKind(String key, Dimension dimension) {
        this.key = key;
        this.dimension = dimension;
    }

    /** Name in files. */
    public String key() {
        return key;
    }

    /** What it measures. */
    public Dimension dimension() {
        return dimension;
    }
}
