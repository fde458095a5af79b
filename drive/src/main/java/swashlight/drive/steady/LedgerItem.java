package swashlight.drive.steady;

/** Every gap and part that takes oil or power, in the order a reader meets them from engine to ground. */
public enum LedgerItem {
    ENGINE("power the engine gives this drive"),
    PUSH("power that pushes the machine from outside"),
    BELT("belt slip"),
    CHARGE_PUMP("charge pump"),
    PUMP_FRICTION("pump: friction of pistons, faces and thrust bearing"),
    PUMP_DRAG("pump: viscous drag of face and pistons"),
    PUMP_CHURNING("pump: churning"),
    PUMP_CARRY("pump: geometric delivery"),
    PUMP_SWITCHING("pump: compression and filling of the chambers"),
    PUMP_PISTONS("pump: past the pistons"),
    PUMP_BAD_PISTON("pump: past one bad piston"),
    PUMP_FACE("pump: across the port face"),
    PUMP_SCORES("pump: through scores to the case"),
    PUMP_SHOES("pump: shoe pockets"),
    PUMP_BRIDGE("pump: kidney to kidney"),
    PUMP_BRIDGE_SCORE("pump: score across the bridge"),
    CRACK_A("crack from side A to the case"),
    CRACK_B("crack from side B to the case"),
    CRACK_AB("crack between the sides"),
    FORCED_OPEN("whatever is forced open above 600 bar"),
    BYPASS("bypass valve"),
    LIFTED_BLOCK("bypass: lifted motor block"),
    RELIEF("relief valves"),
    CHECK_A("make-up check valve A"),
    CHECK_B("make-up check valve B"),
    BLEED_A("bleed orifice A"),
    BLEED_B("bleed orifice B"),
    FILTER("filter"),
    CHARGE_RELIEF("charge relief valve"),
    MOTOR_CARRY("motor: geometric intake"),
    MOTOR_SWITCHING("motor: compression and filling of the chambers"),
    MOTOR_PISTONS("motor: past the pistons"),
    MOTOR_BAD_PISTON("motor: past one bad piston"),
    MOTOR_FACE("motor: across the port face"),
    MOTOR_SCORES("motor: through scores to the case"),
    MOTOR_SHOES("motor: shoe pockets"),
    MOTOR_BRIDGE("motor: kidney to kidney"),
    MOTOR_BRIDGE_SCORE("motor: score across the bridge"),
    MOTOR_FRICTION("motor: friction of pistons, faces and thrust bearing"),
    MOTOR_DRAG("motor: viscous drag of face and pistons"),
    MOTOR_CHURNING("motor: churning"),
    GEARS("gear meshes"),
    AXLE_DRAG("drag of gears, bearings and seals"),
    BRAKE("brake"),
    WHEEL_SLIP("slip of the wheels on the ground"),
    ROLLING("rolling resistance"),
    PULL("drawbar and scrub"),
    GRADE("climbing (given back downhill)");

    private final String meaning;

    LedgerItem(String meaning) {
        this.meaning = meaning;
    }

    /** One plain line. */
    public String meaning() {
        return meaning;
    }
}
