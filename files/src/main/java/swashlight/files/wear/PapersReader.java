package swashlight.files.wear;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import swashlight.drive.description.Dimension;
import swashlight.files.document.Fields;
import swashlight.files.document.Heading;
import swashlight.files.document.Measure;
import swashlight.files.document.Node;
import swashlight.files.document.Range;
import swashlight.findings.wear.DrivePapers;
import swashlight.findings.wear.PartFacts;
import swashlight.findings.wear.WearKind;
import swashlight.findings.wear.WearPart;

/** Reads what a maker's papers say about parts and screws; every number names its source. */
final class PapersReader {
    static final Range TORQUE = Range.of(Dimension.TORQUE, 0.1, 2000);
    private static final Range LENGTH = Range.of(Dimension.LENGTH, 0, 0.3);
    private static final Range FLOW = Range.of(Dimension.FLOW, 0, 1e-3);
    private static final int LONGEST = 300; // characters

    private final Fields root;

    PapersReader(Fields root) {
        this.root = root;
    }

    /** As a file of their own. */
    DrivePapers file() {
        Heading.read(root, "papers", "papers");
        return below();
    }

    /** Below a key. */
    DrivePapers below() {
        Map<WearPart, PartFacts> parts = new HashMap<>();
        root.branch("parts").ifPresent(branch -> {
            for (WearPart part : WearPart.all()) {
                branch.branch(part.key()).ifPresent(fields -> parts.put(part, facts(part, fields)));
            }
            branch.close();
        });
        List<DrivePapers.Torque> torques = new ArrayList<>();
        int place = 0;
        for (Node item : root.items("torques")) {
            place++;
            String path = root.field("torques") + "[" + place + "]";
            if (item instanceof Node.Branch branch) {
                torque(new Fields(branch, path, root.complaints())).ifPresent(torques::add);
            } else {
                root.complaints()
                        .add(
                                "not-keys",
                                item.spot(),
                                path,
                                item.words(),
                                "a torque consists of keys with values",
                                "write screw, torque and source");
            }
        }
        root.close();
        return new DrivePapers(parts, torques);
    }

    private static PartFacts facts(WearPart part, Fields fields) {
        Range range = part.kind().dimension() == Dimension.FLOW ? FLOW : LENGTH;
        OptionalDouble most = number(fields.measure("most", range));
        Optional<Boolean> lapping = fields.flag("mayBeLapped");
        OptionalDouble lapAtMost = number(fields.measure("lapAtMost", LENGTH));
        OptionalDouble fresh =
                part.kind() == WearKind.SPRING ? number(fields.measure("freshLength", LENGTH)) : OptionalDouble.empty();
        String source = source(fields);
        fields.close();
        return new PartFacts(most, lapping, lapAtMost, fresh, source);
    }

    private static Optional<DrivePapers.Torque> torque(Fields fields) {
        int before = fields.complaints().count();
        Optional<String> screw = fields.text("screw", LONGEST);
        Optional<Measure> torque = fields.measure("torque", TORQUE);
        String order = fields.text("order", LONGEST).orElse("");
        String source = source(fields);
        if (screw.isEmpty() || torque.isEmpty()) {
            if (fields.complaints().count() == before) {
                fields.complain("missing", "", "", "screw or torque is missing", "write screw: cover, torque: 25 N.m");
            }
        }
        fields.close();
        return fields.complaints().count() == before
                ? Optional.of(new DrivePapers.Torque(
                        screw.orElseThrow(), torque.orElseThrow().value(), order, source))
                : Optional.empty();
    }

    private static String source(Fields fields) {
        Optional<String> source = fields.text("source", LONGEST);
        if (!fields.has("source")) {
            fields.complain(
                    "missing",
                    "source",
                    "",
                    "it is not said where this is written",
                    "name the manual and page, or write invented");
        }
        return source.orElse("");
    }

    private static OptionalDouble number(Optional<Measure> measure) {
        return measure.map(found -> OptionalDouble.of(found.value())).orElse(OptionalDouble.empty());
    }
}
