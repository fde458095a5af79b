package swashlight.drive.fault;

import java.util.List;
import swashlight.drive.description.Dimension;
import swashlight.drive.description.InputParameter;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;

/** Faults of the swash plates and of what moves them. Ranges and usual severities as {@link Faults} says. */
final class ControlFaults {
    static final List<Fault> ALL = List.of(
            new Fault(
                    "linkage-play",
                    FaultPlace.CONTROL,
                    "swash angle lost each way",
                    Dimension.ANGLE,
                    0.01,
                    0.035,
                    0.12,
                    "play in linkage, arm or trunnions",
                    List.of(new Effect(InputParameter.CONTROL_PLAY, Change.GROWS_BY)),
                    DutyEffect.NONE),
            new Fault(
                    "forward-travel-short",
                    FaultPlace.CONTROL,
                    "share of forward travel lost",
                    Dimension.NUMBER,
                    0.05,
                    0.2,
                    0.8,
                    "linkage does not reach full stroke forward",
                    List.of(new Effect(InputParameter.CONTROL_FORWARD_SHARE, Change.LOSES_SHARE)),
                    DutyEffect.NONE),
            new Fault(
                    "reverse-travel-short",
                    FaultPlace.CONTROL,
                    "share of reverse travel lost",
                    Dimension.NUMBER,
                    0.05,
                    0.2,
                    0.8,
                    "linkage does not reach full stroke in reverse",
                    List.of(new Effect(InputParameter.CONTROL_REVERSE_SHARE, Change.LOSES_SHARE)),
                    DutyEffect.NONE),
            new Fault(
                    "neutral-forward",
                    FaultPlace.CONTROL,
                    "swash angle left at neutral",
                    Dimension.ANGLE,
                    0.004,
                    0.015,
                    0.06,
                    "neutral set towards forward",
                    List.of(new Effect(InputParameter.CONTROL_NEUTRAL_OFFSET, Change.GROWS_BY)),
                    DutyEffect.NONE),
            new Fault(
                    "neutral-reverse",
                    FaultPlace.CONTROL,
                    "swash angle left at neutral",
                    Dimension.ANGLE,
                    0.004,
                    0.015,
                    0.06,
                    "neutral set towards reverse",
                    List.of(new Effect(InputParameter.CONTROL_NEUTRAL_OFFSET, Change.SHRINKS_BY)),
                    DutyEffect.NONE),
            new Fault(
                    "return-weak",
                    FaultPlace.CONTROL,
                    "share of return speed lost",
                    Dimension.NUMBER,
                    0.3,
                    0.8,
                    1,
                    "return to neutral weak",
                    List.of(new Effect(InputParameter.CONTROL_RETURN_RATE, Change.LOSES_SHARE)),
                    DutyEffect.NONE),
            new Fault(
                    "pump-thrust-worn",
                    FaultPlace.CONTROL,
                    "friction coefficient",
                    Dimension.NUMBER,
                    0.008,
                    0.02,
                    0.08,
                    "pump thrust bearing or swash face failing",
                    List.of(new Effect(UnitParameter.pump(UnitProperty.THRUST_FRICTION), Change.BECOMES)),
                    DutyEffect.NONE),
            new Fault(
                    "motor-thrust-worn",
                    FaultPlace.CONTROL,
                    "friction coefficient",
                    Dimension.NUMBER,
                    0.008,
                    0.02,
                    0.08,
                    "motor thrust bearing or fixed plate failing",
                    List.of(new Effect(UnitParameter.motor(UnitProperty.THRUST_FRICTION), Change.BECOMES)),
                    DutyEffect.NONE));

    private ControlFaults() {}
}
