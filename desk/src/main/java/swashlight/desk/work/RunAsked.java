package swashlight.desk.work;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * A run in time as somebody asked for it.
 *
 * @param duty a name, or a file; empty for the first named duty
 * @param changes conditions held instead of the duty's own, by their names in files
 * @param fromRest true to begin at rest whatever the duty says
 * @param duration how long; empty for the duty's own
 * @param tolerance of the steps, unit 1 as text
 * @param every between two rows of the traces
 * @param frameEvery between two frames
 * @param traces file for the traces
 * @param orders file for the orders
 * @param frames file for the frames
 * @param events file for the events
 */
public record RunAsked(
        Optional<Stated> duty,
        Map<String, Stated> changes,
        boolean fromRest,
        Optional<Stated> duration,
        Stated tolerance,
        Stated every,
        Stated frameEvery,
        Optional<Path> traces,
        Optional<Path> orders,
        Optional<Path> frames,
        Optional<Path> events) {
    public RunAsked {
        changes = Map.copyOf(changes);
    }
}
