package swashlight.drive.description;

import static swashlight.drive.description.Facts.fixed;
import static swashlight.drive.description.Facts.sized;

/** Cooling. */
public enum HeatParameter implements Parameter {
    CAPACITY(sized("heat.capacity", Dimension.HEAT_CAPACITY, 500, 5e5, 0.15, "heat capacity of drive and oil")),
    CONDUCTANCE_FAN(sized(
            "heat.conductanceFan",
            Dimension.HEAT_CONDUCTANCE,
            0.5,
            1000,
            0.2,
            "heat flow to the air per kelvin with the fan at its usual speed")),
    CONDUCTANCE_STILL(sized(
            "heat.conductanceStill",
            Dimension.HEAT_CONDUCTANCE,
            0.2,
            500,
            0.25,
            "heat flow to the air per kelvin without a fan")),
    FAN_SHARE(fixed(
            "heat.fanShare", Dimension.NUMBER, 0, 1, 1, 0.0, "share of the fan’s effect that is left (0: broken)")),
    FIN_SHARE(fixed(
            "heat.finShare",
            Dimension.NUMBER,
            0.05,
            1,
            1,
            0.0,
            "share of the cooling surface that is clear (below 1: packed with debris)"));

    private static final int FIRST = OilParameter.COUNT
            + UnitParameter.COUNT
            + LoopParameter.COUNT
            + MakeUpParameter.COUNT
            + InputParameter.COUNT
            + OutputParameter.COUNT;

    /** How many there are; unit 1. */
    static final int COUNT = 5;

    private final Facts facts;

    HeatParameter(Facts facts) {
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
