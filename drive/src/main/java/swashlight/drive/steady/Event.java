package swashlight.drive.steady;

/** What a technician would remark on in a situation. */
public enum Event {
    /** The machine stands: friction or brake holds it. */
    STANDS,
    /** The wheels turn without grip: the ground carries less than is asked. */
    WHEELS_SPIN,
    /** The machine is pushed faster than the drive lets the wheels turn: they slide over the ground. */
    WHEELS_SKID,
    /** More than 400 bar: in a real drive something would give way first. */
    EXTREME_PRESSURE,
    /** The engine is pulled down until it dies. */
    ENGINE_STALLS,
    /** The belt slips by more than 3 %. */
    BELT_SLIPS,
    /** Oil is missing on side A: it cannot be filled. */
    SIDE_A_STARVES,
    /** Oil is missing on side B: it cannot be filled. */
    SIDE_B_STARVES,
    /** A loop relief valve is open. */
    RELIEF_OPENS,
    /** The wheels drive the motor, which pumps: high and low side have changed over. */
    MOTOR_PUMPS
}
