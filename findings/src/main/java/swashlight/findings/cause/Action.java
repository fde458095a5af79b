package swashlight.findings.cause;

/** What a finding calls for: a closed list, cheapest first. */
public enum Action {
    LEAVE_ALONE("leave-alone", "leave the drive alone: it does what it should"),
    CHANGE_USE("change-use", "take load or slope off, or fit a stronger drive"),
    ADJUST_CONTROL("adjust-control", "adjust or repair linkage, neutral and return"),
    CLOSE_BYPASS("close-bypass", "close, free or repair the bypass"),
    RENEW_BELT("renew-belt", "renew or tension the belt, put pulley and key right"),
    SERVICE_ENGINE("service-engine", "set or repair the engine"),
    FREE_BRAKE("free-brake", "free, set or repair the parking brake"),
    RIGHT_WHEELS("right-wheels", "put tyres, pressure or wheel grip right"),
    RESTORE_COOLING("restore-cooling", "clean fins, repair the fan, measure the oil temperature"),
    CHANGE_OIL("change-oil", "right level and grade of oil, then purge the air"),
    RENEW_MAKE_UP("renew-make-up", "renew suction filter, seals, make-up valves or bleed orifices"),
    REPAIR_GEARS("repair-gears", "repair keys, gears, differential or axle"),
    RENEW_RUNNING_SET("renew-running-set", "open and renew the matched running set, or exchange the drive");

    private final String key;
    private final String words;

    Action(String key, String words) {
        this.key = key;
        this.words = words;
    }

    /** Stable name. */
    public String key() {
        return key;
    }

    /** What to do, in plain words. */
    public String words() {
        return words;
    }
}
