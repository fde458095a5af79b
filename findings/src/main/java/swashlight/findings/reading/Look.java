package swashlight.findings.reading;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What eyes, ears and nose report, and what the customer tells; common practice, no source. A story that a reading of some kind tells better is
 * left aside once such a reading is there.
 */
public enum Look {
    OIL_CLEAR("oilClear"),
    OIL_DARK("oilDark"),
    OIL_MILKY("oilMilky"),
    OIL_FOAMY("oilFoamy"),
    OIL_BURNT("oilBurnt"),
    OIL_BELOW_MARK("oilBelowMark"),
    OIL_OUTSIDE("oilOutside"),
    DEBRIS_NONE("debrisNone"),
    DEBRIS_GREY_PASTE("debrisGreyPaste"),
    DEBRIS_STEEL_FLAKES("debrisSteelFlakes"),
    DEBRIS_BRONZE("debrisBronze"),
    DEBRIS_CHIPS("debrisChips"),
    WHINE_WITH_INPUT("whineWithInput"),
    NOISE_WITH_GROUND_SPEED("noiseWithGroundSpeed"),
    CLICKS("clicks"),
    JERKS("jerks"),
    BELT_GLAZED("beltGlazed"),
    FINS_DIRTY("finsDirty"),
    FAN_DAMAGED("fanDamaged"),
    MARKS_SHIFTED("marksShifted"),
    WHEEL_TURNS_MACHINE_STANDS("wheelTurnsMachineStands"),
    CAME_SUDDENLY("cameSuddenly"),
    SINCE_SERVICE("sinceService"),
    BETTER_AFTER_PURGE("betterAfterPurge"),
    FADES_HOT("fadesHot", ReadingKind.RUN_TIME, ReadingKind.GROUND_SPEED, ReadingKind.AXLE_SPEED),
    WEAK_COLD("weakCold", ReadingKind.RUN_TIME, ReadingKind.GROUND_SPEED, ReadingKind.AXLE_SPEED),
    WEAK_FORWARD_ONLY("weakForwardOnly", ReadingKind.RUN_TIME, ReadingKind.GROUND_SPEED, ReadingKind.ROLL_TIME),
    WEAK_REVERSE_ONLY("weakReverseOnly", ReadingKind.RUN_TIME, ReadingKind.GROUND_SPEED, ReadingKind.ROLL_TIME),
    ENGINE_LABOURS("engineLabours", ReadingKind.ENGINE_SPEED),
    CREEPS_IN_NEUTRAL("creepsInNeutral", ReadingKind.CREEP_SPEED),
    HARD_TO_PUSH("hardToPush", ReadingKind.PUSH_FORCE),
    ROLLS_AWAY("rollsAway", ReadingKind.ROLL_TIME, ReadingKind.ROLL_SPEED),
    ARM_SHORT_OF_STOP("armShortOfStop", ReadingKind.ARM_TRAVEL);

    private final String key;
    private final Set<ReadingKind> toldBetterBy;

    Look(String key, ReadingKind... toldBetterBy) {
        this.key = key;
        this.toldBetterBy =
                toldBetterBy.length == 0 ? EnumSet.noneOf(ReadingKind.class) : EnumSet.copyOf(List.of(toldBetterBy));
    }

    /** Name in files. */
    public String key() {
        return key;
    }

    /** True when one of these readings tells the same with a number. */
    public boolean toldBetterBy(Set<ReadingKind> kinds) {
        return toldBetterBy.stream().anyMatch(kinds::contains);
    }
}
