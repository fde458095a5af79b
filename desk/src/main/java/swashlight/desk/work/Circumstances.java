package swashlight.desk.work;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import swashlight.desk.report.Fact;
import swashlight.desk.report.Line;
import swashlight.desk.report.Value;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.InputState;
import swashlight.drive.steady.WheelState;

/**
 * Under which circumstances a drive is asked: the numbers somebody stated, the rest as usual.
 *
 * @param stated SI values of the conditions that were stated
 * @param wheels what the wheels stand on
 * @param engineOff true when the input shaft stands still
 * @param fromRest true when the machine starts from standstill
 */
public record Circumstances(Map<Condition, Double> stated, Wheels wheels, boolean engineOff, boolean fromRest) {
    /** What the wheels stand on or are held by. */
    public enum Wheels {
        GROUND,
        LIFTED,
        HELD
    }

    public Circumstances {
        stated = stated.isEmpty() ? Map.of() : new EnumMap<>(stated);
    }

    /** Full stroke, full throttle, warm oil, level ground. */
    public static Circumstances usual() {
        return new Circumstances(Map.of(), Wheels.GROUND, false, false);
    }

    /** Those of a duty, every one of them stated. */
    static Circumstances of(Duty duty) {
        Map<Condition, Double> stated = new EnumMap<>(Condition.class);
        stated.put(Condition.STROKE, duty.stroke());
        stated.put(Condition.OIL_TEMPERATURE, duty.oilTemperature());
        stated.put(Condition.BRAKE, duty.brake());
        stated.put(Condition.BYPASS, duty.bypass());
        stated.put(Condition.AMBIENT_PRESSURE, duty.ambientPressure());
        if (duty.input() instanceof InputState.Running running) {
            stated.put(Condition.THROTTLE, running.throttle());
        } else if (duty.input() instanceof InputState.Fixed fixed) {
            stated.put(Condition.INPUT_SPEED, fixed.shaftSpeed());
        }
        Wheels wheels = Wheels.GROUND;
        if (duty.wheels() instanceof WheelState.Ground ground) {
            stated.put(Condition.SLOPE, ground.slope());
            stated.put(Condition.LOAD, ground.pull());
        } else if (duty.wheels() instanceof WheelState.Pushed pushed) {
            stated.put(Condition.SLOPE, pushed.slope());
            stated.put(Condition.PUSHED_SPEED, pushed.speed());
        } else {
            wheels = duty.wheels() instanceof WheelState.Lifted ? Wheels.LIFTED : Wheels.HELD;
        }
        return new Circumstances(stated, wheels, duty.input() instanceof InputState.Off, duty.fromRest());
    }

    @Override
    public Map<Condition, Double> stated() {
        return Map.copyOf(stated);
    }

    /** Value of a condition, stated or usual; SI. */
    public double value(Condition condition) {
        return stated.getOrDefault(condition, condition.usual());
    }

    /** A copy with one condition at another SI value. */
    public Circumstances with(Condition condition, double value) {
        Map<Condition, Double> other = new EnumMap<>(Condition.class);
        other.putAll(stated);
        other.put(condition, value);
        return new Circumstances(other, wheels, engineOff, fromRest);
    }

    /** A copy with the wheels otherwise. */
    public Circumstances with(Wheels other) {
        return new Circumstances(stated, other, engineOff, fromRest);
    }

    /** As the solver wants them. */
    public Duty duty() {
        return new Duty(
                input(),
                value(Condition.STROKE),
                value(Condition.OIL_TEMPERATURE),
                wheelState(),
                value(Condition.BRAKE),
                value(Condition.BYPASS),
                value(Condition.AMBIENT_PRESSURE),
                fromRest);
    }

    private InputState input() {
        if (engineOff) {
            return new InputState.Off();
        }
        return stated.containsKey(Condition.INPUT_SPEED)
                ? new InputState.Fixed(value(Condition.INPUT_SPEED))
                : new InputState.Running(value(Condition.THROTTLE));
    }

    private WheelState wheelState() {
        return switch (wheels) {
            case LIFTED -> new WheelState.Lifted();
            case HELD -> new WheelState.Held();
            case GROUND ->
                stated.containsKey(Condition.PUSHED_SPEED)
                        ? new WheelState.Pushed(value(Condition.PUSHED_SPEED), value(Condition.SLOPE))
                        : new WheelState.Ground(value(Condition.SLOPE), value(Condition.LOAD));
        };
    }

    /** As lines of a report: what matters here, stated or not. */
    List<Line> lines() {
        return linesWithout(Set.of());
    }

    /** The same without the conditions that change within the report. */
    List<Line> linesWithout(Set<Condition> changing) {
        List<Line> lines = new ArrayList<>();
        for (Condition condition : Condition.values()) {
            if (changing.contains(condition)) {
                continue;
            }
            if (stated.containsKey(condition) || shownAlways(condition)) {
                lines.add(new Fact(condition.key(), Value.of(value(condition), condition.measure())));
            }
        }
        lines.add(new Fact("wheels", Value.word("wheels." + wheels.name())));
        if (engineOff) {
            lines.add(new Fact("engine", Value.word("engine.off")));
        }
        if (fromRest) {
            lines.add(new Fact("fromRest", Value.word("yes")));
        }
        return lines;
    }

    private boolean shownAlways(Condition condition) {
        return switch (condition) {
            case STROKE, OIL_TEMPERATURE -> true;
            case SLOPE, LOAD -> wheels == Wheels.GROUND;
            case THROTTLE -> !engineOff && !stated.containsKey(Condition.INPUT_SPEED);
            default -> false;
        };
    }
}
