package swashlight.drive.fault;

import java.util.List;
import swashlight.drive.description.Dimension;
import swashlight.drive.description.OilParameter;

/** Faults of the oil itself. Ranges and usual severities as {@link Faults} says. */
final class OilFaults {
    static final List<Fault> ALL = List.of(
            new Fault(
                    "oil-too-thin",
                    FaultPlace.OIL,
                    "share of viscosity",
                    Dimension.NUMBER,
                    0.2,
                    0.5,
                    0.75,
                    "oil of too thin a grade",
                    List.of(new Effect(OilParameter.VISCOSITY_FACTOR, Change.TIMES)),
                    DutyEffect.NONE),
            new Fault(
                    "oil-degraded",
                    FaultPlace.OIL,
                    "share of viscosity lost",
                    Dimension.NUMBER,
                    0.15,
                    0.3,
                    0.6,
                    "oil worn: sheared or diluted",
                    List.of(new Effect(OilParameter.VISCOSITY_FACTOR, Change.LOSES_SHARE)),
                    DutyEffect.NONE),
            new Fault(
                    "oil-wet",
                    FaultPlace.OIL,
                    "volume share of water",
                    Dimension.NUMBER,
                    0.002,
                    0.01,
                    0.06,
                    "water in the oil",
                    List.of(new Effect(OilParameter.WATER, Change.BECOMES)),
                    DutyEffect.NONE),
            new Fault(
                    "oil-aerated",
                    FaultPlace.OIL,
                    "volume share of free air",
                    Dimension.NUMBER,
                    0.02,
                    0.06,
                    0.2,
                    "air in the oil, not purged",
                    List.of(new Effect(OilParameter.FREE_AIR, Change.BECOMES)),
                    DutyEffect.NONE),
            new Fault(
                    "oil-overheated",
                    FaultPlace.OIL,
                    "hotter than believed by",
                    Dimension.TEMPERATURE,
                    8,
                    20,
                    45,
                    "oil hotter than measured or believed",
                    List.of(),
                    DutyEffect.HOTTER));

    private OilFaults() {}
}
