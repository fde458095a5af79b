package swashlight.drive.description;

import static swashlight.drive.description.Facts.fixed;
import static swashlight.drive.description.Facts.sized;

/** How lost oil comes back. */
public enum MakeUpParameter implements Parameter {
    FILTER_RESISTANCE(sized(
            "makeUp.filterResistance",
            Dimension.PER_VOLUME,
            1e4,
            1e14,
            0.3,
            "pressure drop of the clean filter per flow and per dynamic viscosity")),
    FILTER_CLOGGING(fixed(
            "makeUp.filterClogging",
            Dimension.NUMBER,
            1,
            1e6,
            1,
            0.0,
            "resistance of the filter over that of a clean one")),
    UNCOVERED_SHARE(fixed(
            "makeUp.uncoveredShare", Dimension.NUMBER, 0, 0.98, 0, 0.0, "share of the filter above the oil level")),
    AIR_DRAWN(fixed(
            "makeUp.airDrawn", Dimension.NUMBER, 0, 0.25, 0, 0.0, "volume share of air drawn in at the suction side")),
    GALLERY_VOLUME(sized(
            "makeUp.galleryVolume", Dimension.VOLUME, 1e-7, 1e-3, 0.2, "oil volume between filter and check valves")),
    CHARGE_DISPLACEMENT(fixed(
            "makeUp.chargeDisplacement",
            Dimension.DISPLACEMENT,
            0,
            5e-5,
            0,
            0.02,
            "displacement of a charge pump on the input shaft (0: none fitted)")),
    CHARGE_RELIEF(fixed(
            "makeUp.chargeRelief", Dimension.PRESSURE, 0, 5e6, 0, 0.08, "setting of the charge relief valve, gauge")),
    CHARGE_RELIEF_SLOPE(fixed(
            "makeUp.chargeReliefSlope",
            Dimension.FLOW_PER_PRESSURE,
            1e-12,
            1e-7,
            2e-9,
            0.3,
            "flow of the charge relief valve per pressure above its setting"));

    private static final int FIRST = OilParameter.COUNT + UnitParameter.COUNT + LoopParameter.COUNT;

    /** How many there are; unit 1. */
    static final int COUNT = 8;

    private final Facts facts;

    MakeUpParameter(Facts facts) {
        this.facts = facts;
    }

    @Override
    public Facts facts() {
        return facts;
    }

    @Override
    public int index() {
        return FIRST + ordinal();
    }
}
