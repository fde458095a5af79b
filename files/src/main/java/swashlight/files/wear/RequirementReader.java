package swashlight.files.wear;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import swashlight.drive.description.Dimension;
import swashlight.files.document.Fields;
import swashlight.files.document.Measure;
import swashlight.files.document.Node;
import swashlight.files.document.Range;
import swashlight.files.machine.Condition;
import swashlight.files.machine.ReadingRange;
import swashlight.findings.wear.Requirement;

/** Reads what a machine must do: a list of speeds, pulls or rolls, each at its hill. */
final class RequirementReader {
    static final Range SHARE = Range.of(Dimension.NUMBER, 0.01, 20);
    private static final Range SLOPE = Range.slope(-0.6, 0.6);
    private static final Range OIL = Range.of(Dimension.TEMPERATURE, 240, 420);
    private static final double HOT = 353.15; // K, 80 °C

    private final Fields root;

    RequirementReader(Fields root) {
        this.root = root;
    }

    List<Requirement> list(String key) {
        List<Requirement> all = new ArrayList<>();
        int place = 0;
        for (Node item : root.items(key)) {
            place++;
            String path = root.field(key) + "[" + place + "]";
            if (item instanceof Node.Branch branch) {
                one(new Fields(branch, path, root.complaints())).ifPresent(all::add);
            } else {
                root.complaints()
                        .add(
                                "not-keys",
                                item.spot(),
                                path,
                                item.words(),
                                "a requirement consists of keys with values",
                                "write for example share: 85 %");
            }
        }
        return all;
    }

    private Optional<Requirement> one(Fields fields) {
        int before = fields.complaints().count();
        Map<String, Requirement.Kind> kinds = new LinkedHashMap<>();
        List<Requirement.Kind> stated = new ArrayList<>();
        double bound = 0;
        for (Requirement.Kind kind : Requirement.Kind.values()) {
            kinds.put(kind.key(), kind);
            Optional<Measure> measure = fields.measure(kind.key(), ReadingRange.of(kind.reading()));
            if (measure.isPresent()) {
                stated.add(kind);
                bound = Math.abs(measure.get().value());
            }
        }
        Optional<Measure> share = fields.measure("share", SHARE);
        Requirement.Kind of = fields.choice("of", kinds).orElse(Requirement.Kind.SPEED);
        boolean reverse = fields.choice("direction", Map.of("forward", false, "reverse", true))
                .orElse(false);
        double slope = fields.measure("slope", SLOPE).map(Measure::value).orElse(0.0);
        double load = fields.measure("load", Condition.LOAD.range())
                .map(Measure::value)
                .orElse(0.0);
        double oil = fields.measure("oilTemperature", OIL).map(Measure::value).orElse(HOT);
        if (stated.size() + (share.isPresent() ? 1 : 0) != 1
                && fields.complaints().count() == before) {
            fields.complain(
                    stated.isEmpty() ? "no-kind" : "two-kinds",
                    "",
                    "",
                    stated.isEmpty() ? "nothing says what must be reached" : "this is more than one requirement",
                    stated.isEmpty() ? "one key must be one of share, speed, pull, roll" : "begin a new item for each");
        }
        if (share.isEmpty() && fields.has("of")) {
            fields.complain("contradiction", "of", "", "of goes with a share", "write share: 85 %, or leave of out");
        }
        fields.close();
        if (fields.complaints().count() != before) {
            return Optional.empty();
        }
        Requirement.Kind kind = stated.isEmpty() ? of : stated.get(0);
        double wanted = share.map(Measure::value).orElse(bound);
        if (!(wanted > 0)) {
            fields.complain("out-of-range", kind.key(), "0", "nothing is required", "a value above 0 is right");
            return Optional.empty();
        }
        return Optional.of(new Requirement(kind, share.isPresent(), wanted, slope, load, oil, reverse));
    }
}
