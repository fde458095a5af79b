package swashlight.drive.fault;

/** What a fault of use does to the conditions. */
public enum DutyEffect {
    NONE,
    /** The oil is hotter than believed; severity in K. */
    HOTTER,
    /** The slope is steeper than believed; severity in rad. */
    STEEPER
}
