package swashlight.findings.expect;

import swashlight.drive.steady.Duty;
import swashlight.drive.steady.InputState;
import swashlight.drive.steady.SteadyPoint;
import swashlight.drive.steady.WheelState;
import swashlight.findings.reading.ReadingKind;

/** What the instrument of each kind shows in a settled situation. */
final class Sight {
    private static final double TURN = 2 * Math.PI;

    private Sight() {}

    /** The number of a kind in its comparison's SI unit; pistons of pump and motor for the tones, 1. */
    static double of(ReadingKind kind, SteadyPoint point, Duty duty, double pumpPistons, double motorPistons) {
        double ahead = duty.stroke() < 0 ? -1 : 1;
        return switch (kind) {
            case RUN_TIME, GROUND_SPEED ->
                Math.max(0, ahead * point.groundSpeed()); // one that rolls back does not go either
            case AXLE_SPEED -> ahead * point.axleSpeed();
            case CREEP_SPEED -> point.axleSpeed();
            case ROLL_TIME, ROLL_SPEED -> downhill(duty) * point.groundSpeed();
            case PUSH_FORCE -> pushedWay(duty) * point.pushForce();
            case ENGINE_SPEED -> duty.input() instanceof InputState.Running ? point.engineSpeed() : 0;
            case INPUT_SPEED -> point.pumpSpeed();
            case HIGH_PRESSURE -> Math.max(point.pressureA(), point.pressureB()) - duty.ambientPressure();
            case GALLERY_PRESSURE -> Math.abs(point.galleryPressure() - duty.ambientPressure());
            case PUMP_TONE -> pumpPistons * Math.abs(point.pumpSpeed()) / TURN;
            case MOTOR_TONE -> motorPistons * Math.abs(point.motorSpeed()) / TURN;
            case ARM_TRAVEL -> ahead * point.swashAngle();
            case DRAWBAR_PULL, WARM_TEMPERATURE, WARM_UP_TIME, PART_DIMENSION ->
                throw new IllegalArgumentException(kind + " is not read from one settled situation");
        };
    }

    private static double downhill(Duty duty) {
        return duty.wheels() instanceof WheelState.Ground ground && ground.slope() > 0 ? -1 : 1;
    }

    private static double pushedWay(Duty duty) {
        return duty.wheels() instanceof WheelState.Pushed push && push.speed() < 0 ? -1 : 1;
    }
}
