package swashlight.desk.work;

import java.util.List;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.fault.Fault;
import swashlight.drive.motion.MotionDuty;
import swashlight.drive.steady.Duty;

/**
 * A drive with the faults somebody gave it; none for a sound one.
 *
 * @param sound the drive as described
 * @param ails its faults, in the order they were given
 */
public record SickDrive(DriveDescription sound, List<Ailment> ails) {
    /** A fault at a severity, in the SI unit of the fault. */
    public record Ailment(Fault fault, double severity) {}

    public SickDrive {
        ails = List.copyOf(ails);
    }

    /** The drive as it is. */
    public DriveDescription drive() {
        DriveDescription drive = sound;
        for (Ailment ail : ails) {
            drive = ail.fault().on(drive, ail.severity());
        }
        return drive;
    }

    /** The duty as it is: some faults are the duty's. */
    public Duty on(Duty duty) {
        Duty real = duty;
        for (Ailment ail : ails) {
            real = ail.fault().on(real, ail.severity());
        }
        return real;
    }

    /** The duty over time as it is: some faults are the duty's. */
    public MotionDuty on(MotionDuty duty) {
        MotionDuty real = duty;
        for (Ailment ail : ails) {
            real = ail.fault().on(real, ail.severity());
        }
        return real;
    }

    /** The same drive without its faults. */
    public SickDrive cured() {
        return new SickDrive(sound, List.of());
    }
}
