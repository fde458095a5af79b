package swashlight.desk.work;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import swashlight.drive.description.Dimension;
import swashlight.findings.reading.MachineCase;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.reading.Setup;

/** The readings somebody asks about, from names and conditions. */
final class ExpectReader {
    private static final double USUAL_RUN = 20; // m
    private static final double USUAL_ROLL = 1; // m
    private static final double HALF_AN_HOUR = 1800; // s
    private static final double STEEPEST = Math.toRadians(40);
    private static final double REACHED = 343.15; // K, 70 °C
    private static final Set<ReadingKind> USUAL = EnumSet.of(
            ReadingKind.RUN_TIME,
            ReadingKind.ENGINE_SPEED,
            ReadingKind.INPUT_SPEED,
            ReadingKind.ROLL_TIME,
            ReadingKind.PUSH_FORCE,
            ReadingKind.ARM_TRAVEL,
            ReadingKind.DRAWBAR_PULL,
            ReadingKind.WARM_TEMPERATURE);

    private final ExpectAsked asked;
    private final Inspection inspection;

    ExpectReader(ExpectAsked asked, Inspection inspection) {
        this.asked = asked;
        this.inspection = inspection;
    }

    /** The case whose readings are asked about; it brings its drive, its readings and their conditions. */
    MachineCase machine(DriveAsked drive) {
        asked.besideCase(drive)
                .ifPresent(stated -> inspection.refuse(
                        "case-and-more",
                        stated,
                        "a case brings its own drive, readings and conditions",
                        "leave it out, or leave out --case"));
        return inspection.filed(() -> CaseShelf.open(asked.machineCase())).machineCase();
    }

    List<Reading> readings() {
        List<ReadingKind> kinds = new ArrayList<>();
        List<String> known = Arrays.stream(ReadingKind.values())
                .filter(kind -> kind != ReadingKind.PART_DIMENSION)
                .map(ReadingKind::key)
                .toList();
        for (Stated stated : asked.kinds()) {
            inspection
                    .oneOf(stated, known)
                    .flatMap(key -> Arrays.stream(ReadingKind.values())
                            .filter(kind -> kind.key().equals(key))
                            .findFirst())
                    .ifPresent(kinds::add);
        }
        if (asked.kinds().isEmpty()) {
            kinds.addAll(USUAL);
        }
        return kinds.stream()
                .map(kind -> new Reading(kind.key(), kind, 1, OptionalDouble.empty(), setup(kind)))
                .toList();
    }

    private Setup setup(ReadingKind kind) {
        boolean rolls = kind == ReadingKind.ROLL_TIME || kind == ReadingKind.ROLL_SPEED;
        boolean still = rolls || kind == ReadingKind.PUSH_FORCE;
        double distance = rolls ? USUAL_ROLL : USUAL_RUN;
        boolean timed = kind == ReadingKind.RUN_TIME || kind == ReadingKind.ROLL_TIME;
        OptionalDouble oil = number("oilTemperature", Dimension.TEMPERATURE, 230.15, 430.15);
        OptionalDouble slope = number("slope", Dimension.ANGLE, -STEEPEST, STEEPEST);
        return new Setup(
                still ? OptionalDouble.empty() : number("stroke", Dimension.NUMBER, -1, 1),
                number("throttle", Dimension.NUMBER, 0.2, 1),
                kind == ReadingKind.INPUT_SPEED || kind == ReadingKind.ENGINE_SPEED
                        ? OptionalDouble.empty()
                        : number("inputSpeed", Dimension.ROTATION, -700, 700),
                kind == ReadingKind.WARM_UP_TIME && oil.isEmpty() ? OptionalDouble.of(REACHED) : oil,
                OptionalDouble.empty(),
                slope,
                OptionalDouble.empty(),
                timed ? or(number("distance", Dimension.LENGTH, 0.1, 1000), distance) : OptionalDouble.empty(),
                number("load", Dimension.FORCE, 0, 1e5),
                kind == ReadingKind.WARM_TEMPERATURE
                        ? or(number("since", Dimension.TIME, 1, 86_400), HALF_AN_HOUR)
                        : OptionalDouble.empty(),
                number("ambient", Dimension.TEMPERATURE, 223.15, 333.15),
                Optional.empty(),
                asked.lifted(),
                false,
                asked.backwards() || (rolls && slope.orElse(0) > 0));
    }

    private static OptionalDouble or(OptionalDouble stated, double usual) {
        return stated.isPresent() ? stated : OptionalDouble.of(usual);
    }

    private OptionalDouble number(String key, Dimension dimension, double low, double high) {
        Stated stated = asked.conditions().get(key);
        return stated == null ? OptionalDouble.empty() : inspection.number(stated, dimension, low, high);
    }
}
