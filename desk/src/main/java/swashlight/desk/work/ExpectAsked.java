package swashlight.desk.work;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which readings somebody is about to take, and how.
 *
 * @param machineCase a case whose readings are asked about instead
 * @param kinds names of kinds of reading; none: the usual ones
 * @param conditions stated ones by their name, laid over the usual ones
 * @param lifted the wheels are clear of the ground
 * @param backwards it rolls or is pushed backwards
 * @param seed of all chance
 */
public record ExpectAsked(
        Optional<Stated> machineCase,
        List<Stated> kinds,
        Map<String, Stated> conditions,
        boolean lifted,
        boolean backwards,
        long seed) {
    public ExpectAsked {
        kinds = List.copyOf(kinds);
        conditions = Map.copyOf(conditions);
    }

    /** The first thing stated that a case brings itself. */
    Optional<Stated> besideCase(DriveAsked drive) {
        return drive.source()
                .or(() -> kinds.stream().findFirst())
                .or(() -> conditions.values().stream().findFirst())
                .or(() -> lifted ? Optional.of(new Stated("--lifted", "")) : Optional.empty())
                .or(() -> backwards ? Optional.of(new Stated("--backwards", "")) : Optional.empty());
    }
}
