package swashlight.desk.work;

import java.util.Map;
import java.util.Optional;

/**
 * Circumstances as somebody gave them.
 *
 * @param duty a duty file that states some of them
 * @param stated by name; these count where both speak
 */
public record CircumstancesAsked(Optional<Stated> duty, Map<String, Stated> stated) {
    public CircumstancesAsked {
        stated = Map.copyOf(stated);
    }
}
