package swashlight.drive.fault;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import swashlight.drive.description.Dimension;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Origin;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.drive.description.Quantity;
import swashlight.drive.motion.MotionDuty;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.WheelState;

/**
 * One thing that can be wrong.
 *
 * @param key stable name, for files and catalogues: {@code pump-face-worn}
 * @param place where in the drive
 * @param severityMeaning what the severity measures, in plain words
 * @param dimension of the severity; a severity is in its SI unit
 * @param least smallest severity worth calling a fault, SI unit of the dimension
 * @param usual middle severity of units that come back, SI unit of the dimension (own estimate, no source)
 * @param most largest severity considered, SI unit of the dimension
 * @param meaning one plain line naming the fault
 */
public record Fault(
        String key,
        FaultPlace place,
        String severityMeaning,
        Dimension dimension,
        double least,
        double usual,
        double most,
        String meaning,
        List<Effect> effects,
        DutyEffect dutyEffect) {
    public Fault {
        effects = List.copyOf(effects);
        if (!(least <= usual && usual <= most)) {
            throw new IllegalArgumentException(key + ": severities must rise: " + least + ", " + usual + ", " + most);
        }
    }

    /** True when the fault either is there or is not: its severity says nothing. */
    public boolean whole() {
        return least == most;
    }

    /** Moves a drive's values in place (index order, SI) by a severity in this fault's SI unit. */
    public void apply(double[] vector, double severity) {
        for (Effect effect : effects) {
            effect.apply(vector, severity);
        }
    }

    /** The drive with this fault at a severity, SI unit of {@link #dimension()}. */
    public DriveDescription on(DriveDescription drive, double severity) {
        double[] vector = drive.vector();
        apply(vector, severity);
        Map<Parameter, Quantity> changes = new HashMap<>();
        for (Parameter parameter : Parameters.all()) {
            if (vector[parameter.index()] != drive.value(parameter)) {
                changes.put(parameter, new Quantity(vector[parameter.index()], 0, Origin.GIVEN));
            }
        }
        return drive.with(changes);
    }

    /** The duty as this fault makes it: steeper or hotter than believed; severity in this fault's SI unit. */
    public Duty on(Duty duty, double severity) {
        return switch (dutyEffect) {
            case NONE -> duty;
            case HOTTER -> duty.withOilTemperature(Math.min(430, duty.oilTemperature() + severity));
            case STEEPER ->
                duty.wheels() instanceof WheelState.Ground ground && ground.slope() != 0
                        ? duty.with(new WheelState.Ground(steeper(ground.slope(), severity), ground.pull()))
                        : duty;
        };
    }

    /** The duty over time as this fault makes it: steeper or hotter than believed; severity in this fault's SI unit. */
    public MotionDuty on(MotionDuty duty, double severity) {
        return switch (dutyEffect) {
            case NONE -> duty;
            case HOTTER ->
                duty.change()
                        .oilTemperature(Math.min(430, duty.oilTemperature() + severity))
                        .build();
            case STEEPER ->
                duty.change()
                        .slope(duty.slope().map(slope -> steeper(slope, severity)))
                        .build();
        };
    }

    private static double steeper(double slope, double severity) {
        return Math.max(-0.7, Math.min(0.7, slope + Math.signum(slope) * severity));
    }
}
