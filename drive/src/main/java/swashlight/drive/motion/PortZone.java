package swashlight.drive.motion;

/** Which port a chamber is open to. */
public enum PortZone {
    SIDE_A("open to side A"),
    SIDE_B("open to side B"),
    BOTH("open to both sides"),
    LARGEST("closed, near its largest volume"),
    SMALLEST("closed, near its smallest volume");

    private final String meaning;

    PortZone(String meaning) {
        this.meaning = meaning;
    }

    /** One plain line. */
    public String meaning() {
        return meaning;
    }
}
