package swashlight.findings.expect;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.reading.Setup;

/**
 * How each kind of reading is usually taken: what stands in for a condition nobody stated, and how far off it may be. All figures common
 * practice, no source.
 */
final class UsualSetup {
    private static final double WARM_OIL = 333.15; // K, 60 °C
    private static final double WARM_OIL_SPREAD = 15; // K, when nobody read a thermometer
    private static final double THERMOMETER = 4; // K, infrared on matt tape
    private static final double AIR = 293.15; // K
    private static final double AIR_SPREAD = 6; // K, unstated
    private static final double AIR_STATED = 1.5; // K
    private static final double LEVEL_SPREAD = 0.01; // rad, a yard called level
    private static final double FLOOR_SPREAD = 0.004; // rad, a workshop floor
    private static final double CLINOMETER = 0.005; // rad, a phone laid on the frame
    private static final double ROLL_SLOPE = 0.1; // rad
    private static final double ROLL_SLOPE_SPREAD = 0.03; // rad, unstated
    private static final double PART_STROKE_SPREAD = 0.03; // 1, held by hand
    private static final double TACHOMETER = 0.003; // share of the speed, 1

    private static final Set<ReadingKind> ENGINE_OFF =
            EnumSet.of(ReadingKind.ROLL_TIME, ReadingKind.ROLL_SPEED, ReadingKind.PUSH_FORCE);
    private static final Set<ReadingKind> NEUTRAL = EnumSet.of(
            ReadingKind.ROLL_TIME,
            ReadingKind.ROLL_SPEED,
            ReadingKind.PUSH_FORCE,
            ReadingKind.CREEP_SPEED,
            ReadingKind.GALLERY_PRESSURE);
    private static final Set<ReadingKind> OF_THE_INPUT =
            EnumSet.of(ReadingKind.ENGINE_SPEED, ReadingKind.INPUT_SPEED, ReadingKind.PUMP_TONE);
    private static final Set<ReadingKind> TIMED = EnumSet.of(ReadingKind.RUN_TIME, ReadingKind.ROLL_TIME);
    private static final Set<ReadingKind> WARMING = EnumSet.of(ReadingKind.WARM_TEMPERATURE, ReadingKind.WARM_UP_TIME);

    private final ReadingKind kind;
    private final Setup setup;
    private final List<Condition> conditions = new ArrayList<>();

    private UsualSetup(ReadingKind kind, Setup setup) {
        this.kind = kind;
        this.setup = setup;
    }

    static Conditions of(ReadingKind kind, Setup setup) {
        return new UsualSetup(kind, setup).conditions();
    }

    static boolean rolls(ReadingKind kind) {
        return kind == ReadingKind.ROLL_TIME || kind == ReadingKind.ROLL_SPEED;
    }

    static boolean timed(ReadingKind kind) {
        return TIMED.contains(kind);
    }

    static boolean warms(ReadingKind kind) {
        return WARMING.contains(kind);
    }

    private Conditions conditions() {
        Conditions.Input input = input();
        Conditions.Wheels wheels = wheels();
        if (kind == ReadingKind.PART_DIMENSION) {
            return new Conditions(List.of(), Conditions.Wheels.LIFTED, Conditions.Input.OFF, false);
        }
        stroke();
        if (kind == ReadingKind.ARM_TRAVEL) {
            return new Conditions(conditions, Conditions.Wheels.LIFTED, Conditions.Input.OFF, false);
        }
        if (input == Conditions.Input.ENGINE) {
            take(ConditionKind.THROTTLE, setup.throttle(), 1, 0, 0);
        } else if (input == Conditions.Input.MEASURED) {
            double speed = setup.inputSpeed().orElse(0);
            take(ConditionKind.INPUT_SPEED, setup.inputSpeed(), speed, TACHOMETER * Math.abs(speed), 0);
        }
        warmth();
        if (wheels == Conditions.Wheels.GROUND || wheels == Conditions.Wheels.PUSHED) {
            slope();
            exact(ConditionKind.LOAD, setup.load());
        }
        if (timed(kind)) {
            exact(ConditionKind.DISTANCE, setup.distance());
        }
        conditions.sort((a, b) -> a.kind().compareTo(b.kind()));
        return new Conditions(conditions, wheels, input, setup.backwards());
    }

    private Conditions.Input input() {
        if (ENGINE_OFF.contains(kind)) {
            return Conditions.Input.OFF;
        }
        return setup.inputSpeed().isPresent() && !OF_THE_INPUT.contains(kind)
                ? Conditions.Input.MEASURED
                : Conditions.Input.ENGINE;
    }

    private Conditions.Wheels wheels() {
        if (kind == ReadingKind.PUSH_FORCE) {
            return Conditions.Wheels.PUSHED;
        }
        if (setup.held()) {
            return Conditions.Wheels.HELD;
        }
        boolean creepsOnStands =
                kind == ReadingKind.CREEP_SPEED && setup.slope().isEmpty();
        return setup.lifted() || creepsOnStands ? Conditions.Wheels.LIFTED : Conditions.Wheels.GROUND;
    }

    private void stroke() {
        double usual = NEUTRAL.contains(kind) ? 0 : setup.backwards() ? -1 : 1;
        double stroke = setup.stroke().orElse(usual);
        boolean atStop = stroke == 0 || Math.abs(stroke) == 1;
        take(ConditionKind.STROKE, setup.stroke(), usual, atStop ? 0 : PART_STROKE_SPREAD, 0);
    }

    private void warmth() {
        if (warms(kind)) {
            take(ConditionKind.AMBIENT, setup.ambient(), AIR, AIR_STATED, AIR_SPREAD);
            exact(ConditionKind.SINCE, setup.since());
            if (kind == ReadingKind.WARM_UP_TIME) {
                exact(ConditionKind.OIL_TEMPERATURE, setup.oilTemperature());
            }
        } else {
            double thermometer = setup.temperatureError().orElse(THERMOMETER);
            take(ConditionKind.OIL_TEMPERATURE, setup.oilTemperature(), WARM_OIL, thermometer, WARM_OIL_SPREAD);
        }
    }

    private void slope() {
        double usual = rolls(kind) ? (setup.backwards() ? ROLL_SLOPE : -ROLL_SLOPE) : 0;
        double unstated =
                rolls(kind) ? ROLL_SLOPE_SPREAD : kind == ReadingKind.PUSH_FORCE ? FLOOR_SPREAD : LEVEL_SPREAD;
        double clinometer = setup.slopeError().orElse(kind == ReadingKind.PUSH_FORCE ? FLOOR_SPREAD : CLINOMETER);
        take(ConditionKind.SLOPE, setup.slope(), usual, clinometer, unstated);
    }

    private void take(ConditionKind what, OptionalDouble stated, double usual, double statedSpread, double spread) {
        conditions.add(
                stated.isPresent()
                        ? new Condition(what, stated.getAsDouble(), statedSpread, true)
                        : new Condition(what, usual, spread, false));
    }

    private void exact(ConditionKind what, OptionalDouble stated) {
        if (stated.isPresent()) {
            conditions.add(new Condition(what, stated.getAsDouble(), 0, true));
        }
    }
}
