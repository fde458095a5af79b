package swashlight.desk.work;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swashlight.desk.report.Fact;
import swashlight.desk.report.Line;
import swashlight.desk.report.Value;
import swashlight.drive.motion.MotionDutyDraft;
import swashlight.drive.motion.MotionPlan;
import swashlight.drive.motion.MotionStart;
import swashlight.drive.motion.NamedDuty;
import swashlight.drive.motion.Timeline;
import swashlight.files.machine.DutyFiles;
import swashlight.files.machine.PlanFile;

/**
 * A duty over time that was asked for, a named one or a file, with what was changed of it.
 *
 * @param name of the duty
 * @param meaning one plain line; empty for a file
 * @param plan what is done
 * @param changed the conditions held otherwise, SI
 */
record PlanShelf(String name, String meaning, MotionPlan plan, Map<Condition, Double> changed) {
    private static final List<Condition> CHANGEABLE = List.of(
            Condition.THROTTLE,
            Condition.OIL_TEMPERATURE,
            Condition.SLOPE,
            Condition.LOAD,
            Condition.AMBIENT_PRESSURE,
            Condition.AIR_TEMPERATURE);

    static PlanShelf open(RunAsked asked, Inspection inspection) {
        Map<Condition, Double> changed = new java.util.EnumMap<>(Condition.class);
        for (Condition condition : CHANGEABLE) {
            Optional.ofNullable(asked.changes().get(condition.key()))
                    .ifPresent(stated -> inspection
                            .number(stated, condition.dimension(), condition.low(), condition.high())
                            .ifPresent(value -> changed.put(condition, value)));
        }
        String name = asked.duty().map(Stated::text).orElse(NamedDuty.LAUNCH.key());
        Optional<NamedDuty> named = NamedDuty.find(name);
        PlanFile file = named.map(duty -> new PlanFile(duty.key(), duty.plan()))
                .orElseGet(() -> inspection.filed(() -> DutyFiles.plan(Path.of(name))));
        MotionPlan plan = changed(file.plan(), changed);
        if (asked.fromRest()) {
            plan = new MotionPlan(plan.duty(), MotionStart.AT_REST, plan.duration());
        }
        return new PlanShelf(file.name(), named.map(NamedDuty::meaning).orElse(""), plan, changed);
    }

    private static MotionPlan changed(MotionPlan plan, Map<Condition, Double> changed) {
        MotionDutyDraft draft = plan.duty().change();
        changed.forEach((condition, value) -> {
            switch (condition) {
                case THROTTLE -> draft.throttle(Timeline.constant(value));
                case OIL_TEMPERATURE -> draft.oilTemperature(value);
                case SLOPE -> draft.slope(Timeline.constant(value));
                case LOAD -> draft.pull(Timeline.constant(value));
                case AMBIENT_PRESSURE -> draft.ambientPressure(value);
                case AIR_TEMPERATURE -> draft.airTemperature(value);
                default -> throw new IllegalStateException(condition + " cannot be held in a run");
            }
        });
        return plan.with(draft.build());
    }

    /** Whether a name is that of a duty, and not of a file. */
    static boolean named(String name) {
        return NamedDuty.find(name).isPresent();
    }

    /** All names. */
    static List<String> names() {
        return Arrays.stream(NamedDuty.values()).map(NamedDuty::key).toList();
    }

    /** The same for another time, s. */
    PlanShelf lasting(double time) {
        return new PlanShelf(name, meaning, plan.lasting(time), changed);
    }

    List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        lines.add(new Fact("duty", meaning.isEmpty() ? Value.text(name) : Value.wordOr("duty." + name, meaning)));
        lines.add(new Fact("begins", Value.word("begins." + plan.start().name())));
        lines.add(new Fact(
                Condition.OIL_TEMPERATURE.key(),
                Value.of(plan.duty().oilTemperature(), Condition.OIL_TEMPERATURE.measure())));
        changed.forEach((condition, value) -> {
            if (condition != Condition.OIL_TEMPERATURE) {
                lines.add(new Fact(condition.key(), Value.of(value, condition.measure())));
            }
        });
        return lines;
    }
}
