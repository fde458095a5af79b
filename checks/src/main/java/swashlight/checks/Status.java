package swashlight.checks;

/** How far a row may be trusted as evidence from outside. */
public enum Status {
    /** Inputs and result were both seen in print, and a recomputation agrees. */
    SEEN("seen"),
    /** Recalled, not seen in print: look it up before leaning on it. */
    MEMORY("memory"),
    /** Inputs and formula were seen; the result is our own recomputation (scripts in {@code checks/origin}). */
    RECOMPUTED("recomputed"),
    /** No published number: the exact value of a formula, good for regression and not as outside evidence. */
    CLOSED_FORM("closed-form"),
    /** Seen in print, but it does not reproduce; the note says what does. */
    DISAGREES("disagrees");

    private final String word;

    Status(String word) {
        this.word = word;
    }

    /** The word used in the CSV files. */
    public String word() {
        return word;
    }

    static Status of(String word) {
        for (Status status : values()) {
            if (status.word.equals(word)) {
                return status;
            }
        }
        throw new IllegalArgumentException(
                "status '" + word + "': give one of seen, memory, recomputed, closed-form, disagrees");
    }
}
