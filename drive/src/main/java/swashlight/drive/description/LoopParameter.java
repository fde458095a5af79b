package swashlight.drive.description;

import static swashlight.drive.description.Facts.fixed;
import static swashlight.drive.description.Facts.sized;

/** The two main passages with their valves. */
public enum LoopParameter implements Parameter {
    VOLUME_A(sized("loop.volumeA", Dimension.VOLUME, 1e-6, 5e-3, 0.15, "oil volume of main passage A")),
    VOLUME_B(sized("loop.volumeB", Dimension.VOLUME, 1e-6, 5e-3, 0.15, "oil volume of main passage B")),
    CHECK_CRACK(fixed(
            "loop.checkCrack",
            Dimension.PRESSURE,
            0,
            1e5,
            2e3,
            0.3,
            "pressure at which a make-up check valve begins to open")),
    CHECK_SPAN(fixed(
            "loop.checkSpan",
            Dimension.PRESSURE,
            1e3,
            5e5,
            15e3,
            0.3,
            "further pressure until a make-up check valve is fully open")),
    CHECK_AREA(
            sized("loop.checkArea", Dimension.AREA, 1e-7, 1e-3, 0.2, "flow area of a fully open make-up check valve")),
    CHECK_A_LEAK(fixed(
                    "loop.checkALeak",
                    Dimension.AREA,
                    0,
                    2e-5,
                    2e-9,
                    1.5e-9,
                    "leak area of the shut check valve on side A")
            .absolute()),
    CHECK_B_LEAK(fixed(
                    "loop.checkBLeak",
                    Dimension.AREA,
                    0,
                    2e-5,
                    2e-9,
                    1.5e-9,
                    "leak area of the shut check valve on side B")
            .absolute()),
    CHECK_A_LIFT(fixed(
            "loop.checkALift",
            Dimension.NUMBER,
            0,
            1,
            0,
            0.0,
            "share of full lift below which check valve A cannot close (1: stuck open)")),
    CHECK_B_LIFT(fixed(
            "loop.checkBLift",
            Dimension.NUMBER,
            0,
            1,
            0,
            0.0,
            "share of full lift below which check valve B cannot close (1: stuck open)")),
    CHECK_A_REACH(fixed(
            "loop.checkAReach",
            Dimension.NUMBER,
            0,
            1,
            1,
            0.0,
            "share of full lift check valve A can reach (0: stuck shut)")),
    CHECK_B_REACH(fixed(
            "loop.checkBReach",
            Dimension.NUMBER,
            0,
            1,
            1,
            0.0,
            "share of full lift check valve B can reach (0: stuck shut)")),
    BLEED_A(fixed(
            "loop.bleedA",
            Dimension.LENGTH,
            0,
            5e-3,
            0,
            0.05,
            "diameter of the bleed orifice beside check valve A (0: none)")),
    BLEED_B(fixed(
            "loop.bleedB",
            Dimension.LENGTH,
            0,
            5e-3,
            0,
            0.05,
            "diameter of the bleed orifice beside check valve B (0: none)")),
    RELIEF_A(fixed(
            "loop.reliefA",
            Dimension.PRESSURE,
            0,
            6e7,
            0,
            0.05,
            "opening pressure of the relief valve that guards side A (0: none fitted)")),
    RELIEF_B(fixed(
            "loop.reliefB",
            Dimension.PRESSURE,
            0,
            6e7,
            0,
            0.05,
            "opening pressure of the relief valve that guards side B (0: none fitted)")),
    RELIEF_SLOPE(fixed(
            "loop.reliefSlope",
            Dimension.FLOW_PER_PRESSURE,
            1e-12,
            1e-8,
            1e-10,
            0.3,
            "flow of an open relief valve per pressure above its setting")),
    CRACK_A(fixed("loop.crackA", Dimension.AREA, 0, 2e-5, 0, 0.0, "area of a crack or pores from side A to the case")),
    CRACK_B(fixed("loop.crackB", Dimension.AREA, 0, 2e-5, 0, 0.0, "area of a crack or pores from side B to the case")),
    CRACK_AB(fixed("loop.crackAB", Dimension.AREA, 0, 2e-5, 0, 0.0, "area of a crack between sides A and B")),
    BYPASS_AREA(sized(
            "loop.bypassArea",
            Dimension.AREA,
            0,
            1e-3,
            0.2,
            "area of a fully open bypass valve between A and B (0: not this kind)")),
    BYPASS_LIFT(fixed(
            "loop.bypassLift",
            Dimension.LENGTH,
            0,
            5e-3,
            0,
            0.2,
            "lift of the motor block when the bypass is open (0: not this kind)")),
    BYPASS_REST(fixed(
            "loop.bypassRest", Dimension.NUMBER, 0, 1, 0, 0.0, "share of the bypass that stays open when it is shut")),
    BYPASS_REACH(fixed(
            "loop.bypassReach", Dimension.NUMBER, 0, 1, 1, 0.0, "share of the bypass that opens when it is pulled"));

    private static final int FIRST = OilParameter.COUNT + UnitParameter.COUNT;

    /** How many there are; unit 1. */
    static final int COUNT = 23;

    private final Facts facts;

    LoopParameter(Facts facts) {
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
