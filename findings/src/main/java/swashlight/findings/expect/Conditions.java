package swashlight.findings.expect;

import java.util.List;

/**
 * All conditions of one reading.
 *
 * @param all at most one of each kind, in the order of the kinds
 * @param wheels what the wheels stand on
 * @param input what turns the input shaft
 * @param backwards rolled or pushed backwards
 */
public record Conditions(List<Condition> all, Wheels wheels, Input input, boolean backwards) {
    /** What the wheels stand on or are held by. */
    public enum Wheels {
        GROUND,
        LIFTED,
        HELD,
        PUSHED
    }

    /** What turns the input shaft. */
    public enum Input {
        ENGINE,
        OFF,
        MEASURED
    }

    public Conditions {
        all = List.copyOf(all);
    }

    /** The same without what only turns a speed into a time, so that readings of one run share their solution. */
    Conditions ofTheDuty() {
        return new Conditions(
                all.stream()
                        .filter(condition -> condition.kind() != ConditionKind.DISTANCE)
                        .toList(),
                wheels,
                input,
                backwards);
    }

    /** Where a condition stands in {@link #all()}; −1 when this reading does not know it. */
    int place(ConditionKind kind) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).kind() == kind) {
                return i;
            }
        }
        return -1;
    }

    /** Value of a condition this reading has, SI unit of the kind. */
    public double value(ConditionKind kind) {
        int place = place(kind);
        if (place < 0) {
            throw new IllegalArgumentException("this reading has no condition " + kind.key());
        }
        return all.get(place).value();
    }
}
