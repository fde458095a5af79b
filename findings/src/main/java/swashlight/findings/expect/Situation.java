package swashlight.findings.expect;

import swashlight.drive.oil.Oil;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.InputState;
import swashlight.drive.steady.WheelState;

/** Conditions with their errors filled in, as a duty. */
final class Situation {
    private static final double WALKING = 0.5; // m/s, pushed by hand (common practice)
    private static final double COLDEST = 231; // K, edge of the oil laws
    private static final double HOTTEST = 429; // K
    private static final double STEEPEST = 0.69; // rad
    private static final double FASTEST = 699; // rad/s, input shaft

    private Situation() {}

    /**
     * The duty of some conditions.
     *
     * @param conditions as stated or usual
     * @param values of all conditions in their order, errors added, SI unit of each
     */
    static Duty duty(Conditions conditions, double[] values) {
        double stroke = within(value(conditions, values, ConditionKind.STROKE, 0), -1, 1);
        double oil = within(value(conditions, values, ConditionKind.OIL_TEMPERATURE, 333), COLDEST, HOTTEST);
        boolean pushed = conditions.wheels() == Conditions.Wheels.PUSHED;
        return new Duty(
                input(conditions, values),
                stroke,
                oil,
                wheels(conditions, values),
                0,
                pushed ? 1 : 0,
                Oil.ATMOSPHERE,
                false);
    }

    static double value(Conditions conditions, double[] values, ConditionKind kind, double otherwise) {
        int place = conditions.place(kind);
        return place < 0 ? otherwise : values[place];
    }

    private static InputState input(Conditions conditions, double[] values) {
        return switch (conditions.input()) {
            case OFF -> new InputState.Off();
            case MEASURED ->
                new InputState.Fixed(
                        within(value(conditions, values, ConditionKind.INPUT_SPEED, 0), -FASTEST, FASTEST));
            case ENGINE -> new InputState.Running(within(value(conditions, values, ConditionKind.THROTTLE, 1), 0.2, 1));
        };
    }

    private static WheelState wheels(Conditions conditions, double[] values) {
        double slope = within(value(conditions, values, ConditionKind.SLOPE, 0), -STEEPEST, STEEPEST);
        return switch (conditions.wheels()) {
            case LIFTED -> new WheelState.Lifted();
            case HELD -> new WheelState.Held();
            case PUSHED -> new WheelState.Pushed(conditions.backwards() ? -WALKING : WALKING, slope);
            case GROUND ->
                new WheelState.Ground(slope, within(value(conditions, values, ConditionKind.LOAD, 0), 0, 1e5));
        };
    }

    private static double within(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }
}
