package swashlight.findings.expect;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import swashlight.drive.description.DriveDescription;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.reading.Setup;

/**
 * What one reading would be on a drive exactly as described.
 *
 * @param expected the number, or why there is none
 * @param conditions stated, and usual where nothing was stated
 */
public record Expectation(Expected expected, List<Condition> conditions) {
    private static final double ANY_TIME = 1; // s, stands in for the measured value

    public Expectation {
        conditions = List.copyOf(conditions);
    }

    /** The expectation of a kind of reading under a setup on a drive. */
    public static Expectation of(DriveDescription drive, ReadingKind kind, Setup setup) {
        Reading asked = new Reading(kind.key(), kind, ANY_TIME, OptionalDouble.empty(), setup);
        Conditions conditions = UsualSetup.of(kind, setup);
        Optional<String> hindrance = Comparison.hindrance(asked);
        if (hindrance.isPresent()) {
            return new Expectation(new Expected.NotAsked(hindrance.orElseThrow()), conditions.all());
        }
        Rehearsal rehearsal = new Rehearsal(List.of(Comparison.of(asked)));
        Forecast forecast = new Forecast(1);
        rehearsal.run(
                drive.vector(),
                believed -> believed,
                new double[rehearsal.errors().size()],
                forecast);
        Expected expected = forecast.solved(0)
                ? rehearsal.comparisons().get(0).told(forecast.value(0))
                : new Expected.NotSolved("try a smaller stroke, slope or load");
        return new Expectation(expected, conditions.all());
    }
}
