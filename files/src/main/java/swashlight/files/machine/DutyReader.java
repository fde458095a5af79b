package swashlight.files.machine;

import java.util.Map;
import java.util.Optional;
import swashlight.drive.description.Dimension;
import swashlight.drive.oil.Oil;
import swashlight.drive.steady.Duty;
import swashlight.drive.steady.InputState;
import swashlight.drive.steady.WheelState;
import swashlight.files.document.Fields;
import swashlight.files.document.Heading;
import swashlight.files.document.Measure;
import swashlight.files.document.Range;

/** Reads a duty. What is left out is usual: engine at full throttle, full stroke forward, oil at 60 °C, level ground, no pull. */
final class DutyReader {
    private static final double WARM_OIL = 333.15; // K, 60 °C
    static final Range SHARE = Range.of(Dimension.NUMBER, 0, 1);
    static final Range PUSHED_SPEED = Range.of(Dimension.SPEED, -10, 10);
    static final Range SHAFT_SPEED = Range.of(Dimension.ROTATION, -700, 700);
    static final Range AIR = Range.of(Dimension.PRESSURE, 5e4, 1.1e5);

    private final Fields root;

    DutyReader(Fields root) {
        this.root = root;
    }

    /** The settled duty; one that changes over time is refused. */
    Optional<Duty> read() {
        Heading.read(root, "duty", PlanReader.UNNAMED);
        Duty duty = stated();
        if (root.has("over")) {
            root.complain(
                    "contradiction",
                    "over",
                    "",
                    "this duty changes over time, and one settled situation is wanted here",
                    "give it to the command run, or leave over out");
        }
        PlanReader.KEYS.forEach(root::node);
        root.close();
        return root.complaints().none() ? Optional.of(duty) : Optional.empty();
    }

    /** What the keys outside the course say. */
    Duty stated() {
        InputState input = input();
        double stroke = value("stroke", Condition.STROKE.range(), 1);
        double way = root.choice("direction", Map.of("forward", 1.0, "reverse", -1.0))
                .orElse(0.0);
        double oil = value("oilTemperature", Condition.OIL_TEMPERATURE.range(), WARM_OIL);
        WheelState wheels = wheels();
        double brake = value("brake", SHARE, 0);
        double bypass = value("bypass", SHARE, 0);
        double air = value("ambientPressure", AIR, Oil.ATMOSPHERE);
        boolean fromRest = root.flag("fromRest").orElse(false);
        double directed = way == 0 ? stroke : Math.abs(stroke) * way;
        return new Duty(input, directed, oil, wheels, brake, bypass, air, fromRest);
    }

    private InputState input() {
        boolean runs =
                root.choice("engine", Map.of("running", true, "off", false)).orElse(true);
        double throttle = value("throttle", Condition.THROTTLE.range(), 1);
        Optional<Measure> speed = root.measure("inputSpeed", SHAFT_SPEED);
        if (!runs && (speed.isPresent() || root.has("throttle"))) {
            root.complain("contradiction", "engine", "off", "the engine is off", "leave throttle and inputSpeed out");
        }
        return speed.<InputState>map(found -> new InputState.Fixed(found.value()))
                .orElse(runs ? new InputState.Running(throttle) : new InputState.Off());
    }

    private WheelState wheels() {
        double slope = value("slope", Condition.SLOPE.range(), 0);
        double pull = value("pull", Condition.LOAD.range(), 0);
        Optional<Measure> pushed = root.measure("pushedSpeed", PUSHED_SPEED);
        Optional<String> wheels = root.choice("wheels", Map.of("ground", "ground", "lifted", "lifted", "held", "held"));
        boolean off = wheels.isPresent() && !wheels.get().equals("ground");
        if (off && (pushed.isPresent() || root.has("slope") || root.has("pull"))) {
            root.complain(
                    "contradiction",
                    "wheels",
                    wheels.get(),
                    "wheels that are " + wheels.get() + " know no slope, pull or pushed speed",
                    "leave those out");
        }
        if (off) {
            return wheels.get().equals("lifted") ? new WheelState.Lifted() : new WheelState.Held();
        }
        return pushed.<WheelState>map(found -> new WheelState.Pushed(found.value(), slope))
                .orElse(new WheelState.Ground(slope, pull));
    }

    private double value(String key, Range range, double usual) {
        return root.measure(key, range).map(Measure::value).orElse(usual);
    }
}
