package swashlight.findings.finding;

import java.util.ArrayList;
import java.util.List;
import swashlight.drive.description.DriveDescription;
import swashlight.findings.cause.Cause;
import swashlight.findings.expect.Comparison;
import swashlight.findings.expect.Condition;
import swashlight.findings.expect.ConditionKind;
import swashlight.findings.expect.Conditions;
import swashlight.findings.expect.Forecast;
import swashlight.findings.expect.Rehearsal;

/** Which unstated conditions matter: each is moved by its spread (or by a tenth, where it has none) and the expected number watched. */
final class ConditionCheck {
    private static final double WORTH_ASKING = 0.3; // errors of the reading
    private static final double TENTH = 0.1;
    private static final int MOST = 12;

    private final DriveDescription drive;
    private final Cause cause;
    private final double[] severity; // of each fault, own unit

    ConditionCheck(DriveDescription drive, Cause cause, double[] severity) {
        this.drive = drive;
        this.cause = cause;
        this.severity = severity;
    }

    List<MissingCondition> missing(List<Comparison> comparisons) {
        List<MissingCondition> missing = new ArrayList<>();
        for (Comparison comparison : comparisons) {
            for (Condition condition : comparison.conditions().all()) {
                if (!condition.stated()) {
                    double widening = widening(comparison, condition);
                    if (widening > WORTH_ASKING) {
                        missing.add(new MissingCondition(comparison.reading(), condition, widening));
                    }
                }
            }
        }
        missing.sort((a, b) -> Double.compare(b.widening(), a.widening()));
        return missing.subList(0, Math.min(MOST, missing.size()));
    }

    private double widening(Comparison comparison, Condition condition) {
        double step = condition.spread() > 0 ? condition.spread() : -TENTH * condition.value();
        if (step == 0 || condition.kind() == ConditionKind.PART) {
            return 0;
        }
        Condition moved = new Condition(condition.kind(), condition.value() + step, condition.spread(), true);
        List<Condition> all = new ArrayList<>(comparison.conditions().all());
        all.replaceAll(each -> each.kind() == condition.kind() ? moved : each);
        Conditions before = comparison.conditions();
        Conditions after = new Conditions(all, before.wheels(), before.input(), before.backwards());
        Comparison changed = new Comparison(comparison.reading(), after, comparison.value(), comparison.error());
        Rehearsal rehearsal = new Rehearsal(List.of(comparison, changed));
        Forecast forecast = new Forecast(2);
        double[] vector = drive.vector();
        cause.apply(vector, severity);
        rehearsal.run(
                vector,
                believed -> cause.on(believed, severity),
                new double[rehearsal.errors().size()],
                forecast);
        return forecast.solved(0) && forecast.solved(1)
                ? Math.abs(forecast.value(1) - forecast.value(0)) / comparison.error()
                : 0;
    }
}
