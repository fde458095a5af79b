package swashlight.desk.work;

import java.util.List;
import java.util.OptionalDouble;
import swashlight.desk.report.Measure;
import swashlight.desk.report.Value;
import swashlight.findings.expect.Expected;
import swashlight.findings.outlook.Outlook;
import swashlight.findings.reading.Reading;

/**
 * One reading and what it should be.
 *
 * @param name what to call it
 * @param reading the reading, measured or not
 * @param sound on sound machines
 * @param sick on those with the faults asked for; the sound ones where there are none
 */
record ExpectRow(Value name, Reading reading, Outlook sound, Outlook sick) {
    /** Half the distance between the ends of an interval, in standard deviations of a normal law with a twentieth beyond each end. */
    private static final double REACH = 1.645; // 1

    List<Caution> cautions() {
        return Caution.of(reading.kind(), reading.setup());
    }

    Measure measure() {
        return ReadingWords.measure(reading);
    }

    /** The instrument's error; that of a temperature is a difference of temperatures. */
    Value instrument() {
        return Value.of(sound.instrument(), measure() == Measure.TEMPERATURE ? Measure.WARMTH : measure());
    }

    Value told(Expected expected) {
        return expected instanceof Expected.Value value
                ? Value.of(value.value(), measure())
                : ReadingWords.expected(reading, expected, 0);
    }

    /** How far what was measured lies from the middle, in standard deviations of machines and instrument together. */
    OptionalDouble off() {
        OptionalDouble low = number(sound.low());
        OptionalDouble middle = number(sound.middle());
        OptionalDouble high = number(sound.high());
        if (low.isEmpty() || middle.isEmpty() || high.isEmpty()) {
            return OptionalDouble.empty();
        }
        double away = reading.value() - middle.getAsDouble();
        double side = away > 0 ? high.getAsDouble() - middle.getAsDouble() : middle.getAsDouble() - low.getAsDouble();
        double machines = side / REACH;
        double error = reading.standardError();
        double both = Math.sqrt(machines * machines + error * error);
        return both > 0 ? OptionalDouble.of(away / both) : OptionalDouble.empty();
    }

    static OptionalDouble number(Expected expected) {
        return expected instanceof Expected.Value value ? OptionalDouble.of(value.value()) : OptionalDouble.empty();
    }
}
