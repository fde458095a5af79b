package swashlight.findings.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import swashlight.findings.expect.Comparison;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.reading.Setup;

/**
 * The readings of a case sorted: usable, unusable, and implied. An input speed stated with another reading at a stated throttle is itself a
 * reading, unless the case gives it again.
 */
final class Intake {
    private static final double SAME_SPEED = 0.005; // share: the same tachometer reading told twice

    private final List<Comparison> usable = new ArrayList<>();
    private final List<Boolean> implied = new ArrayList<>();
    private final List<UnusedReading> unused = new ArrayList<>();

    Intake(List<Reading> readings) {
        for (Reading reading : readings) {
            take(reading, false);
        }
        for (Reading reading : readings) {
            impliedBy(reading).filter(each -> !told(each)).ifPresent(each -> take(each, true));
        }
    }

    List<Comparison> usable() {
        return usable;
    }

    boolean implied(int reading) {
        return implied.get(reading);
    }

    List<UnusedReading> unused() {
        return unused;
    }

    private void take(Reading reading, boolean isImplied) {
        Optional<String> hindrance = Comparison.hindrance(reading);
        if (hindrance.isPresent()) {
            unused.add(new UnusedReading(reading, hindrance.orElseThrow()));
        } else {
            usable.add(Comparison.of(reading));
            implied.add(isImplied);
        }
    }

    private static Optional<Reading> impliedBy(Reading reading) {
        Setup setup = reading.setup();
        boolean speaks = setup.inputSpeed().isPresent() && setup.throttle().isPresent();
        if (!speaks || reading.kind() == ReadingKind.INPUT_SPEED || reading.kind() == ReadingKind.PART_DIMENSION) {
            return Optional.empty();
        }
        Setup own = new Setup(
                setup.stroke(),
                setup.throttle(),
                OptionalDouble.empty(),
                setup.oilTemperature(),
                setup.temperatureError(),
                setup.slope(),
                setup.slopeError(),
                OptionalDouble.empty(),
                setup.load(),
                OptionalDouble.empty(),
                setup.ambient(),
                Optional.empty(),
                setup.lifted(),
                setup.held(),
                setup.backwards());
        return Optional.of(new Reading(
                reading.label() + " (input speed)",
                ReadingKind.INPUT_SPEED,
                setup.inputSpeed().getAsDouble(),
                OptionalDouble.empty(),
                own));
    }

    private boolean told(Reading speed) {
        return usable.stream()
                .map(Comparison::reading)
                .filter(reading -> reading.kind() == ReadingKind.INPUT_SPEED)
                .anyMatch(reading -> Math.abs(reading.value() - speed.value()) <= SAME_SPEED * Math.abs(speed.value()));
    }
}
