package swashlight.drive.description;

import static swashlight.drive.description.Facts.fixed;

/** The oil. */
public enum OilParameter implements Parameter {
    VISCOSITY40(
            fixed("oil.viscosity40", Dimension.VISCOSITY, 2e-6, 1e-3, 165e-6, 0.08, "kinematic viscosity at 40 °C")),
    VISCOSITY100(
            fixed("oil.viscosity100", Dimension.VISCOSITY, 1e-6, 1e-4, 18.5e-6, 0.06, "kinematic viscosity at 100 °C")),
    VISCOSITY_FACTOR(fixed(
            "oil.viscosityFactor",
            Dimension.NUMBER,
            0.1,
            3,
            1,
            0.05,
            "present viscosity over fresh viscosity (below 1: sheared or diluted)")),
    DENSITY15(fixed("oil.density15", Dimension.DENSITY, 700, 1200, 870, 0.01, "density at 15 °C")),
    THERMAL_EXPANSION(fixed(
            "oil.thermalExpansion",
            Dimension.PER_TEMPERATURE,
            4e-4,
            1e-3,
            7e-4,
            0.05,
            "expansion of volume with temperature")),
    PRESSURE_VISCOSITY(fixed(
            "oil.pressureViscosity",
            Dimension.PER_PRESSURE,
            0,
            4e-8,
            1.7e-8,
            0.15,
            "growth of viscosity with pressure (Barus)")),
    BULK_MODULUS40(fixed(
            "oil.bulkModulus40",
            Dimension.PRESSURE,
            5e8,
            3e9,
            1.5e9,
            0.08,
            "bulk modulus of the liquid at 40 °C and atmospheric pressure")),
    BULK_MODULUS_SLOPE(
            fixed("oil.bulkModulusSlope", Dimension.NUMBER, 2, 15, 9, 0.1, "growth of bulk modulus with pressure")),
    BULK_MODULUS_FADE(fixed(
            "oil.bulkModulusFade",
            Dimension.PER_TEMPERATURE,
            0,
            1e-2,
            3.5e-3,
            0.2,
            "relative fall of bulk modulus with temperature")),
    FREE_AIR(fixed(
                    "oil.freeAir",
                    Dimension.NUMBER,
                    0,
                    0.3,
                    0.005,
                    0.003,
                    "volume share of free air at atmospheric pressure")
            .absolute()),
    AIR_EXPONENT(
            fixed("oil.airExponent", Dimension.NUMBER, 1, 1.4, 1.4, 0.0, "polytropic exponent of the air bubbles")),
    WATER(fixed("oil.water", Dimension.NUMBER, 0, 0.1, 0, 0.0, "volume share of water"));

    private static final int FIRST = 0;

    /** How many there are; unit 1. */
    static final int COUNT = 12;

    private final Facts facts;

    OilParameter(Facts facts) {
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
