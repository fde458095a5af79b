package swashlight.files.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import swashlight.drive.description.Parameter;
import swashlight.drive.description.Parameters;
import swashlight.files.demo.DemoShelf;
import swashlight.files.document.FileComplaint;
import swashlight.files.document.InputFault;
import swashlight.files.document.Source;
import swashlight.files.document.Syntax;
import swashlight.files.document.TreeText;
import swashlight.files.drive.DriveFile;
import swashlight.files.drive.DriveFiles;
import swashlight.files.machine.CaseFile;
import swashlight.files.machine.CaseFiles;
import swashlight.files.machine.DutyFiles;
import swashlight.files.schema.Schemas;
import swashlight.files.unit.UnitSystem;
import swashlight.files.wear.TeardownFiles;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * Law: whatever stands in a file, a reader either reads it or throws an {@link InputFault} that says what, where and what would be right.
 * A hundred thousand spoilt files in both syntaxes; what is read must be written and read back the same, and its schema must accept it.
 */
@Timeout(300) // against a hang only: a run takes some twenty seconds
final class ReadersFuzzTest {
    private static final long SEED = 20261125;
    private static final Pattern INSIDE =
            Pattern.compile("Exception|\\bjava\\.|jackson|snakeyaml|\\bat swashlight|\\{[a-z]*\\}$");
    private static final ObjectMapper YAML = new YAMLMapper();

    @Test
    void drives() {
        List<String> texts = with(
                past("drive.yaml"),
                DemoShelf.drives().stream().map(name -> DemoShelf.drive(name).text()));
        Set<String> keys = run("drive", texts, 40_000, DriveFiles::open, ReadersFuzzTest::backAgain);
        assertThat(keys).contains("out-of-range", "radii-order", "torque-curve", "whole-number", "level-lacks");
    }

    @Test
    void cases() {
        List<String> texts = with(
                past("case.yaml"),
                DemoShelf.cases().stream()
                        .map(name -> DemoShelf.machineCase(name).text()));
        Set<String> keys = run("case", texts, 40_000, CaseFiles::open, ReadersFuzzTest::backAgain);
        assertThat(keys).contains("out-of-range", "two-kinds", "no-kind", "contradiction", "unknown-part");
    }

    @Test
    void duties() {
        List<String> texts = List.of(
                past("duty.yaml"),
                "inputSpeed: 3000 rpm\nwheels: lifted\n",
                "engine: off\npushedSpeed: 0.5 m/s\nbypass: 1\n");
        Set<String> keys = run("duty", texts, 20_000, DutyFiles::open, duty -> {});
        assertThat(keys).contains("out-of-range", "contradiction");
    }

    @Test
    void dutiesOverTime() {
        List<String> texts = List.of(
                past("duty.yaml"),
                "stroke: 0 %\nbegins: atRest\nlasts: 2 s\nambient: 20 °C\nover:\n  - {at: 0.2 s, stroke: 0 %}\n"
                        + "  - {at: 0.7 s, stroke: 100 %, slope: 10 %}\n  - {at: 0.7 s, pull: 20 N, throttle: 0.5}\n",
                "engine: off\nbypass: 1\nover:\n  - {at: 0 s, pushedSpeed: 0 m/s}\n  - {at: 2 s, pushedSpeed: 3 km/h}\n");
        Set<String> keys = run("duty", texts, 20_000, DutyFiles::plan, plan -> {});
        assertThat(keys).contains("out-of-range", "contradiction", "times-fall", "missing", "says-nothing");
    }

    @Test
    void teardowns() {
        List<String> texts = List.of(
                DemoShelf.teardown("rider-opened").text(),
                "drive: demo:small-loader\nrequired: [{pull: 5 kN}, {roll: 4 cm/s, slope: -6 deg}]\n"
                        + "measured:\n  - {part: pump-spring, shows: 30 mm, new: 31 mm}\n"
                        + "  - {part: make-up-valve-a, shows: 20 mL/min, testPressure: 2 bar, error: 10 %}\n");
        Set<String> keys = run("teardown", texts, 20_000, TeardownFiles::open, teardown -> {});
        assertThat(keys).contains("out-of-range", "unknown-part", "missing", "no-kind");
    }

    private static String past(String name) {
        return Source.read(Path.of("src", "test", "resources", "past", "format-1", name))
                .text();
    }

