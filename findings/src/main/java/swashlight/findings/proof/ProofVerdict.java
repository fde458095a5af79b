package swashlight.findings.proof;

/** What a reading says about a repair, and what all of them say. */
public enum ProofVerdict {
    PASS("pass"),
    FAIL("fail"),
    CANNOT_TELL("cannot-tell");

    private final String key;

    ProofVerdict(String key) {
        this.key = key;
    }

    /** Stable name. */
    public String key() {
        return key;
    }
}
