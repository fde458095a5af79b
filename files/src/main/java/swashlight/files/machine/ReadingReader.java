package swashlight.files.machine;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import swashlight.drive.description.Parameter;
import swashlight.files.document.Complaints;
import swashlight.files.document.Fields;
import swashlight.files.document.Measure;
import swashlight.files.document.Node;
import swashlight.files.document.Range;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;
import swashlight.findings.reading.Setup;

/** One item of the list of readings: the key that is a kind holds the value, the others say how it was taken. */
final class ReadingReader {
    private static final int LONGEST_LABEL = 200; // characters
    private static final int LONGEST_NOTE = 2000; // characters

    private final Complaints complaints;
    private final Optional<Node.Branch> usual;

    ReadingReader(Complaints complaints, Optional<Node.Branch> usual) {
        this.complaints = complaints;
        this.usual = usual;
    }

    /** The reading at a place of the list, counted from 1; empty when something is wrong with it. */
    Optional<Reading> read(Node item, int place) {
        String path = "readings[" + place + "]";
        if (!(item instanceof Node.Branch branch)) {
            complaints.add(
                    "not-keys",
                    item.spot(),
                    path,
                    item.words(),
                    "a reading consists of keys with values",
                    "write for example runTime: 9.8 s");
            return Optional.empty();
        }
        int before = complaints.count();
        Fields own = new Fields(branch, path, complaints);
        List<ReadingKind> kinds = kinds(own);
        Fields fields = usual.map(own::over).orElse(own);
        kinds().keySet().forEach(fields::node);
        if (kinds.size() != 1) {
            fields.complain(
                    kinds.isEmpty() ? "no-kind" : "two-kinds",
                    "",
                    branch.words(),
                    kinds.isEmpty() ? "nothing says what was read" : "this is more than one reading",
                    kinds.isEmpty()
                            ? "one key must be one of " + String.join(", ", kinds().keySet())
                            : "begin a new item for each");
        }
        Optional<ReadingKind> kind = kinds.size() == 1 ? Optional.of(kinds.get(0)) : Optional.empty();
        String label = fields.text("label", LONGEST_LABEL)
                .orElse(kind.map(ReadingKind::key).orElse("") + " " + place);
        fields.text("note", LONGEST_NOTE);
        SetupReader conditions = new SetupReader(fields, kind);
        Optional<Parameter> part = conditions.part();
        Setup setup = conditions.setup(part);
        Optional<Reading> reading = kind.flatMap(found -> value(fields, found, part, label, setup));
        fields.node("error");
        fields.node("bias");
        fields.close();
        return complaints.count() == before ? reading : Optional.empty();
    }

    private static Optional<Reading> value(
            Fields fields, ReadingKind kind, Optional<Parameter> part, String label, Setup setup) {
        if (kind == ReadingKind.PART_DIMENSION && part.isEmpty()) {
            if (!fields.has("part")) {
                fields.complain(
                        "missing",
                        kind.key(),
                        "",
                        "it is not said what was measured",
                        "add part: pump.boreClearance, for example");
            }
            return Optional.empty();
        }
        Range range = kind == ReadingKind.PART_DIMENSION ? ReadingRange.of(part.get()) : ReadingRange.of(kind);
        Optional<Measure> value = fields.measure(kind.key(), range);
        OptionalDouble stated = value.isPresent() ? fields.spread("error", range, value.get()) : OptionalDouble.empty();
        OptionalDouble error =
                stated.isPresent() ? stated : value.map(Measure::spread).orElse(OptionalDouble.empty());
        if (error.isPresent() && error.getAsDouble() == 0) {
            fields.complain(
                    "bad-spread",
                    kind.key(),
                    "0",
                    "no reading is without error",
                    "leave it out, or state one standard deviation");
        }
        Optional<Measure> bias = fields.measure("bias", ReadingRange.bias(range));
        if (value.isEmpty() || bias.isEmpty()) {
            return value.map(measure -> new Reading(label, kind, measure.value(), error, setup));
        }
        Reading right = righted(new Reading(label, kind, value.get().value(), error, setup), bias.get());
        if (right.value() < range.low() || right.value() > range.high()) {
            fields.complain(
                    "out-of-range",
                    "bias",
                    "" + bias.get().value(),
                    "without it the reading is none that this kind can have",
                    "the bias is what the instrument shows too much; below 0 where it shows too little");
        }
        return Optional.of(right);
    }

    /** What the instrument would have shown without its bias; how well that is known adds to its error, for each reading by itself. */
    private static Reading righted(Reading read, Measure bias) {
        double spread = bias.spread().orElse(0);
        OptionalDouble error = spread > 0
                ? OptionalDouble.of(Math.sqrt(read.standardError() * read.standardError() + spread * spread))
                : read.error();
        return new Reading(read.label(), read.kind(), read.value() - bias.value(), error, read.setup());
    }

    /** What was read. The input speed beside another reading is its condition. */
    private static List<ReadingKind> kinds(Fields own) {
        List<ReadingKind> found = kinds().entrySet().stream()
                .filter(kind -> own.has(kind.getKey()))
                .map(Map.Entry::getValue)
                .toList();
        return found.size() < 2
                ? found
                : found.stream().filter(kind -> kind != ReadingKind.INPUT_SPEED).toList();
    }

    static Map<String, ReadingKind> kinds() {
        Map<String, ReadingKind> kinds = new LinkedHashMap<>();
        for (ReadingKind kind : ReadingKind.values()) {
            kinds.put(kind.key(), kind);
        }
        return kinds;
    }
}
