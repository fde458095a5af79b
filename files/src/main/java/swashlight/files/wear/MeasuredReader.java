package swashlight.files.wear;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import swashlight.drive.description.Dimension;
import swashlight.drive.gap.Orifice;
import swashlight.files.document.Fields;
import swashlight.files.document.Measure;
import swashlight.files.document.Node;
import swashlight.files.document.Range;
import swashlight.files.unit.Nearest;
import swashlight.findings.wear.DrivePapers;
import swashlight.findings.wear.Gauge;
import swashlight.findings.wear.Measured;
import swashlight.findings.wear.WearKind;
import swashlight.findings.wear.WearPart;

/** Reads what the gauges showed. What is left out is usual for the kind; a part measured twice is averaged. */
final class MeasuredReader {
    static final Range WIDTH = Range.of(Dimension.LENGTH, 1e-5, 0.02);
    private static final Range WEAR = Range.of(Dimension.LENGTH, 0, 2e-3);
    private static final Range SPRING = Range.of(Dimension.LENGTH, 2e-3, 0.3);
    private static final Range FLOW = Range.of(Dimension.FLOW, 0, 1e-3);
    private static final Range BIAS_LENGTH = Range.of(Dimension.LENGTH, -1e-3, 1e-3);
    private static final Range BIAS_FLOW = Range.of(Dimension.FLOW, -1e-4, 1e-4);
    private static final Range READINGS = Range.of(Dimension.NUMBER, 1, 1000);
    private static final Range FORM = Range.of(Dimension.NUMBER, 0.05, 10);
    private static final Range PRESSURE = Range.of(Dimension.PRESSURE, 1e3, 2e7);
    private static final Range DENSITY = Range.of(Dimension.DENSITY, 600, 1200);
    private static final int LONGEST_NOTE = 2000; // characters

    private final Fields root;
    private final DrivePapers papers;

    MeasuredReader(Fields root, DrivePapers papers) {
        this.root = root;
        this.papers = papers;
    }

    List<Measured> list() {
        Map<WearPart, List<Measured>> all = new LinkedHashMap<>();
        int place = 0;
        int before = root.complaints().count();
        for (Node item : root.items("measured")) {
            place++;
            String path = "measured[" + place + "]";
            if (!(item instanceof Node.Branch branch)) {
                root.complaints()
                        .add(
                                "not-keys",
                                item.spot(),
                                path,
                                item.words(),
                                "a measured part consists of keys with values",
                                "write for example part: pump-piston-play, and shows: 46 µm");
                continue;
            }
            Fields fields = new Fields(branch, path, root.complaints());
            one(fields).ifPresent(measured -> {
                List<Measured> same = all.computeIfAbsent(measured.part(), part -> new ArrayList<>());
                if (!same.isEmpty() && !alike(same.get(0), measured)) {
                    fields.complain(
                            "contradiction",
                            "part",
                            measured.part().key(),
                            "this part was measured before with another gauge, width or form",
                            "state error, bias, width and form alike, or keep the better reading alone");
                }
                same.add(measured);
            });
        }
        if (all.isEmpty() && root.complaints().count() == before) {
            root.complain(
                    "nothing-measured",
                    "measured",
                    "",
                    "no part was measured",
                    "list parts below measured: part, and what the gauge shows");
        }
        return all.values().stream().map(Measured::mean).toList();
    }

    private static boolean alike(Measured one, Measured other) {
        return one.gauge().equals(other.gauge())
                && one.width().equals(other.width())
                && one.form() == other.form()
                && one.formSpread() == other.formSpread();
    }

