package swashlight.findings.rig;

/** How bad a leak is. */
public enum LeakClass {
    /** Below what matters. */
    NONE("none"),
    /** Beyond what a sound pump shows. */
    SOME("some"),
    /** Enough to pull the pump. */
    SEVERE("severe");

    private final String words;

    LeakClass(String words) {
        this.words = words;
    }

    /** The class in plain words. */
    public String words() {
        return words;
    }
}
