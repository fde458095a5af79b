package swashlight.drive.description;

/** Where a number came from. */
public enum Origin {
    /** Stated by whoever described the drive. */
    GIVEN,
    /** Estimated from measurements. */
    FITTED,
    /** Usual for drives of this size. */
    TYPICAL
}
