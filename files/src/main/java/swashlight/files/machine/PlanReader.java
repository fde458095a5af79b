package swashlight.files.machine;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swashlight.drive.description.Dimension;
import swashlight.drive.motion.MotionDuty;
import swashlight.drive.motion.MotionPlan;
import swashlight.drive.motion.MotionStart;
import swashlight.drive.motion.Timeline;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.InputState;
import swashlight.drive.steady.WheelState;
import swashlight.files.document.Fields;
import swashlight.files.document.Heading;
import swashlight.files.document.Measure;
import swashlight.files.document.Node;
import swashlight.files.document.Range;

/**
 * Reads a duty over time: a settled one, and under {@code over} the moments at which some of it has other values, straight between them.
 */
final class PlanReader {
    static final String UNNAMED = "unnamed duty";
    static final List<String> KEYS = List.of("over", "begins", "lasts", "ambient");
    static final Range MOMENT = Range.of(Dimension.TIME, 0, MotionPlan.LONGEST);
    static final Range DURATION = Range.of(Dimension.TIME, 1e-3, MotionPlan.LONGEST);

    private static final double USUAL_AIR = 293.15; // K, 20 °C
    private static final double USUAL_DURATION = 2; // s, or after the last moment
    private static final int MOST_MOMENTS = 1000;

    private final Fields root;

    PlanReader(Fields root) {
        this.root = root;
    }

    static Map<String, Range> changing() {
        Map<String, Range> changing = new LinkedHashMap<>();
        changing.put("stroke", Condition.STROKE.range());
        changing.put("throttle", Condition.THROTTLE.range());
        changing.put("brake", DutyReader.SHARE);
        changing.put("bypass", DutyReader.SHARE);
        changing.put("slope", Condition.SLOPE.range());
        changing.put("pull", Condition.LOAD.range());
        changing.put("pushedSpeed", DutyReader.PUSHED_SPEED);
        return changing;
    }

    Optional<PlanFile> read() {
        Heading heading = Heading.read(root, "duty", UNNAMED);
        Duty stated = new DutyReader(root).stated();
        Map<String, Course> courses = new LinkedHashMap<>();
        changing().keySet().forEach(key -> courses.put(key, new Course()));
        double last = moments(courses);
        double duration = root.measure("lasts", DURATION)
                .map(Measure::value)
                .orElse(Math.min(last + USUAL_DURATION, MOMENT.high()));
        boolean asItGoes = !root.has("over") && !stated.fromRest();
        MotionStart start = root.choice("begins", Map.of("settled", MotionStart.SETTLED, "atRest", MotionStart.AT_REST))
                .orElse(asItGoes ? MotionStart.SETTLED : MotionStart.AT_REST);
        double air = root.measure("ambient", Condition.AMBIENT.range())
                .map(Measure::value)
                .orElse(USUAL_AIR);
        contradictions(stated, courses);
        root.close();
        return root.complaints().none()
                ? Optional.of(new PlanFile(heading.name(), new MotionPlan(duty(stated, courses, air), start, duration)))
                : Optional.empty();
    }

    /** Reads what stands under {@code over}; the last moment, s. */
    private double moments(Map<String, Course> courses) {
        List<Node> items = root.items("over");
        if (items.size() > MOST_MOMENTS) {
            root.complain(
                    "too-long", "over", "a list of " + items.size(), "these are too many moments", "at most 1000");
            return 0;
        }
        double last = 0;
        for (int i = 0; i < items.size(); i++) {
            String path = "over[" + (i + 1) + "]";
            if (items.get(i) instanceof Node.Branch branch) {
                last = moment(new Fields(branch, path, root.complaints()), last, courses);
            } else {
                root.complaints()
                        .add(
                                "not-keys",
                                items.get(i).spot(),
                                path,
                                items.get(i).words(),
                                "a moment needs keys",
                                "write {at: 0.5 s, stroke: 100 %}");
            }
        }
        return last;
    }

    private double moment(Fields fields, double last, Map<String, Course> courses) {
        Optional<Measure> at = fields.measure("at", MOMENT);
        if (!fields.has("at")) {
            fields.complain("missing", "at", "", "the moment is missing", "write at: 0.5 s");
        }
        double time = at.map(Measure::value).orElse(last);
        if (time < last) {
            fields.complain(
                    "times-fall",
                    "at",
                    time + " s",
                    "this is before the moment above it",
                    "write the moments in order");
        }
        boolean says = false;
        for (Map.Entry<String, Range> key : changing().entrySet()) {
            Optional<Measure> value = fields.measure(key.getKey(), key.getValue());
            says |= fields.has(key.getKey());
            if (value.isPresent()) {
                courses.get(key.getKey()).add(time, value.get().value());
            }
        }
        fields.close();
        if (!says) {
            fields.complain(
                    "says-nothing",
                    "",
                    "",
                    "nothing changes at this moment",
                    "name one of " + String.join(", ", changing().keySet()));
        }
        return Math.max(time, last);
    }

    private void contradictions(Duty stated, Map<String, Course> courses) {
        boolean runs = stated.input() instanceof InputState.Running;
        if (!runs && courses.get("throttle").any()) {
            root.complain(
                    "contradiction",
                    "over",
                    "throttle",
                    "without an engine that runs there is no throttle",
                    "leave throttle out, or engine and inputSpeed");
        }
        boolean ground = stated.wheels() instanceof WheelState.Ground || stated.wheels() instanceof WheelState.Pushed;
        if (!ground
                && (courses.get("slope").any()
                        || courses.get("pull").any()
                        || courses.get("pushedSpeed").any())) {
            root.complain(
                    "contradiction",
                    "over",
                    "slope, pull or pushedSpeed",
                    "wheels that are lifted or held know none of these",
                    "leave those out");
        }
    }

    private MotionDuty duty(Duty stated, Map<String, Course> courses, double air) {
        double slope = 0;
        double pull = 0;
        double pushed = 0;
        MotionDuty.Footing footing = MotionDuty.Footing.GROUND;
        if (stated.wheels() instanceof WheelState.Ground ground) {
            slope = ground.slope();
            pull = ground.pull();
        } else if (stated.wheels() instanceof WheelState.Pushed given) {
            slope = given.slope();
            pushed = given.speed();
            footing = MotionDuty.Footing.PUSHED;
        } else {
            footing =
                    stated.wheels() instanceof WheelState.Lifted ? MotionDuty.Footing.LIFTED : MotionDuty.Footing.HELD;
        }
        if (courses.get("pushedSpeed").any()) {
            footing = MotionDuty.Footing.PUSHED;
        }
        double throttle = stated.input() instanceof InputState.Running running ? running.throttle() : 1;
        Timeline stroke = line(courses, "stroke", stated.stroke());
        Timeline directed = root.has("direction") ? towards(stroke, stated.stroke()) : stroke;
        return new MotionDuty(
                stated.input(),
                directed,
                line(courses, "throttle", throttle),
                line(courses, "brake", stated.brake()),
                line(courses, "bypass", stated.bypass()),
                line(courses, "slope", slope),
                line(courses, "pull", pull),
                footing,
                line(courses, "pushedSpeed", pushed),
                stated.oilTemperature(),
                stated.ambientPressure(),
                air);
    }

    private Timeline line(Map<String, Course> courses, String key, double stated) {
        return courses.get(key).line(root.has(key), stated);
    }

    private Timeline towards(Timeline stroke, double stated) {
        boolean back = root.choice("direction", Map.of("forward", false, "reverse", true))
                .orElse(stated < 0);
        return stroke.map(share -> back ? -Math.abs(share) : Math.abs(share));
    }
}
