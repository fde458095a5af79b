package swashlight.files.schema;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import swashlight.files.demo.DemoShelf;
import swashlight.files.document.Source;
import swashlight.files.document.Syntax;
import swashlight.files.drive.DriveFile;
import swashlight.files.drive.DriveFiles;
import swashlight.files.prices.PricesFiles;
import swashlight.files.unit.UnitSystem;
import swashlight.findings.cost.Job;
import swashlight.findings.cost.Prices;

/** The published schemas, held against the files that come along with networknt's validator. */
final class SchemasTest {
    private static final Path PUBLISHED = Path.of("..", "docs", "schema");

    static Stream<String> kinds() {
        return Schemas.kinds().stream();
    }

    private static Source past(String name) {
        return Source.read(Path.of("src", "test", "resources", "past", "format-1", name));
    }

    static Stream<Source> drives() {
        return Stream.concat(Stream.of(past("drive.yaml"), past("drive.json")), demoDrives());
    }

    private static Stream<Source> demoDrives() {
        return DemoShelf.drives().stream().map(DemoShelf::drive);
    }

    static Stream<Source> cases() {
        return Stream.concat(
                Stream.of(past("case.yaml")), DemoShelf.cases().stream().map(DemoShelf::machineCase));
    }

    /** To publish anew: {@code mvn -pl files -am test -Dtest=SchemasTest -Dschema.publish=true}. */
    @ParameterizedTest
    @MethodSource("kinds")
    void thePublishedSchemaIsNotStale(String kind) throws IOException {
        Path file = PUBLISHED.resolve(kind + ".json");
        if (Boolean.getBoolean("schema.publish")) {
            Files.createDirectories(PUBLISHED);
            Files.writeString(file, Schemas.of(kind));
        }
        assertThat(file).as("publish it anew: -Dschema.publish=true").content().isEqualTo(Schemas.of(kind));
    }

    /** Each schema is itself one: the meta-schema of JSON Schema 2020-12 says so. */
    @ParameterizedTest
    @MethodSource("kinds")
    void everySchemaIsASchema(String kind) {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(Schemas.of(kind), InputFormat.JSON)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("drives")
    void drivesKeepToIt(Source drive) {
        assertThat(errors("drive", drive.text(), InputFormat.YAML)) // JSON is YAML too
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("drives")
    void writtenDrivesKeepToIt(Source drive) {
        DriveFile file = DriveFiles.open(drive);
        for (UnitSystem system : UnitSystem.values()) {
            assertThat(errors("drive", DriveFiles.write(file, Syntax.JSON, system), InputFormat.JSON))
                    .isEmpty();
            assertThat(errors("drive", DriveFiles.write(file, Syntax.YAML, system), InputFormat.YAML))
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void casesKeepToIt(Source machineCase) {
        assertThat(errors("case", machineCase.text(), InputFormat.YAML)).isEmpty();
    }

    static Stream<Source> teardowns() {
        return DemoShelf.teardowns().stream().map(DemoShelf::teardown);
    }

    @ParameterizedTest
    @MethodSource("teardowns")
    void teardownsKeepToIt(Source teardown) {
        assertThat(errors("teardown", teardown.text(), InputFormat.YAML)).isEmpty();
    }

    static Stream<Source> prices() {
        return DemoShelf.prices().stream().map(DemoShelf::prices);
    }

    @ParameterizedTest
    @MethodSource("prices")
    void pricesKeepToItAndSayThatTheyAreInvented(Source prices) {
        assertThat(errors("prices", prices.text(), InputFormat.YAML)).isEmpty();
        assertThat(prices.text()).contains("invented: true");
        assertThat(PricesFiles.open(prices).currency()).isEqualTo("EUR");
        assertThat(PricesFiles.about(prices)).contains("invented");
    }

    @Test
    void papersKeepToIt() {
        String papers = "kind: papers\nparts:\n  motor-flatness: {most: 8 µm, mayBeLapped: true, source: page 7}\n"
                + "torques: [{screw: cover, torque: 25 N.m, source: page 9}]\n";
        assertThat(errors("papers", papers, InputFormat.YAML)).isEmpty();
        assertThat(errors("papers", papers.replace(", source: page 9", ""), InputFormat.YAML))
                .isNotEmpty();
    }

    @Test
    void aDutyKeepsToIt() {
        assertThat(errors("duty", past("duty.yaml").text(), InputFormat.YAML)).isEmpty();
        String other = "inputSpeed: 3000 rpm\nstroke: 0.5\noilTemperature: 20 ± 2 °C\nwheels: lifted\n";
        assertThat(errors("duty", other, InputFormat.YAML)).isEmpty();
        String course =
                "begins: atRest\nlasts: 2 s\nover: [{at: 0 s, stroke: 0.5, pull: 20 N}, {at: 1 s, stroke: 5 %}]\n";
        assertThat(errors("duty", course, InputFormat.YAML)).isEmpty();
    }

    /** The example of docs/next.md is read and keeps to its schema. */
    @Test
    void pricesKeepToIt() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "next.md"));
        int begin = page.indexOf("```yaml\n") + 8;
        String text = page.substring(begin, page.indexOf("```", begin));
        assertThat(errors("prices", text, InputFormat.YAML)).isEmpty();
        Prices prices = PricesFiles.open(Source.of("next.yaml", text));
        assertThat(prices.currency()).isEqualTo("EUR");
        assertThat(prices.of(Job.RENEW_BELT)).isCloseTo(55 + 92 * 40 / 60.0, within(1e-9)); // by hand
        assertThat(prices.core().refused()).isEqualTo(0.1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    drive | pump: {displacement: 7.1}
                    drive | pump: {displacement: 71}
                    drive | pump: {displacment: 7.1 cm3/rev}
                    drive | pump: {displacement: {spread: 7.1 cm3/rev}}
                    drive | oil: {grade: SAE 99}
                    drive | level: high
                    drive | format: 2
                    case  | name: without a drive
                    case  | {drive: demo:light-rider, seen: [oilPink]}
                    case  | {drive: demo:light-rider, readings: [{runTime: 9 s, axleSpeed: 70 rpm, inputSpeed: 3000 rpm}]}
                    case  | {drive: demo:light-rider, readings: [{label: nothing}]}
                    prices | labor: 90
                    prices | jobs: {renew-belts: {parts: 40}}
                    duty  | wheels: round
                    duty  | over: [{stroke: 50 %}]
                    duty  | over: [{at: 1 s, oilTemperature: 50 °C}]
                    """)
    void slipsAreMarked(String kind, String yaml) {
        assertThat(errors(kind, yaml, InputFormat.YAML)).isNotEmpty();
    }

    private static List<Error> errors(String kind, String text, InputFormat format) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Schemas.of(kind))
                .validate(text, format);
    }
}
