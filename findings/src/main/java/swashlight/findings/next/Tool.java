package swashlight.findings.next;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** What a reading needs that not every yard has. */
public enum Tool {
    TAPE("tape"),
    STOPWATCH("stopwatch"),
    /** Hanging scale for a push. */
    SCALE("scale"),
    /** Scale for the largest pull, with something to pull against. */
    PULL_SCALE("pull-scale"),
    /** Records sound and, laid on the frame or the arm, reads an angle. */
    PHONE("phone"),
    TACHOMETER("tachometer"),
    STANDS("stands"),
    /** A slope to climb and roll on. */
    SLOPE("slope"),
    /** A gauge, and a port to screw it into. */
    GAUGE("gauge");

    private final String key;

    Tool(String key) {
        this.key = key;
    }

    /** Its name on a command line. */
    public String key() {
        return key;
    }

    /** The tool of a name. */
    public static Optional<Tool> find(String key) {
        for (Tool tool : values()) {
            if (tool.key.equals(key)) {
                return Optional.of(tool);
            }
        }
        return Optional.empty();
    }

    /** What a workshop usually has: all but pull scale and gauge (common practice, no source). */
    public static Set<Tool> usual() {
        return EnumSet.complementOf(EnumSet.of(PULL_SCALE, GAUGE));
    }
}
