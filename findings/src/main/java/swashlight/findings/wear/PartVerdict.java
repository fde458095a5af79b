package swashlight.findings.wear;

/** What is said of a measured part, and why. */
public enum PartVerdict {
    /** With what is left in, the machine reaches what is required. */
    REUSE("reuse", "enough"),
    /** Even with everything else new the machine would miss it. */
    REPLACE_ALONE("replace", "alone"),
    /** On its own it would do; together with the other worn parts it does not, and renewing this one helps most. */
    REPLACE_TOGETHER("replace", "together"),
    /** Whether the machine reaches it with this part hangs on what is not known well enough. */
    CANNOT_TELL("cannot-tell", "unsure"),
    /** Not even new parts would reach it for certain. */
    BEYOND("cannot-tell", "beyond"),
    /** No law here derives a limit, and the drive states none of its own. */
    NO_LAW("cannot-tell", "no-law"),
    /** As the drive's own stated limit says. */
    REUSE_AS_STATED("reuse", "stated"),
    /** As the drive's own stated limit says. */
    REPLACE_AS_STATED("replace", "stated");

    private final String key;
    private final String reason;

    PartVerdict(String key, String reason) {
        this.key = key;
        this.reason = reason;
    }

    /** reuse, replace or cannot-tell. */
    public String key() {
        return key;
    }

    /** Stable name of the reason. */
    public String reason() {
        return reason;
    }
}
