package swashlight.drive.motion;

import swashlight.drive.description.DriveDescription;
import swashlight.drive.description.Place;
import swashlight.drive.description.UnitParameter;
import swashlight.drive.description.UnitProperty;
import swashlight.drive.heat.Cooling;
import swashlight.drive.oil.Oil;
import swashlight.drive.steady.InputState;
import swashlight.drive.steady.SteadyPoint;
import swashlight.drive.steady.SteadySolver;

/** A drive ready to be run piston by piston. */
public final class MovingDrive {
    private final double[] vector;

    /** A drive from its description. */
    public MovingDrive(DriveDescription description) {
        this(description.vector());
    }

    /** A drive from a vector of values in index order, SI. */
    public MovingDrive(double[] vector) {
        this.vector = vector.clone();
    }

    /**
     * Begins a run.
     *
     * @param duty what is done to the drive
     * @param start how it begins
     * @param tolerance unit 1, 1e-6 … 1e-2; {@link MotionRun#USUAL_TOLERANCE} is meant for everyday use
     * @throws NoSettledStart when it should begin settled and cannot
     */
    public MotionRun start(MotionDuty duty, MotionStart start, double tolerance) {
        Oil oil = SteadySolver.oilOf(vector);
        MotionKernel kernel = kernel(duty, oil, tolerance);
        if (start == MotionStart.SETTLED) {
            settle(kernel, duty);
        } else {
            rest(kernel, duty, SteadySolver.keyed(vector));
        }
        return run(duty, kernel, oil, tolerance);
    }

    /**
     * Begins a run in any state; its time, and the duty's, begin at 0. An engine that is turned off slows down; an input shaft whose key is
     * sheared stands; one that had stopped does not start by itself.
     *
     * @param tolerance unit 1, 1e-6 … 1e-2
     */
    public MotionRun start(MotionDuty duty, MotionState state, double tolerance) {
        Oil oil = SteadySolver.oilOf(vector);
        MotionKernel kernel = kernel(duty, oil, tolerance);
        Shafts shafts = kernel.shafts;
        kernel.swashAngle = state.value(MotionChannel.SWASH_ANGLE);
        kernel.pumpAngle = state.value(MotionChannel.PUMP_ANGLE);
        kernel.motorAngle = state.value(MotionChannel.MOTOR_ANGLE);
        shafts.engineSpeed = state.value(MotionChannel.ENGINE_SPEED);
        boolean keyed = SteadySolver.keyed(vector);
        shafts.engineFires = !(duty.input() instanceof InputState.Off);
        shafts.engineRuns = keyed && !(duty.input() instanceof InputState.Fixed) && shafts.engineSpeed > 0;
        shafts.pumpSpeed = !keyed
                ? 0
                : duty.input() instanceof InputState.Fixed fixed
                        ? fixed.shaftSpeed()
                        : shafts.engineRuns ? state.value(MotionChannel.PUMP_SPEED) : 0;
        shafts.motorSpeed = state.value(MotionChannel.MOTOR_SPEED);
        shafts.groundSpeed = shafts.pushed ? duty.groundSpeed().at(0) : state.value(MotionChannel.GROUND_SPEED);
        kernel.fill(
                state.value(MotionChannel.PRESSURE_A),
                state.value(MotionChannel.PRESSURE_B),
                state.value(MotionChannel.GALLERY_PRESSURE));
        return run(duty, kernel, oil, tolerance);
    }

    private MotionKernel kernel(MotionDuty duty, Oil oil, double tolerance) {
        if (!(tolerance >= 1e-6 && tolerance <= 1e-2)) {
            throw new IllegalArgumentException("tolerance is " + tolerance + "; it must lie between 1e-6 and 1e-2");
        }
        MotionKernel kernel =
                new MotionKernel(vector, oil.at(duty.oilTemperature()), duty.ambientPressure(), tolerance);
        Shafts shafts = kernel.shafts;
        shafts.lifted = duty.footing() == MotionDuty.Footing.LIFTED;
        shafts.held = duty.footing() == MotionDuty.Footing.HELD;
        shafts.pushed = duty.footing() == MotionDuty.Footing.PUSHED;
        shafts.throttle = duty.throttle().at(0);
        shafts.slope = duty.slope().at(0);
        shafts.engineRuns = duty.input() instanceof InputState.Running && SteadySolver.keyed(vector);
        kernel.swashAngle = kernel.wantedSwash(duty.stroke().at(0));
        return kernel;
    }

    private MotionRun run(MotionDuty duty, MotionKernel kernel, Oil oil, double tolerance) {
        return new MotionRun(duty, kernel, oil, Cooling.of(vector), tolerance, holds(kernel));
    }

    private void rest(MotionKernel kernel, MotionDuty duty, boolean keyed) {
        Shafts shafts = kernel.shafts;
        if (shafts.engineRuns) {
            shafts.engineSpeed = shafts.noLoadSpeed();
            shafts.pumpSpeed = shafts.engineSpeed * shafts.beltRatio();
        } else if (duty.input() instanceof InputState.Fixed fixed && keyed) {
            shafts.pumpSpeed = fixed.shaftSpeed();
        }
        shafts.groundSpeed = shafts.pushed ? duty.groundSpeed().at(0) : 0;
        kernel.fill(duty.ambientPressure(), duty.ambientPressure(), duty.ambientPressure());
    }

    private void settle(MotionKernel kernel, MotionDuty duty) {
        SteadySolver solver = new SteadySolver();
        solver.load(vector);
        boolean settled = solver.solve(duty.settledAt(0));
        if (!settled) {
            throw new NoSettledStart();
        }
        SteadyPoint point = new SteadyPoint();
        point.fill(solver);
        Shafts shafts = kernel.shafts;
        shafts.engineSpeed = point.engineSpeed();
        shafts.engineRuns = shafts.engineRuns && shafts.engineSpeed > 0;
        shafts.pumpSpeed = point.pumpSpeed();
        shafts.motorSpeed = point.motorSpeed();
        shafts.groundSpeed = point.groundSpeed();
        kernel.fill(point.pressureA(), point.pressureB(), point.galleryPressure());
    }

    private BlockHold[] holds(MotionKernel kernel) {
        return new BlockHold[] {
            new BlockHold(
                    kernel.pump,
                    get(Place.PUMP, UnitProperty.BALANCE_RATIO),
                    get(Place.PUMP, UnitProperty.BLOCK_SPRING)),
            new BlockHold(
                    kernel.motor,
                    get(Place.MOTOR, UnitProperty.BALANCE_RATIO),
                    get(Place.MOTOR, UnitProperty.BLOCK_SPRING))
        };
    }

    private double get(Place place, UnitProperty property) {
        return vector[new UnitParameter(place, property).index()];
    }
}
