package swashlight.findings.proof;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Condition;
import swashlight.findings.expect.ConditionKind;
import swashlight.findings.expect.Conditions;
import swashlight.findings.expect.Expected;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;

/** Under what two readings are compared: exact conditions, those of the first where oil, slope, load and air go. */
final class CommonConditions {
    private static final Set<ConditionKind> OF_THE_FIRST = EnumSet.of(
            ConditionKind.OIL_TEMPERATURE,
            ConditionKind.SLOPE,
            ConditionKind.LOAD,
            ConditionKind.AMBIENT,
            ConditionKind.SINCE);
    private static final double SLOW = 1e-4; // SI unit of a comparison: a speed that still has a time

    private CommonConditions() {}

    /** A reading under its own conditions, as exact as they are stated. */
    static Comparison exact(Comparison own) {
        return with(own, own.conditions().all());
    }

    /** A reading under the oil, slope, load and air of an earlier one, exact. */
    static Comparison common(Comparison before, Comparison after) {
        List<Condition> all = new ArrayList<>();
        for (Condition condition : after.conditions().all()) {
            if (!OF_THE_FIRST.contains(condition.kind())) {
                all.add(condition);
            }
        }
        for (Condition condition : before.conditions().all()) {
            if (OF_THE_FIRST.contains(condition.kind())) {
                all.add(condition);
            }
        }
        all.sort((a, b) -> a.kind().compareTo(b.kind()));
        return with(after, all);
    }

    private static Comparison with(Comparison own, List<Condition> conditions) {
        List<Condition> exact = conditions.stream()
                .map(each -> new Condition(each.kind(), each.value(), 0, each.stated()))
                .toList();
        Conditions all = new Conditions(
                exact,
                own.conditions().wheels(),
                own.conditions().input(),
                own.conditions().backwards());
        return new Comparison(own.reading(), all, own.value(), own.error());
    }

    /** The earlier reading that tells the same in the same way, by label first; nothing where none does. */
    static Optional<Comparison> partner(Comparison after, List<Comparison> before) {
        List<Comparison> same =
                before.stream().filter(each -> alike(each, after)).toList();
        return same.stream()
                .filter(each -> each.reading().label().equals(after.reading().label()))
                .findFirst()
                .or(() -> same.stream().min((a, b) -> Double.compare(apart(a, after), apart(b, after))));
    }

    private static boolean alike(Comparison a, Comparison b) {
        return family(a.reading().kind()) == family(b.reading().kind())
                && a.conditions().wheels() == b.conditions().wheels()
                && a.conditions().backwards() == b.conditions().backwards()
                && sign(a, ConditionKind.STROKE) == sign(b, ConditionKind.STROKE)
                && sign(a, ConditionKind.SLOPE) == sign(b, ConditionKind.SLOPE);
    }

    /** Timed or not, a run tells a speed. */
    private static ReadingKind family(ReadingKind kind) {
        return switch (kind) {
            case RUN_TIME -> ReadingKind.GROUND_SPEED;
            case ROLL_TIME -> ReadingKind.ROLL_SPEED;
            default -> kind;
        };
    }

    private static double sign(Comparison comparison, ConditionKind kind) {
        return Math.signum(value(comparison, kind));
    }

    /** How unlike two conditions are: a kelvin counts like a hundredth of a slope. */
    private static double apart(Comparison a, Comparison b) {
        return Math.abs(value(a, ConditionKind.OIL_TEMPERATURE) - value(b, ConditionKind.OIL_TEMPERATURE))
                + 100 * Math.abs(value(a, ConditionKind.SLOPE) - value(b, ConditionKind.SLOPE));
    }

    private static double value(Comparison comparison, ConditionKind kind) {
        for (Condition condition : comparison.conditions().all()) {
            if (condition.kind() == kind) {
                return condition.value();
            }
        }
        return 0;
    }

    /** The instrument's error where a comparison stands at a value, both SI unit of the comparison. */
    static double instrument(Comparison comparison, double at) {
        Reading asked = comparison.reading();
        double told =
                comparison.told(Math.max(Math.abs(at), SLOW)) instanceof Expected.Value number ? number.value() : 0;
        OptionalDouble error = asked.error();
        return Comparison.of(new Reading(asked.label(), asked.kind(), told, error, asked.setup()))
                .error();
    }
}
