package swashlight.drive.fault;

/** Where in the machine a fault sits. */
public enum FaultPlace {
    PUMP_BLOCK,
    MOTOR_BLOCK,
    CENTRE_SECTION,
    MAKE_UP,
    BYPASS,
    CONTROL,
    OIL,
    INPUT,
    OUTPUT,
    USE
}
