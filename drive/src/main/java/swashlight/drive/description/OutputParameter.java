package swashlight.drive.description;

import static swashlight.drive.description.Facts.fixed;

/** Gears, brake, wheels and machine. */
public enum OutputParameter implements Parameter {
    GEARS_RATIO(fixed("gears.ratio", Dimension.NUMBER, 0.5, 120, 28, 0.0, "motor speed over axle speed")),
    GEARS_MESH_EFFICIENCY(fixed(
                    "gears.meshEfficiency",
                    Dimension.NUMBER,
                    0.5,
                    1,
                    0.93,
                    0.015,
                    "torque efficiency of all gear meshes together")
            .absolute()),
    GEARS_DRAG_TORQUE(fixed(
            "gears.dragTorque", Dimension.TORQUE, 0, 100, 2.5, 0.4, "drag of gears, bearings and seals, at the axle")),
    GEARS_TOOTH_LOSS(
            fixed("gears.toothLoss", Dimension.NUMBER, 0, 0.9, 0, 0.0, "share of torque lost in damaged teeth")),
    GEARS_CONNECTED(fixed(
            "gears.connected",
            Dimension.NUMBER,
            0,
            1,
            1,
            0.0,
            "1 when motor and wheels are joined, 0 when key, shaft or gear is sheared")),
    GEARS_DIFFERENTIAL_LOCKED(
            fixed("gears.differentialLocked", Dimension.NUMBER, 0, 1, 0, 0.0, "1 when both wheels must turn alike")),
    GEARS_AXLE_STIFFNESS(fixed(
            "gears.axleStiffness",
            Dimension.STIFFNESS,
            100,
            1e6,
            8000,
            0.3,
            "torsional stiffness of the axle shafts together")),
    BRAKE_CAPACITY(fixed(
            "brake.capacity", Dimension.TORQUE, 0, 20000, 400, 0.2, "torque the applied brake can hold, at the axle")),
    BRAKE_DRAG_TORQUE(
            fixed("brake.dragTorque", Dimension.TORQUE, 0, 2000, 0, 0.0, "torque of the released brake, at the axle")),
    WHEELS_ROLLING_RADIUS(fixed(
            "wheels.rollingRadius",
            Dimension.LENGTH,
            0.05,
            1,
            0.24,
            0.01,
            "loaded rolling radius of the driven wheels")),
    WHEELS_RADIUS_MISMATCH(fixed(
            "wheels.radiusMismatch",
            Dimension.NUMBER,
            -0.3,
            0.3,
            0,
            0.0,
            "difference of the two wheels’ radii over their mean")),
    WHEELS_TRACTION(fixed(
            "wheels.traction",
            Dimension.NUMBER,
            0.05,
            1.2,
            0.7,
            0.12,
            "greatest pull of the driven wheels over the weight on them")),
    WHEELS_TRACTION_STIFFNESS(fixed(
            "wheels.tractionStiffness",
            Dimension.NUMBER,
            3,
            200,
            25,
            0.25,
            "growth of pull with slip: pull = greatest · (1 − exp(−stiffness · slip))")),
    WHEELS_ROLLING_RESISTANCE(fixed(
                    "wheels.rollingResistance",
                    Dimension.NUMBER,
                    0,
                    0.5,
                    0.02,
                    0.006,
                    "rolling resistance over weight, all wheels")
            .absolute()),
    WHEELS_LOAD_SHARE(
            fixed("wheels.loadShare", Dimension.NUMBER, 0.05, 1, 0.65, 0.03, "share of the weight on the driven wheels")
                    .absolute()),
    MACHINE_MASS(fixed(
            "machine.mass",
            Dimension.MASS,
            20,
            20000,
            300,
            0.03,
            "mass of the machine with its load that this drive moves")),
    MACHINE_ROTATING_SHARE(fixed(
            "machine.rotatingShare",
            Dimension.NUMBER,
            0,
            2,
            0.05,
            0.3,
            "rotating parts counted as further mass, share of the mass"));

    private static final int FIRST = OilParameter.COUNT
            + UnitParameter.COUNT
            + LoopParameter.COUNT
            + MakeUpParameter.COUNT
            + InputParameter.COUNT;

    /** How many there are; unit 1. */
    static final int COUNT = 17;

    private final Facts facts;

    OutputParameter(Facts facts) {
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
