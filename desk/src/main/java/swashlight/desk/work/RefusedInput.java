package swashlight.desk.work;

import java.util.List;

/** Carries refusals from where they are found to the outcome; never leaves this package. */
final class RefusedInput extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Refusal> refusals;

    RefusedInput(List<Refusal> refusals) {
        super("input refused", null, false, false);
        this.refusals = List.copyOf(refusals);
    }

    List<Refusal> refusals() {
        return refusals;
    }
}
