package swashlight.files.demo;

import java.util.OptionalDouble;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.OutputParameter;
import swashlight.drive.oil.Oil;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.InputState;
import swashlight.drive.steady.SteadyAnswer;
import swashlight.drive.steady.SteadyDrive;
import swashlight.drive.steady.SteadyPoint;
import swashlight.drive.steady.WheelState;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.reading.Setup;

/** Reads a computed machine as a technician would: plainly, one reading at a time, for making and checking the demo cases. */
final class Witness {
    private static final double WALKING = 0.5; // m/s
    private static final double USUAL_OIL = 333.15; // K

    private final DriveDescription machine;
    private final SteadyDrive drive;

    Witness(DriveDescription machine) {
        this.machine = machine;
        this.drive = new SteadyDrive(machine);
    }

    /** What the instrument shows, SI unit of the kind. */
    double reads(ReadingKind kind, Setup setup) {
        if (kind == ReadingKind.DRAWBAR_PULL) {
            return pull(setup);
        }
        Duty duty = duty(kind, setup);
        SteadyPoint point = point(duty);
        double way = duty.stroke() < 0 ? -1 : 1;
        return switch (kind) {
            case RUN_TIME -> setup.distance().orElseThrow() / (way * point.groundSpeed());
            case GROUND_SPEED -> way * point.groundSpeed();
            case ROLL_TIME -> setup.distance().orElseThrow() / Math.abs(point.groundSpeed());
            case PUSH_FORCE -> Math.abs(point.pushForce());
            case AXLE_SPEED -> way * point.axleSpeed();
            case ENGINE_SPEED -> point.engineSpeed();
            case INPUT_SPEED -> point.pumpSpeed();
            case HIGH_PRESSURE -> Math.max(point.pressureA(), point.pressureB()) - Oil.ATMOSPHERE;
            case GALLERY_PRESSURE -> point.galleryPressure() - Oil.ATMOSPHERE;
            case ARM_TRAVEL -> Math.abs(point.swashAngle());
            default -> throw new IllegalArgumentException("no demo case has a " + kind);
        };
    }

    private double pull(Setup setup) {
        double low = 0;
        double high = 2 * 9.80665 * machine.value(OutputParameter.MACHINE_MASS);
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            SteadyPoint point = point(duty(ReadingKind.GROUND_SPEED, setup)
                    .with(new WheelState.Ground(setup.slope().orElse(0), middle)));
            if (point.groundSpeed() > 1e-3) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private SteadyPoint point(Duty duty) {
        SteadyAnswer answer = drive.answer(duty);
        if (!(answer instanceof SteadyAnswer.Converged)) {
            throw new IllegalStateException(machine.name() + " does not settle under " + duty);
        }
        return answer.point();
    }

    private static Duty duty(ReadingKind kind, Setup setup) {
        boolean rolls = kind == ReadingKind.ROLL_TIME || kind == ReadingKind.ROLL_SPEED;
        boolean pushed = kind == ReadingKind.PUSH_FORCE;
        boolean neutral = kind == ReadingKind.GALLERY_PRESSURE || kind == ReadingKind.CREEP_SPEED;
        InputState input = rolls || pushed
                ? new InputState.Off()
                : new InputState.Running(setup.throttle().orElse(1));
        double stroke = rolls || pushed ? 0 : setup.stroke().orElse(neutral ? 0 : 1);
        double slope = setup.slope().orElse(0);
        WheelState wheels = pushed
                ? new WheelState.Pushed(WALKING, slope)
                : setup.lifted() ? new WheelState.Lifted() : new WheelState.Ground(slope, value(setup.load()));
        double oil = setup.oilTemperature().orElse(USUAL_OIL);
        return new Duty(input, stroke, oil, wheels, 0, pushed ? 1 : 0, Oil.ATMOSPHERE, false);
    }

    private static double value(OptionalDouble stated) {
        return stated.orElse(0);
    }
}