    private Optional<Measured> one(Fields fields) {
        int before = fields.complaints().count();
        Optional<WearPart> part = part(fields);
        fields.text("note", LONGEST_NOTE);
        if (part.isEmpty()) {
            return Optional.empty();
        }
        WearKind kind = part.get().kind();
        Range range = kind == WearKind.SPRING ? SPRING : kind.dimension() == Dimension.FLOW ? FLOW : WEAR;
        Optional<Measure> shows = fields.measure("shows", range);
        if (!fields.has("shows")) {
            fields.complain(
                    "missing", "shows", "", "what the gauge shows is missing", "write shows: 46 µm, for example");
        }
        Gauge gauge = gauge(fields, part.get(), shows, range);
        int readings = (int) Math.rint(
                fields.measure("readings", READINGS).map(Measure::value).orElse(1.0));
        OptionalDouble width = width(fields, kind);
        Optional<Measure> form = kind == WearKind.SPRING ? Optional.empty() : fields.measure("form", FORM);
        double test = kind == WearKind.SEAT_LEAK ? seatTest(fields) : 1;
        double worn = kind == WearKind.SPRING ? shortening(fields, part.get(), shows) : 0;
        fields.close();
        if (fields.complaints().count() != before) {
            return Optional.empty();
        }
        double value =
                kind == WearKind.SPRING ? worn : test * shows.orElseThrow().value();
        Gauge scaled = new Gauge(
                gauge.key(), test * gauge.error(), gauge.share(), test * gauge.bias(), test * gauge.biasSpread());
        return Optional.of(new Measured(
                part.get(),
                value,
                scaled,
                readings,
                width,
                form.map(Measure::value).orElse(kind.form()),
                form.map(found -> found.spread().orElse(0)).orElse(kind.formSpread())));
    }

    private static Optional<WearPart> part(Fields fields) {
        Optional<String> key = fields.text("part", 100);
        if (key.isEmpty()) {
            fields.complain(
                    "missing", "part", "", "it is not said which part", "add part: pump-piston-play, for example");
            return Optional.empty();
        }
        Optional<WearPart> part = WearPart.find(key.get());
        if (part.isEmpty()) {
            List<String> known = WearPart.all().stream().map(WearPart::key).toList();
            fields.complain(
                    "unknown-part",
                    "part",
                    key.get(),
                    "there is no such part",
                    Nearest.to(key.get(), known)
                            .map(near -> "did you mean " + near + "?")
                            .orElse("known here: " + String.join(", ", known)));
        }
        return part;
    }

    /** A spring's bias counts the other way round: a caliper that shows too much shows too little shortening. */
    private static Gauge gauge(Fields fields, WearPart part, Optional<Measure> shows, Range range) {
        Gauge usual = part.kind().gauge();
        OptionalDouble error = shows.isPresent() ? fields.spread("error", range, shows.get()) : OptionalDouble.empty();
        fields.node("error");
        if (error.isEmpty()) {
            error = shows.map(Measure::spread).orElse(OptionalDouble.empty());
        }
        Optional<Measure> bias =
                fields.measure("bias", part.kind().dimension() == Dimension.FLOW ? BIAS_FLOW : BIAS_LENGTH);
        double sign = part.kind() == WearKind.SPRING ? -1 : 1;
        return new Gauge(
                fields.text("gauge", 100).orElse(bias.isPresent() ? part.key() : usual.key()),
                error.orElse(usual.error()),
                error.isPresent() ? 0 : usual.share(),
                bias.map(found -> sign * found.value()).orElse(usual.bias()),
                bias.map(found -> found.spread().orElse(0)).orElse(usual.biasSpread()));
    }

    private static OptionalDouble width(Fields fields, WearKind kind) {
        return kind.isScore()
                ? fields.measure("width", WIDTH)
                        .map(found -> OptionalDouble.of(found.value()))
                        .orElse(OptionalDouble.empty())
                : OptionalDouble.empty();
    }

    /** What a flow at the stated test would be at a bar with kerosene, over the flow shown, 1. */
    private static double seatTest(Fields fields) {
        double pressure =
                fields.measure("testPressure", PRESSURE).map(Measure::value).orElse(WearPart.TEST_PRESSURE);
        double density =
                fields.measure("testDensity", DENSITY).map(Measure::value).orElse(WearPart.TEST_DENSITY);
        return WearPart.seatFlow(1) / Orifice.flow(1, pressure, density);
    }

    private double shortening(Fields fields, WearPart part, Optional<Measure> shows) {
        Optional<Measure> fresh = fields.measure("new", SPRING);
        OptionalDouble length = fresh.isPresent()
                ? OptionalDouble.of(fresh.get().value())
                : papers.of(part).freshLength();
        if (length.isEmpty() && !fields.has("new")) {
            fields.complain(
                    "missing",
                    "new",
                    "",
                    "the free length of a new spring is not known",
                    "measure a new one (new: 31.3 mm), or state freshLength among the papers");
        }
        return shows.isPresent() && length.isPresent()
                ? length.getAsDouble() - shows.get().value()
                : 0;
    }
}
