package swashlight.drive.description;

/** The two rotating groups of a drive. */
public enum Place {
    PUMP("pump"),
    MOTOR("motor");

    private final String section;

    Place(String section) {
        this.section = section;
    }

    /** The section of a description that holds this unit's numbers. */
    public String section() {
        return section;
    }
}
