package swashlight.desk.work;

import java.util.List;
import java.util.Map;

/**
 * Which readings somebody is about to take, and how.
 *
 * @param kinds names of kinds of reading; none: the usual ones
 * @param conditions stated ones by their name, laid over the usual ones
 * @param lifted the wheels are clear of the ground
 * @param backwards it rolls or is pushed backwards
 * @param seed of all chance
 */
public record ExpectAsked(
        List<Stated> kinds, Map<String, Stated> conditions, boolean lifted, boolean backwards, long seed) {
    public ExpectAsked {
        kinds = List.copyOf(kinds);
        conditions = Map.copyOf(conditions);
    }
}
