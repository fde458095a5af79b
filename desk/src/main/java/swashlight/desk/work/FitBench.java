package swashlight.desk.work;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import swashlight.drive.description.DriveDescription;
import swashlight.drive.oil.Oil;
import swashlight.drive.steady.SteadySolver;
import swashlight.files.bench.BenchTableFile;
import swashlight.files.bench.DrainPointsFile;
import swashlight.files.bench.PlateausFile;
import swashlight.findings.drain.DeliveryFit;
import swashlight.findings.drain.DrainAssumptions;
import swashlight.findings.drain.DrainFit;
import swashlight.findings.drain.DrainPoint;
import swashlight.findings.losses.BenchRun;
import swashlight.findings.losses.LossFit;
import swashlight.findings.rig.HealthyFit;
import swashlight.findings.rig.LeakRule;
import swashlight.findings.rig.Plateau;
import swashlight.findings.rig.RigAssumptions;
import swashlight.findings.rig.RigFinding;

/** Fits a table: finds out which kind it is, reads it, asks the right fit. */
final class FitBench {
    static final List<String> KINDS = List.of("pump", "motor", "drain", "rig");

    private static final String DEMO = "/swashlight/files/demo/bench-pump.csv";
    private static final String DEMO_NAME = "invented demo table";

    private final Inspection inspection;

    FitBench(Inspection inspection) {
        this.inspection = inspection;
    }

    Outcome fit(Optional<Stated> file, Optional<Stated> kind, Optional<Stated> healthy, DriveDescription drive) {
        Optional<String> asked = kind.flatMap(text -> inspection.oneOf(text, KINDS));
        file.ifPresent(this::exists);
        healthy.ifPresent(this::exists);
        inspection.close();
        String chosen = asked.orElseGet(
                () -> file.map(text -> guessed(Path.of(text.text()))).orElse("pump"));
        String name =
                file.map(text -> Path.of(text.text()).getFileName().toString()).orElse(DEMO_NAME);
        Optional<Path> path = file.map(text -> Path.of(text.text()));
        try {
            return inspection.filed(() -> switch (chosen) {
                case "drain" -> drain(name, needed(path));
                case "rig" -> rig(name, needed(path), healthy.map(text -> Path.of(text.text())));
                default -> losses(name, path, chosen, SteadySolver.oilOf(drive.vector()));
            });
        } catch (IllegalArgumentException few) {
            inspection.refuse(
                    "too-little",
                    new Stated(name, ""),
                    few.getMessage(),
                    "more rows, or --as with another kind of table: " + String.join(", ", KINDS));
            inspection.close();
            throw few;
        }
    }

    private void exists(Stated file) {
        if (!Files.isRegularFile(Path.of(file.text()))) {
            inspection.refuse("no-file", file, "no such file", "the path of a CSV table");
        }
    }

    private Path needed(Optional<Path> path) {
        if (path.isEmpty()) {
            inspection.refuse("no-file", new Stated("fit", ""), "no table given", "the path of a CSV table");
            inspection.close();
        }
        return path.orElseThrow();
    }

    /** The kind of a table by its heading. */
    private static String guessed(Path file) {
        try (var lines = Files.lines(file)) {
            String heading = lines.findFirst().orElse("");
            return heading.contains("q_leak") ? "drain" : heading.contains("PS1_bar") ? "rig" : "pump";
        } catch (IOException | UncheckedIOException unreadable) {
            return "pump"; // its reader will say what is wrong
        }
    }

    private static Outcome drain(String name, Path file) {
        List<DrainPoint> points = DrainPointsFile.read(file).turning();
        DrainAssumptions assumed = DrainAssumptions.usual();
        int run = points.isEmpty() ? 0 : points.get(0).run();
        return FitReport.drain(name, DrainFit.of(points, assumed), DeliveryFit.of(points, run, assumed));
    }

    private static Outcome rig(String name, Path file, Optional<Path> healthy) {
        List<Plateau> asked = PlateausFile.read(file);
        List<Plateau> known = healthy.map(PlateausFile::read).orElse(asked).stream()
                .filter(plateau ->
                        plateau.labels().map(labels -> labels.leakClass() == 0).orElse(true))
                .toList();
        List<Plateau> settled = asked.stream()
                .filter(plateau ->
                        plateau.labels().map(labels -> !labels.unstable()).orElse(true))
                .toList();
        return FitReport.rig(
                name, RigFinding.of(HealthyFit.of(known, RigAssumptions.usual()), settled, LeakRule.usual()));
    }

    private static Outcome losses(String name, Optional<Path> file, String kind, Oil oil) {
        BenchRun.Kind unit = kind.equals("motor") ? BenchRun.Kind.MOTOR : BenchRun.Kind.PUMP;
        BenchRun run = file.map(path -> BenchTableFile.read(path, unit, oil)).orElseGet(() -> demo(unit, oil));
        return FitReport.losses(name, LossFit.of(run));
    }

    private static BenchRun demo(BenchRun.Kind unit, Oil oil) {
        try (InputStream in = FitBench.class.getResourceAsStream(DEMO);
                Reader text = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            return BenchTableFile.read("demo-bench-pump.csv", text, unit, oil);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
