package swashlight.desk.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import swashlight.desk.report.Fact;
import swashlight.desk.report.Line;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Value;
import swashlight.drive.description.Dimension;
import swashlight.findings.wear.PartLeak;
import swashlight.findings.wear.Requirement;
import swashlight.findings.wear.Yardstick;

/** What a machine must do, as somebody states it on the line, and as a report tells it. */
final class RequirementOfLine {
    private static final double USUAL_PRESSURE = 80e5; // Pa (own choice)
    private static final List<String> SAY_WHAT = List.of("need", "speed", "pull", "roll");

    private final RequirementAsked asked;
    private final Inspection inspection;

    RequirementOfLine(RequirementAsked asked, Inspection inspection) {
        this.asked = asked;
        this.inspection = inspection;
    }

    /** What is required: what the line says, else the file, else the usual. */
    List<Requirement> list(List<Requirement> filed) {
        if (asked.stated().isEmpty()) {
            return filed.isEmpty() ? Requirement.usual() : filed;
        }
        List<String> what =
                SAY_WHAT.stream().filter(asked.stated()::containsKey).toList();
        if (what.size() > 1) {
            inspection.refuse(
                    "two-kinds",
                    asked.stated().get(what.get(1)),
                    "this is a second requirement",
                    "state one at a time");
        }
        Requirement usual = Requirement.usual().get(0);
        double hill = number("hill", Dimension.ANGLE, -0.6, 0.6).orElse(usual.slope());
        double load = number("load", Dimension.FORCE, 0, 1e5).orElse(0);
        double oil = number("oil", Dimension.TEMPERATURE, 240, 420).orElse(usual.oilTemperature());
        OptionalDouble speed = number("speed", Dimension.SPEED, 1e-3, 20);
        OptionalDouble pull = number("pull", Dimension.FORCE, 1, 1e5);
        OptionalDouble roll = number("roll", Dimension.SPEED, 1e-5, 10);
        double need = number("need", Dimension.NUMBER, 0.01, 1.5).orElse(usual.bound());
        List<Requirement> all = new ArrayList<>();
        if (speed.isPresent()) {
            all.add(new Requirement(Requirement.Kind.SPEED, false, speed.getAsDouble(), hill, load, oil, false));
        } else if (pull.isPresent()) {
            all.add(new Requirement(Requirement.Kind.PULL, false, pull.getAsDouble(), hill, 0, oil, false));
        } else if (roll.isPresent()) {
            double slope = Math.max(Math.abs(hill), 0.01);
            all.add(new Requirement(Requirement.Kind.ROLL, false, roll.getAsDouble(), -slope, 0, oil, false));
            all.add(new Requirement(Requirement.Kind.ROLL, false, roll.getAsDouble(), slope, 0, oil, false));
        } else {
            all.add(new Requirement(Requirement.Kind.SPEED, true, need, hill, load, oil, false));
            all.add(new Requirement(Requirement.Kind.SPEED, true, need, -hill, load, oil, true));
        }
        return all;
    }

    /** Where leaks are told: at a stated pressure, with the oil of the first requirement. */
    PartLeak leak(List<Requirement> required) {
        double pressure = asked.pressure()
                .map(stated ->
                        inspection.number(stated, Dimension.PRESSURE, 1e5, 6e7).orElse(USUAL_PRESSURE))
                .orElse(USUAL_PRESSURE);
        return new PartLeak(pressure, required.get(0).oilTemperature());
    }

    private OptionalDouble number(String key, Dimension dimension, double low, double high) {
        return Optional.ofNullable(asked.stated().get(key))
                .map(stated -> inspection.number(stated, dimension, low, high))
                .orElse(OptionalDouble.empty());
    }

    /** A requirement of a yardstick in words. */
    static Value words(Yardstick yardstick, int place) {
        Requirement each = yardstick.requirements().get(place);
        String way = each.kind() == Requirement.Kind.ROLL
                ? (each.slope() > 0 ? "back" : "front")
                : each.reverse() ? "reverse" : "forward";
        List<Value> values = List.of(
                Value.of(yardstick.required(place), measure(each)),
                Value.word("wear.way." + way),
                Value.of(each.slope(), Measure.ANGLE),
                Value.of(each.oilTemperature(), Measure.TEMPERATURE),
                Value.of(each.bound(), Measure.SHARE),
                Value.of(each.load(), Measure.FORCE));
        String share = each.relative() ? ".share" : "";
        String loaded = each.load() > 0 ? ".loaded" : "";
        return new Value.Word("wear.required." + each.kind().key() + share + loaded, "", values);
    }

    static Measure measure(Requirement requirement) {
        return switch (requirement.kind()) {
            case SPEED -> Measure.SPEED;
            case PULL -> Measure.FORCE;
            case ROLL -> Measure.CREEP;
        };
    }

    /** Where leaks were told. */
    static List<Line> where(PartLeak leak) {
        return List.of(
                new Fact("leakPressure", Value.of(leak.pressure(), Measure.PRESSURE)),
                new Fact("leakOil", Value.of(leak.oilTemperature(), Measure.TEMPERATURE)));
    }
}
