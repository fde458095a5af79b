package swashlight.findings.cause;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swashlight.drive.fault.Fault;
import swashlight.drive.fault.Faults;

/**
 * All causes: healthy, every fault of {@link Faults}, and pairs that go together. Odds are in parts of about a hundred machines that come in as weak, slow or dead:
 * own estimate and common practice, no source, to be replaced by counted cases.
 */
public final class Causes {
    /** Of a hundred machines that come in, so many have a sound drive and nothing else wrong, 1. */
    static final double HEALTHY_ODDS = 10;

    private static final List<Cause> ALL = list();

    private Causes() {}

    /** Healthy first, then the faults in their own order, then pairs. */
    public static List<Cause> all() {
        return ALL;
    }

    /** The cause with a key such as {@code belt-worn} or {@code healthy}. */
    public static Optional<Cause> find(String key) {
        return ALL.stream().filter(cause -> cause.key().equals(key)).findFirst();
    }

    private static List<Cause> list() {
        List<Cause> all = new ArrayList<>();
        all.add(new Cause(List.of(), HEALTHY_ODDS));
        for (Fault fault : Faults.all()) {
            all.add(new Cause(List.of(part(fault)), SeedOdds.of(fault.key()).odds()));
        }
        all.addAll(Pairs.all());
        return List.copyOf(all);
    }

    static Part part(Fault fault) {
        SeedOdds.Row row = SeedOdds.of(fault.key());
        return new Part(fault, SeverityPrior.of(fault, row.counted()), row.action());
    }
}
