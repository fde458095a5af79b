package swashlight.drive.description;

import static swashlight.drive.description.Facts.fixed;
import static swashlight.drive.description.Facts.sized;

/** What describes a rotating group with its port face, pump or motor alike. */
public enum UnitProperty {
    DISPLACEMENT(sized(
            "unit.displacement",
            Dimension.DISPLACEMENT,
            1e-6,
            3e-4,
            0.0,
            "geometric displacement at full swash angle")),
    PISTON_COUNT(sized("unit.pistonCount", Dimension.NUMBER, 3, 15, 0.0, "number of pistons")),
    PISTON_DIAMETER(sized("unit.pistonDiameter", Dimension.LENGTH, 4e-3, 60e-3, 0.0, "piston diameter")),
    PITCH_RADIUS(sized(
            "unit.pitchRadius", Dimension.LENGTH, 5e-3, 0.15, 0.0, "radius of the circle on which the pistons stand")),
    FULL_SWASH_ANGLE(sized(
                    "unit.fullSwashAngle",
                    Dimension.ANGLE,
                    0.05,
                    0.5,
                    0.0035,
                    "swash angle at full stroke (motor: its fixed angle)")
            .absolute()),
    CHAMBER_MID_VOLUME(
            sized("unit.chamberMidVolume", Dimension.VOLUME, 1e-8, 1e-3, 0.1, "oil in one chamber at mid stroke")),
    BORE_CLEARANCE(fixed(
            "unit.boreClearance",
            Dimension.LENGTH,
            1e-6,
            1.5e-4,
            15e-6,
            0.2,
            "radial clearance of pistons in their bores")),
    BORE_ECCENTRICITY(fixed(
                    "unit.boreEccentricity",
                    Dimension.NUMBER,
                    0,
                    1,
                    0.8,
                    0.15,
                    "eccentricity of pistons over their clearance")
            .absolute()),
    ENGAGED_LENGTH(
            sized("unit.engagedLength", Dimension.LENGTH, 3e-3, 0.2, 0.05, "engaged length of a piston at mid stroke")),
    BAD_PISTON_CLEARANCE(fixed(
            "unit.badPistonClearance",
            Dimension.LENGTH,
            0,
            3e-4,
            0,
            0.0,
            "radial clearance of one bad piston (0: like the others)")),
    IDLE_PISTONS(fixed(
            "unit.idlePistons",
            Dimension.NUMBER,
            0,
            14,
            0,
            0.0,
            "number of pistons that do not stroke (broken spring, seized)")),
    FACE_GAP(fixed(
            "unit.faceGap", Dimension.LENGTH, 1e-6, 2e-4, 15e-6, 0.2, "mean oil film between block and port face")),
    KIDNEY_SPAN(fixed("unit.kidneySpan", Dimension.ANGLE, 0.5, 3, 2.4, 0.0, "angle that one kidney spans")),
    LAND_INNER(sized("unit.landInner", Dimension.LENGTH, 2e-3, 0.15, 0.0, "inner radius of the inner sealing land")),
    KIDNEY_INNER(sized("unit.kidneyInner", Dimension.LENGTH, 2e-3, 0.15, 0.0, "inner radius of the kidneys")),
    KIDNEY_OUTER(sized("unit.kidneyOuter", Dimension.LENGTH, 2e-3, 0.15, 0.0, "outer radius of the kidneys")),
    LAND_OUTER(sized("unit.landOuter", Dimension.LENGTH, 2e-3, 0.15, 0.0, "outer radius of the outer sealing land")),
    CASE_SCORE_WIDTH(fixed(
            "unit.caseScoreWidth",
            Dimension.LENGTH,
            0,
            0.02,
            3e-3,
            0.0,
            "width of a score from the kidneys to the case, on the turning face: it acts on A and B alike")),
    CASE_SCORE_DEPTH(fixed("unit.caseScoreDepth", Dimension.LENGTH, 0, 5e-4, 0, 0.0, "depth of that score")),
    SIDE_A_SCORE_WIDTH(fixed(
            "unit.sideAScoreWidth",
            Dimension.LENGTH,
            0,
            0.02,
            3e-3,
            0.0,
            "width of a score from kidney A to the case, on the standing face")),
    SIDE_A_SCORE_DEPTH(fixed("unit.sideAScoreDepth", Dimension.LENGTH, 0, 5e-4, 0, 0.0, "depth of that score")),
    SIDE_B_SCORE_WIDTH(fixed(
            "unit.sideBScoreWidth",
            Dimension.LENGTH,
            0,
            0.02,
            3e-3,
            0.0,
            "width of a score from kidney B to the case, on the standing face")),
    SIDE_B_SCORE_DEPTH(fixed("unit.sideBScoreDepth", Dimension.LENGTH, 0, 5e-4, 0, 0.0, "depth of that score")),
    BRIDGE_SCORE_WIDTH(fixed(
            "unit.bridgeScoreWidth",
            Dimension.LENGTH,
            0,
            0.02,
            3e-3,
            0.0,
            "width of a score across the bridge between the kidneys")),
    BRIDGE_SCORE_DEPTH(fixed("unit.bridgeScoreDepth", Dimension.LENGTH, 0, 5e-4, 0, 0.0, "depth of that score")),
    SHOE_ORIFICE(fixed(
            "unit.shoeOrifice",
            Dimension.LENGTH,
            0,
            3e-3,
            0,
            0.05,
            "diameter of the hole that feeds a shoe pocket (0: no pocket)")),
    SHOE_GAP(fixed("unit.shoeGap", Dimension.LENGTH, 0, 1e-4, 0, 0.2, "film under a shoe with a pocket")),
    FRICTION_COEFFICIENT(fixed(
            "unit.frictionCoefficient",
            Dimension.NUMBER,
            0,
            0.5,
            0.03,
            0.25,
            "Coulomb friction of pistons and faces over their pressure load")),
    BREAKAWAY_RATIO(fixed(
            "unit.breakawayRatio", Dimension.NUMBER, 1, 5, 1.8, 0.2, "friction at standstill over running friction")),
    THRUST_FRICTION(fixed(
            "unit.thrustFriction", Dimension.NUMBER, 0, 0.1, 0.003, 0.4, "friction coefficient of the thrust bearing")),
    CHURNING_COEFFICIENT(fixed(
            "unit.churningCoefficient",
            Dimension.NUMBER,
            0,
            5,
            0.2,
            0.4,
            "drag of the block turning in oil: torque = coefficient · density · speed² · land outer radius⁵ / 2")),
    PORT_OVERLAP(fixed(
            "unit.portOverlap",
            Dimension.ANGLE,
            0,
            0.5,
            0.06,
            0.0,
            "half the angle by which a port stays shut beyond the dead centres")),
    PORT_RAMP(fixed("unit.portRamp", Dimension.ANGLE, 0.005, 0.6, 0.12, 0.0, "angle over which a port opens")),
    PORT_AREA(sized(
            "unit.portArea", Dimension.AREA, 1e-7, 2e-3, 0.1, "greatest opening between one chamber and a kidney")),
    GROOVE_AREA(fixed(
            "unit.grooveArea",
            Dimension.AREA,
            0,
            1e-4,
            0,
            0.0,
            "area of the relief groove at a kidney’s end (0: none)")),
    GROOVE_ANGLE(fixed("unit.grooveAngle", Dimension.ANGLE, 0, 0.6, 0, 0.0, "angle of the relief groove")),
    BLOCK_SPRING(sized("unit.blockSpring", Dimension.FORCE, 0, 5000, 0.1, "force of the block spring")),
    BALANCE_RATIO(fixed(
                    "unit.balanceRatio",
                    Dimension.NUMBER,
                    0.5,
                    1.2,
                    0.9,
                    0.03,
                    "separating over clamping force of the block on its face")
            .absolute()),
    INERTIA(sized("unit.inertia", Dimension.INERTIA, 1e-7, 1, 0.2, "inertia of the rotating group"));

    private final Facts facts;

    UnitProperty(Facts facts) {
        this.facts = facts;
    }

    Facts facts() {
        return facts;
    }
}
