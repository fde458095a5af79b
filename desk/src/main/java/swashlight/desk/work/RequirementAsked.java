package swashlight.desk.work;

import java.util.Map;
import java.util.Optional;

/**
 * What somebody says a machine must do; nothing for the usual, or for what a file says.
 *
 * @param stated texts by key: need, speed, pull, roll, hill, load, oil
 * @param pressure at which leaks are told
 */
public record RequirementAsked(Map<String, Stated> stated, Optional<Stated> pressure) {
    public RequirementAsked {
        stated = Map.copyOf(stated);
    }
}
