package swashlight.drive.motion;

/** A duty that should begin settled has no settled state at its beginning: begin at rest, or from a state. */
public final class NoSettledStart extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    NoSettledStart() {
        super("the duty has no settled state at time 0; start at rest instead");
    }
}
