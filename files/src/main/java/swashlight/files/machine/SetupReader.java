package swashlight.files.machine;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.files.document.Fields;
import swashlight.files.document.Measure;
import swashlight.files.unit.Nearest;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.reading.Setup;

/** The conditions of one reading, from its keys laid over the usual ones. */
final class SetupReader {
    private static final Map<String, Boolean> DIRECTIONS = Map.of("forward", true, "reverse", false);
    private static final Set<ReadingKind> PUSHED_OR_ROLLED =
            EnumSet.of(ReadingKind.ROLL_TIME, ReadingKind.ROLL_SPEED, ReadingKind.PUSH_FORCE);
    private static final Set<ReadingKind> AT_NEUTRAL =
            EnumSet.of(ReadingKind.CREEP_SPEED, ReadingKind.GALLERY_PRESSURE, ReadingKind.PART_DIMENSION);

    private final Fields fields;
    private final Optional<ReadingKind> kind;
    private final Map<Condition, Measure> measures = new EnumMap<>(Condition.class);

    /** The conditions below some keys; no kind where they are the usual ones of many. */
    SetupReader(Fields fields, Optional<ReadingKind> kind) {
        this.fields = fields;
        this.kind = kind;
        for (Condition condition : Condition.values()) {
            if (kind.map(ReadingKind::key).equals(Optional.of(condition.key()))) {
                continue; // the input speed is itself what was read
            }
            fields.measure(condition.key(), condition.range()).ifPresent(measure -> measures.put(condition, measure));
        }
    }

    Setup setup(Optional<Parameter> part) {
        Optional<Boolean> forward = fields.choice("direction", DIRECTIONS);
        boolean lifted = fields.flag("lifted").orElse(false);
        boolean held = fields.flag("held").orElse(false);
        boolean backwards = fields.flag("backwards").orElse(false);
        boolean moves = kind.map(PUSHED_OR_ROLLED::contains).orElse(false);
        if (lifted && held) {
            fields.complain(
                    "contradiction", "held", "true", "wheels cannot be held and lifted", "leave one of the two");
        }
        return new Setup(
                moves ? value(Condition.STROKE) : stroke(forward),
                value(Condition.THROTTLE),
                value(Condition.INPUT_SPEED),
                value(Condition.OIL_TEMPERATURE),
                error(Condition.OIL_TEMPERATURE),
                value(Condition.SLOPE),
                error(Condition.SLOPE),
                value(Condition.DISTANCE),
                value(Condition.LOAD),
                value(Condition.SINCE),
                value(Condition.AMBIENT),
                part,
                lifted,
                held,
                backwards || (moves && forward.isPresent() && !forward.get()));
    }

    /** The part a teardown dimension is of. */
    Optional<Parameter> part() {
        Optional<String> key = fields.text("part", 100);
        Optional<Parameter> part = key.flatMap(Parameters::find);
        if (key.isPresent() && part.isEmpty()) {
            String near = Nearest.to(
                            key.get(),
                            Parameters.all().stream().map(Parameter::key).toList())
                    .map(found -> "did you mean " + found + "?")
                    .orElse("name it as in a drive file: pump.boreClearance");
            fields.complain("unknown-part", "part", key.get(), "there is no such part", near);
        }
        return part;
    }

    private OptionalDouble stroke(Optional<Boolean> forward) {
        OptionalDouble stated = value(Condition.STROKE);
        if (forward.isEmpty() || kind.map(AT_NEUTRAL::contains).orElse(false)) {
            return stated;
        }
        double way = forward.get() ? 1 : -1;
        if (stated.isPresent() && stated.getAsDouble() * way < 0 && way > 0) {
            fields.complain(
                    "contradiction",
                    "direction",
                    "forward",
                    "the stroke is negative, which is reverse",
                    "leave the direction or the sign out");
        }
        return OptionalDouble.of(stated.isPresent() ? Math.abs(stated.getAsDouble()) * way : way);
    }

    private OptionalDouble value(Condition condition) {
        Measure measure = measures.get(condition);
        return measure == null ? OptionalDouble.empty() : OptionalDouble.of(measure.value());
    }

    private OptionalDouble error(Condition condition) {
        Measure measure = measures.get(condition);
        return measure == null ? OptionalDouble.empty() : measure.spread();
    }
}
