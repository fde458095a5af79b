package swashlight.findings.cause;

import java.util.Optional;
import swashlight.drive.fault.Fault;
import swashlight.drive.steady.Duty;

/**
 * One hypothesis: the drive is healthy, or has one fault.
 *
 * @param fault what is wrong; empty: nothing
 * @param odds how often among machines that come in as weak, relative to the other causes, 1
 * @param severity how severe before anything was read
 * @param action what it calls for
 */
public record Cause(Optional<Fault> fault, double odds, SeverityPrior severity, Action action) {
    /** Key of the cause that nothing is wrong. */
    public static final String HEALTHY = "healthy";

    /** @throws IllegalArgumentException when the odds are not above 0 */
    public Cause {
        if (!(odds > 0 && odds < 1e9)) {
            throw new IllegalArgumentException("odds of a cause are " + odds + "; they must lie above 0");
        }
    }

    /** Stable name, the fault's key or {@code healthy}. */
    public String key() {
        return fault.map(Fault::key).orElse(HEALTHY);
    }

    /** One plain line. */
    public String words() {
        return fault.map(Fault::meaning).orElse("nothing wrong with the drive");
    }

    /** Changes a drive's values (index order, SI) by a severity in the fault's own unit. */
    public void apply(double[] vector, double level) {
        if (fault.isPresent()) {
            fault.orElseThrow().apply(vector, level);
        }
    }

    /** The duty as this cause makes it; severity in the fault's own unit. */
    public Duty on(Duty duty, double level) {
        return fault.isPresent() ? fault.orElseThrow().on(duty, level) : duty;
    }
}
