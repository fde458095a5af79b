package swashlight.findings.cause;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import swashlight.drive.fault.Fault;
import swashlight.drive.steady.Duty;

/**
 * A hypothesis: nothing is wrong, one fault, or two that go together.
 *
 * @param parts its faults: none, one or two
 * @param odds before reading, in parts of which only ratios matter, 1
 */
public record Cause(List<Part> parts, double odds) {
    /** Key of the cause that nothing is wrong. */
    public static final String HEALTHY = "healthy";

    private static final String AND = "+";

    /** @throws IllegalArgumentException when the odds are not above 0, or a whole or counted fault is paired */
    public Cause {
        parts = List.copyOf(parts);
        if (!(odds > 0 && odds < 1e9)) {
            throw new IllegalArgumentException("odds of a cause are " + odds + "; they must lie above 0");
        }
        if (parts.size() > 1 && parts.stream().anyMatch(part -> part.severity().inSteps())) {
            throw new IllegalArgumentException("faults in whole pieces cannot be paired: " + parts);
        }
    }

    /** Stable name: {@code healthy}, the fault's key, or both keys with a plus between. */
    public String key() {
        return parts.isEmpty()
                ? HEALTHY
                : String.join(
                        AND, parts.stream().map(part -> part.fault().key()).toList());
    }

    /** One plain line. */
    public String words() {
        return parts.isEmpty()
                ? "nothing wrong with the drive"
                : String.join(
                        ", and ",
                        parts.stream().map(part -> part.fault().meaning()).toList());
    }

    /** The fault of a single one. */
    public Optional<Fault> fault() {
        return parts.size() == 1 ? Optional.of(parts.get(0).fault()) : Optional.empty();
    }

    /** Everything it calls for. */
    public Set<Action> actions() {
        Set<Action> all = EnumSet.noneOf(Action.class);
        parts.forEach(part -> all.add(part.action()));
        return all.isEmpty() ? EnumSet.of(Action.LEAVE_ALONE) : all;
    }

    /** The dearest that it calls for. */
    public Action action() {
        Action dearest = Action.LEAVE_ALONE;
        for (Part part : parts) {
            dearest = part.action().compareTo(dearest) > 0 ? part.action() : dearest;
        }
        return dearest;
    }

    /** Changes a drive's values (index order, SI) by severities, each in its fault's own unit. */
    public void apply(double[] vector, double[] levels) {
        for (int p = 0; p < parts.size(); p++) {
            parts.get(p).fault().apply(vector, levels[p]);
        }
    }

    /** The duty as this cause makes it; severities in each fault's own unit. */
    public Duty on(Duty duty, double[] levels) {
        Duty made = duty;
        for (int p = 0; p < parts.size(); p++) {
            made = parts.get(p).fault().on(made, levels[p]);
        }
        return made;
    }
}
