package swashlight.findings.cause;

import java.util.ArrayList;
import java.util.List;
import swashlight.drive.fault.Fault;
import swashlight.drive.fault.Faults;

/**
 * Faults that go together: one brings the other, or both come of age or neglect. Odds in the same parts as {@link SeedOdds}: own estimate and
 * common practice, no source. Two faults that have nothing to do with one another are left out.
 */
final class Pairs {
    private Pairs() {}

    static List<Cause> all() {
        List<Cause> all = new ArrayList<>();
        pair(all, 1.2, "pump-face-worn", "motor-face-worn");
        pair(all, 1.2, "pump-bores-worn", "motor-bores-worn");
        pair(all, 1.0, "pump-face-scored", "motor-face-scored");
        pair(all, 0.6, "pump-face-worn", "pump-bores-worn");
        for (String wear : new String[] {"pump-face-worn", "motor-face-worn", "pump-bores-worn"}) {
            pair(all, 0.4, wear, "oil-degraded");
        }
        for (String wear : new String[] {"pump-face-worn", "motor-face-worn", "pump-face-scored"}) {
            pair(all, 0.6, wear, "belt-worn");
            pair(all, 0.4, wear, "overload");
        }
        pair(all, 0.4, "pump-face-worn", "fins-packed");
        pair(all, 0.3, "pump-face-worn", "bypass-not-closed");
        pair(all, 0.3, "pump-face-worn", "forward-travel-short");
        pair(all, 0.3, "pump-face-worn", "check-a-leaks");
        pair(all, 0.3, "pump-face-worn", "check-b-leaks");
        pair(all, 0.4, "check-a-leaks", "check-b-leaks");
        pair(all, 0.4, "oil-degraded", "fins-packed");
        pair(all, 0.3, "oil-low", "filter-blocked");
        pair(all, 0.5, "belt-worn", "overload");
        pair(all, 0.4, "belt-worn", "brake-drags");
        pair(all, 0.3, "belt-worn", "forward-travel-short");
        pair(all, 0.3, "belt-worn", "engine-weak");
        pair(all, 0.2, "brake-drags", "fins-packed");
        return List.copyOf(all);
    }

    private static void pair(List<Cause> all, double odds, String one, String other) {
        all.add(new Cause(List.of(part(one), part(other)), odds));
    }

    private static Part part(String key) {
        Fault fault = Faults.find(key).orElseThrow(() -> new IllegalStateException("no fault " + key));
        return Causes.part(fault);
    }
}
