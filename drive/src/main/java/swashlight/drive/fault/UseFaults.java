package swashlight.drive.fault;

import java.util.List;
import swashlight.drive.description.Dimension;
import swashlight.drive.description.HeatParameter;
import swashlight.drive.description.OutputParameter;

/** Faults of use: what the drive is asked to do, and how it is cooled. Ranges and usual severities as {@link Faults} says. */
final class UseFaults {
    static final List<Fault> ALL = List.of(
            new Fault(
                    "overload",
                    FaultPlace.USE,
                    "mass over that stated",
                    Dimension.NUMBER,
                    1.15,
                    1.4,
                    2.5,
                    "machine overloaded, the drive is sound",
                    List.of(new Effect(OutputParameter.MACHINE_MASS, Change.TIMES)),
                    DutyEffect.NONE),
            new Fault(
                    "duty-steep",
                    FaultPlace.USE,
                    "steeper than believed by",
                    Dimension.ANGLE,
                    0.03,
                    0.06,
                    0.15,
                    "slope steeper than believed, the drive is sound",
                    List.of(),
                    DutyEffect.STEEPER),
            new Fault(
                    "fan-broken",
                    FaultPlace.USE,
                    "share of fan effect lost",
                    Dimension.NUMBER,
                    0.3,
                    1,
                    1,
                    "cooling fan broken or blocked",
                    List.of(new Effect(HeatParameter.FAN_SHARE, Change.BECOMES_REST)),
                    DutyEffect.NONE),
            new Fault(
                    "fins-packed",
                    FaultPlace.USE,
                    "share of surface packed",
                    Dimension.NUMBER,
                    0.2,
                    0.5,
                    0.9,
                    "fins packed with debris",
                    List.of(new Effect(HeatParameter.FIN_SHARE, Change.BECOMES_REST)),
                    DutyEffect.NONE));

    private UseFaults() {}
}
