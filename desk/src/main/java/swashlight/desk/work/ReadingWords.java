package swashlight.desk.work;

import swashlight.desk.report.Measure;
import swashlight.desk.report.Value;
import swashlight.drive.description.Dimension;
import swashlight.findings.expect.Condition;
import swashlight.findings.expect.ConditionKind;
import swashlight.findings.expect.Expected;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;

/** Readings, their conditions and what they should be, as values of a report. */
final class ReadingWords {
    private ReadingWords() {}

    static Value kind(ReadingKind kind) {
        return Value.word("reading." + kind.key());
    }

    static Value condition(ConditionKind kind) {
        return Value.word("reading.condition." + kind.key());
    }

    static Value measured(Reading reading) {
        return new Value.Spread(reading.value(), reading.standardError(), measure(reading));
    }

    /** What a reading should be; spread in the SI unit of its kind. */
    static Value expected(Reading reading, Expected expected, double spread) {
        if (expected instanceof Expected.Value value) {
            return new Value.Spread(value.value(), spread, measure(reading));
        }
        return expected instanceof Expected.Stands ? Value.word("expected.stands") : Value.word("expected.none");
    }

    static Value condition(Condition condition) {
        Measure measure = measure(condition.kind(), condition.value());
        return condition.spread() > 0
                ? new Value.Spread(condition.value(), condition.spread(), measure)
                : Value.of(condition.value(), measure);
    }

    /** How a reading is shown. */
    static Measure measure(Reading reading) {
        return reading.setup()
                .part()
                .filter(part -> reading.kind() == ReadingKind.PART_DIMENSION)
                .map(part -> Measure.of(part.dimension(), reading.value()))
                .orElseGet(() -> measure(reading.kind()));
    }

    static Measure measure(ReadingKind kind) {
        return switch (kind) {
            case ROLL_SPEED -> Measure.CREEP;
            case WARM_UP_TIME -> Measure.MINUTES;
            default -> Measure.of(kind.dimension(), 1);
        };
    }

    private static Measure measure(ConditionKind kind, double value) {
        if (kind.dimension() == Dimension.NUMBER) {
            return Measure.SHARE;
        }
        return kind == ConditionKind.DISTANCE ? Measure.LENGTH : Measure.of(kind.dimension(), value);
    }
}
