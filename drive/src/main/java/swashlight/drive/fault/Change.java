package swashlight.drive.fault;

import swashlight.drive.description.Parameter;

/** How a severity moves one parameter. */
public enum Change {
    /** The parameter becomes the severity. */
    BECOMES,
    /** The severity is added. */
    GROWS_BY,
    /** The severity is taken off. */
    SHRINKS_BY,
    /** The parameter is multiplied by the severity. */
    TIMES,
    /** The parameter is multiplied by one less the severity. */
    LOSES_SHARE,
    /** The parameter becomes one less the severity. */
    BECOMES_REST;

    /**
     * The parameter's new value, kept inside its range.
     *
     * @param parameter what changes
     * @param value present value, SI unit of the parameter
     * @param severity in the fault's own SI unit
     * @return new value, SI unit of the parameter
     */
    double apply(Parameter parameter, double value, double severity) {
        double changed = switch (this) {
            case BECOMES -> severity;
            case GROWS_BY -> value + severity;
            case SHRINKS_BY -> value - severity;
            case TIMES -> value * severity;
            case LOSES_SHARE -> value * (1 - severity);
            case BECOMES_REST -> 1 - severity;
        };
        return Math.max(parameter.low(), Math.min(parameter.high(), changed));
    }
}
