package swashlight.findings.wear;

import java.util.List;

/**
 * What a teardown comes to.
 *
 * @param yardstick what must be done
 * @param parts in the order measured
 * @param unmeasured parts taken as new because nobody measured them
 * @param reachesNew share of machines that reach it with all parts new, 1
 * @param reaches share that reach it with all parts as measured, 1
 * @param reachesAfter share that reach it with {@link #renew()} renewed, 1
 * @param renew fewest parts, found by always taking the one that helps most
 * @param performed by requirement: with all parts as measured (nine in ten within), SI unit of its kind
 * @param performedNew by requirement: with all parts new (nine in ten within), SI unit of its kind
 * @param sources what the doubt whether it is reached comes from, largest first
 * @param machines drawn, 1
 */
public record TeardownFinding(
        Yardstick yardstick,
        List<PartFinding> parts,
        List<WearPart> unmeasured,
        double reachesNew,
        double reaches,
        double reachesAfter,
        List<WearPart> renew,
        List<Span> performed,
        List<Span> performedNew,
        List<Source> sources,
        int machines) {
    public TeardownFinding {
        parts = List.copyOf(parts);
        unmeasured = List.copyOf(unmeasured);
        renew = List.copyOf(renew);
        performed = List.copyOf(performed);
        performedNew = List.copyOf(performedNew);
        sources = List.copyOf(sources);
    }

    /**
     * Where doubt comes from.
     *
     * @param name key of a parameter, or which gauge, reading or shape
     * @param share of the variance of the margin, 1, from the correlation
     */
    public record Source(String name, double share) {}
}
