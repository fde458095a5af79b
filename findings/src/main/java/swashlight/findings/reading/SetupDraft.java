package swashlight.findings.reading;

import java.util.Optional;
import java.util.OptionalDouble;

/** Conditions written down one after another; what is not mentioned stays unstated. */
public final class SetupDraft {
    private OptionalDouble stroke = OptionalDouble.empty();
    private OptionalDouble throttle = OptionalDouble.empty();
    private OptionalDouble oilTemperature = OptionalDouble.empty();
    private OptionalDouble temperatureError = OptionalDouble.empty();
    private OptionalDouble slope = OptionalDouble.empty();
    private OptionalDouble slopeError = OptionalDouble.empty();
    private OptionalDouble distance = OptionalDouble.empty();
    private OptionalDouble load = OptionalDouble.empty();
    private boolean lifted;
    private boolean backwards;

    /** Share of full travel, negative in reverse, −1 … 1, unit 1. */
    public SetupDraft stroke(double share) {
        stroke = OptionalDouble.of(share);
        return this;
    }

    /** Full governed engine speed. */
    public SetupDraft fullThrottle() {
        throttle = OptionalDouble.of(1);
        return this;
    }

    /** Temperature of oil or case, K. */
    public SetupDraft oil(double temperature) {
        oilTemperature = OptionalDouble.of(temperature);
        return this;
    }

    /** Slope, positive when the front points uphill, rad. */
    public SetupDraft slope(double angle) {
        slope = OptionalDouble.of(angle);
        return this;
    }

    /** Oil temperature and slope are known without error. */
    public SetupDraft exactly() {
        temperatureError = OptionalDouble.of(0);
        slopeError = OptionalDouble.of(0);
        return this;
    }

    /** Length of a timed run, m. */
    public SetupDraft distance(double length) {
        distance = OptionalDouble.of(length);
        return this;
    }

    /** Drawbar pull, N. */
    public SetupDraft load(double pull) {
        load = OptionalDouble.of(pull);
        return this;
    }

    /** The wheels are clear of the ground. */
    public SetupDraft lifted() {
        lifted = true;
        return this;
    }

    /** Whether it rolls or is pushed backwards. */
    public SetupDraft backwards(boolean yes) {
        backwards = yes;
        return this;
    }

    /** The conditions as written so far. */
    public Setup done() {
        return new Setup(
                stroke,
                throttle,
                OptionalDouble.empty(),
                oilTemperature,
                temperatureError,
                slope,
                slopeError,
                distance,
                load,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                lifted,
                false,
                backwards);
    }
}