    private static List<String> with(String first, Stream<String> others) {
        return Stream.concat(Stream.of(first), others).toList();
    }

    /** Keys of all complaints; at least one spoilt file in fifty must still be read, or the law was not tried. */
    private static <T> Set<String> run(
            String kind, List<String> texts, int inputs, Function<Source, T> reader, Consumer<T> law) {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Schemas.of(kind));
        Mutator mutator = new Mutator(SEED + kind.hashCode(), keys());
        List<Map<String, Object>> trees =
                texts.stream().map(ReadersFuzzTest::tree).toList();
        List<String> json =
                trees.stream().map(tree -> TreeText.of(tree, Syntax.JSON)).toList();
        Set<String> keys = new HashSet<>();
        int read = 0;
        for (int i = 0; i < inputs; i++) {
            int which = i % texts.size();
            Syntax syntax = i % 2 == 0 ? Syntax.YAML : Syntax.JSON;
            byte[] bytes = i % 4 < 2
                    ? mutator.bytes((syntax == Syntax.YAML ? texts : json).get(which))
                    : mutator.tree(trees.get(which), syntax);
            String file = kind + (syntax == Syntax.YAML ? ".yaml" : ".json");
            T value;
            try {
                value = reader.apply(Source.of(file, bytes));
            } catch (InputFault fault) {
                check(fault, bytes);
                fault.complaints().forEach(complaint -> keys.add(complaint.key()));
                continue;
            } catch (RuntimeException | Error bug) {
                throw new AssertionError(
                        "input " + i + " of " + kind + ":\n" + new String(bytes, StandardCharsets.UTF_8), bug);
            }
            read++;
            if (read % 40 == 0) {
                law.accept(value);
                InputFormat format = syntax == Syntax.YAML ? InputFormat.YAML : InputFormat.JSON;
                String text = new String(bytes, StandardCharsets.UTF_8);
                assertThat(schema.validate(text, format)).as(text).isEmpty();
            }
        }
        assertThat(read).isGreaterThan(inputs / 50);
        String page = Source.read(Path.of("..", "docs", "formats.md")).text();
        assertThat(keys).allSatisfy(key -> assertThat(page).contains("`" + key + "`"));
        return keys;
    }

    private static void check(InputFault fault, byte[] bytes) {
        assertThat(fault.complaints()).isNotEmpty().hasSizeLessThanOrEqualTo(200);
        int lines = (int) new String(bytes, StandardCharsets.UTF_8)
                        .chars()
                        .filter(c -> c == '\n' || c == '\r' || c == 0x85 || c == 0x2028 || c == 0x2029)
                        .count()
                + 1;
        for (FileComplaint complaint : fault.complaints()) {
            boolean whole = !complaint.key().isBlank()
                    && !complaint.wrong().isBlank()
                    && !complaint.right().isBlank()
                    && complaint.line() >= 1
                    && complaint.line() <= lines
                    && complaint.column() >= 1
                    && !INSIDE.matcher(complaint.wrong() + complaint.right()).find();
            if (!whole) {
                throw new AssertionError(
                        complaint + " is no good complaint on\n" + new String(bytes, StandardCharsets.UTF_8));
            }
        }
    }

    private static void backAgain(DriveFile file) {
        for (Syntax syntax : Syntax.values()) {
            String text = DriveFiles.write(file, syntax, UnitSystem.US);
            assertThat(DriveFiles.open(Source.of("back." + syntax.name(), text)))
                    .isEqualTo(file);
        }
    }

    private static void backAgain(CaseFile file) {
        for (Syntax syntax : Syntax.values()) {
            String text = CaseFiles.write(file, syntax, UnitSystem.SI);
            assertThat(CaseFiles.open(Source.of("back." + syntax.name(), text))).isEqualTo(file);
        }
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> tree(String text) {
        return YAML.readValue(text, Map.class);
    }

    private static List<String> keys() {
        List<String> keys =
                new ArrayList<>(Parameters.all().stream().map(Parameter::term).toList());
        keys.addAll(List.of(
                "oil", "pump", "engine", "grade", "value", "spread", "origin", "note", "name", "format", "kind"));
        keys.addAll(List.of(
                "runTime", "slope", "error", "part", "usual", "readings", "drive", "seen", "direction", "lifted"));
        return keys;
    }
}
