package swashlight.findings.cost;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import swashlight.findings.cause.Action;
import swashlight.findings.cause.Part;

/** One piece of work, and what it puts right; the first and cheapest ones from outside. Common practice, no source. */
public enum Job {
    CHANGE_USE("change-use", Renews.NOTHING, Action.CHANGE_USE),
    ADJUST_CONTROL("adjust-control", Renews.NOTHING, Action.ADJUST_CONTROL),
    CLOSE_BYPASS("close-bypass", Renews.NOTHING, Action.CLOSE_BYPASS),
    RENEW_BELT("renew-belt", Renews.NOTHING, Action.RENEW_BELT),
    SERVICE_ENGINE("service-engine", Renews.NOTHING, Action.SERVICE_ENGINE),
    FREE_BRAKE("free-brake", Renews.NOTHING, Action.FREE_BRAKE),
    RIGHT_WHEELS("right-wheels", Renews.NOTHING, Action.RIGHT_WHEELS),
    RESTORE_COOLING("restore-cooling", Renews.NOTHING, Action.RESTORE_COOLING),
    CHANGE_OIL("change-oil", Renews.OIL, Action.CHANGE_OIL),
    /** The drive is opened, so that its oil is new too. */
    RENEW_MAKE_UP("renew-make-up", Renews.OIL, Action.RENEW_MAKE_UP, Action.CHANGE_OIL),
    REPAIR_GEARS("repair-gears", Renews.OIL, Action.REPAIR_GEARS, Action.CHANGE_OIL),
    /** Both blocks, centre section and valves, matched. */
    RENEW_RUNNING_SET(
            "renew-running-set",
            Renews.INSIDE,
            Action.RENEW_RUNNING_SET,
            Action.RENEW_MAKE_UP,
            Action.CLOSE_BYPASS,
            Action.CHANGE_OIL),
    /** Everything inside the case; belt, linkage, brake, wheels, cooling and use stay as they are. */
    EXCHANGE_DRIVE(
            "exchange-drive",
            Renews.INSIDE,
            Action.RENEW_RUNNING_SET,
            Action.RENEW_MAKE_UP,
            Action.CLOSE_BYPASS,
            Action.CHANGE_OIL,
            Action.REPAIR_GEARS),
    /** As an exchange, without a core to give back. */
    NEW_DRIVE(
            "new-drive",
            Renews.INSIDE,
            Action.RENEW_RUNNING_SET,
            Action.RENEW_MAKE_UP,
            Action.CLOSE_BYPASS,
            Action.CHANGE_OIL,
            Action.REPAIR_GEARS);

    /** What is as new afterwards. */
    public enum Renews {
        NOTHING,
        OIL,
        INSIDE
    }

    private final String key;
    private final Renews renews;
    private final Set<Action> puts;

    Job(String key, Renews renews, Action first, Action... more) {
        this.key = key;
        this.renews = renews;
        this.puts = EnumSet.of(first, more);
    }

    /** Stable name. */
    public String key() {
        return key;
    }

    /** What is as new afterwards. */
    public Renews renews() {
        return renews;
    }

    /** Whether this work puts a fault right. */
    public boolean cures(Part part) {
        return puts.contains(part.action());
    }

    /** Whether a fault is inside what an exchange takes away. */
    public static boolean inside(Part part) {
        return EXCHANGE_DRIVE.cures(part) && part.action() != Action.CHANGE_OIL;
    }

    /** The work of an action's own name; none for leaving alone. */
    public static Optional<Job> of(Action action) {
        return find(action.key());
    }

    /** The work with a key. */
    public static Optional<Job> find(String key) {
        for (Job job : values()) {
            if (job.key.equals(key)) {
                return Optional.of(job);
            }
        }
        return Optional.empty();
    }
}
