package swashlight.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.findings.reading.Look;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.Setup;

/** A case written as a row of numbers, for {@code find.js}: seed, drive, readings with their conditions, looks. */
public final class CaseNumbers {
    private final List<Double> numbers = new ArrayList<>();

    private CaseNumbers() {}

    /** The row. */
    public static double[] of(MachineCase machine, int seed) {
        CaseNumbers row = new CaseNumbers();
        row.add(seed);
        row.drive(machine);
        row.add(machine.readings().size());
        machine.readings().forEach(row::reading);
        row.looks(machine.seen());
        row.looks(machine.notSeen());
        return row.numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private void add(double number) {
        numbers.add(number);
    }

    private void drive(MachineCase machine) {
        add(Parameters.count());
        for (Parameter parameter : Parameters.all()) {
            add(machine.drive().value(parameter));
        }
        for (Parameter parameter : Parameters.all()) {
            add(machine.drive().quantity(parameter).spread());
        }
        for (Parameter parameter : Parameters.all()) {
            add(machine.drive().quantity(parameter).origin().ordinal());
        }
    }

    private void reading(Reading reading) {
        add(reading.kind().ordinal());
        add(reading.value());
        add(reading.error().orElse(0));
        List<Stated> stated = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (Stated condition : Stated.values()) {
            of(reading.setup(), condition).ifPresent(value -> {
                stated.add(condition);
                values.add(value);
            });
        }
        add(stated.size());
        stated.forEach(condition -> add(condition.ordinal()));
        numbers.addAll(values);
    }

    private static OptionalDouble of(Setup setup, Stated condition) {
        return switch (condition) {
            case STROKE -> setup.stroke();
            case THROTTLE -> setup.throttle();
            case INPUT_SPEED -> setup.inputSpeed();
            case OIL_TEMPERATURE -> setup.oilTemperature();
            case TEMPERATURE_ERROR -> setup.temperatureError();
            case SLOPE -> setup.slope();
            case SLOPE_ERROR -> setup.slopeError();
            case DISTANCE -> setup.distance();
            case LOAD -> setup.load();
            case SINCE -> setup.since();
            case AMBIENT -> setup.ambient();
            case LIFTED -> OptionalDouble.of(setup.lifted() ? 1 : 0);
            case HELD -> OptionalDouble.of(setup.held() ? 1 : 0);
            case BACKWARDS -> OptionalDouble.of(setup.backwards() ? 1 : 0);
        };
    }

    private void looks(Set<Look> looks) {
        add(looks.size());
        looks.stream().sorted().forEach(look -> add(look.ordinal()));
    }
}
