package swashlight.findings.next;

import java.util.List;
import swashlight.findings.reading.Look;

/** Looking, listening and asking: what is noted in one go, and its time. Times: common practice, no source. */
public enum LookErrand {
    ASK(
            "ask-customer",
            "ask the customer when and how it came, and what helped",
            3,
            List.of(
                    Look.CAME_SUDDENLY,
                    Look.SINCE_SERVICE,
                    Look.BETTER_AFTER_PURGE,
                    Look.FADES_HOT,
                    Look.WEAK_COLD,
                    Look.WEAK_FORWARD_ONLY,
                    Look.WEAK_REVERSE_ONLY)),
    BELT("look-belt", "look at belt, pulleys and key marks", 4, List.of(Look.BELT_GLAZED, Look.MARKS_SHIFTED)),
    COOLING("look-cooling", "look at fins and fan", 3, List.of(Look.FINS_DIRTY, Look.FAN_DAMAGED)),
    OIL_LEVEL(
            "look-oil-level",
            "look at the oil's level and for oil outside",
            4,
            List.of(Look.OIL_BELOW_MARK, Look.OIL_OUTSIDE)),
    OIL_SAMPLE(
            "look-oil-sample",
            "draw a spoonful of oil: clear, dark, milky, foamy, burnt",
            6,
            List.of(Look.OIL_CLEAR, Look.OIL_DARK, Look.OIL_MILKY, Look.OIL_FOAMY, Look.OIL_BURNT)),
    LISTEN(
            "listen",
            "drive it and listen: what follows the engine, what the wheels, what clicks or jerks",
            6,
            List.of(
                    Look.WHINE_WITH_INPUT,
                    Look.NOISE_WITH_GROUND_SPEED,
                    Look.CLICKS,
                    Look.JERKS,
                    Look.WHEEL_TURNS_MACHINE_STANDS,
                    Look.ENGINE_LABOURS)),
    DEBRIS(
            "strain-oil",
            "drain the oil through a sieve and past a magnet, and look at what stays; fill up again",
            30,
            List.of(
                    Look.DEBRIS_NONE,
                    Look.DEBRIS_GREY_PASTE,
                    Look.DEBRIS_STEEL_FLAKES,
                    Look.DEBRIS_BRONZE,
                    Look.DEBRIS_CHIPS));

    private static final double MINUTE = 60; // s

    private final String key;
    private final String words;
    private final double time; // s
    private final List<Look> looks;

    LookErrand(String key, String words, double minutes, List<Look> looks) {
        this.key = key;
        this.words = words;
        this.time = minutes * MINUTE;
        this.looks = looks;
    }

    /** Stable name. */
    public String key() {
        return key;
    }

    /** What to do, in plain words. */
    public String words() {
        return words;
    }

    /** Usual time of one person, s. */
    public double time() {
        return time;
    }

    /** What is noted, present or not. */
    public List<Look> looks() {
        return looks;
    }

    /** Whether the oil goes and has to be bought anew. */
    public boolean drains() {
        return this == DEBRIS;
    }
}
