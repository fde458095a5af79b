package swashlight.findings.reading;

/** What eyes, ears and nose report; common practice, no source. */
public enum Look {
    OIL_CLEAR("oilClear"),
    OIL_DARK("oilDark"),
    OIL_MILKY("oilMilky"),
    OIL_FOAMY("oilFoamy"),
    OIL_BURNT("oilBurnt"),
    OIL_BELOW_MARK("oilBelowMark"),
    DEBRIS_NONE("debrisNone"),
    DEBRIS_GREY_PASTE("debrisGreyPaste"),
    DEBRIS_STEEL_FLAKES("debrisSteelFlakes"),
    DEBRIS_BRONZE("debrisBronze"),
    DEBRIS_CHIPS("debrisChips"),
    WHINE_WITH_INPUT("whineWithInput"),
    NOISE_WITH_GROUND_SPEED("noiseWithGroundSpeed"),
    BELT_GLAZED("beltGlazed"),
    FINS_DIRTY("finsDirty"),
    FAN_DAMAGED("fanDamaged"),
    MARKS_SHIFTED("marksShifted");

    private final String key;

    Look(String key) {
        this.key = key;
    }

    /** Name in files. */
    public String key() {
        return key;
    }
}
