package swashlight.desk.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The command run, as a user runs it: sums, files for other programs, faults, refusals, and being stopped. */
final class RunCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    private Stranger.Told types(String line) {
        return new Stranger(folder).types("swashlight " + line);
    }

    @Test
    void aLaunchIsSummedUp() {
        Stranger.Told told = types("run launch --json");
        assertThat(told.code()).isZero();
        JsonNode report = JSON.readTree(told.out());
        JsonNode speed = report.path("values").path("rows").get(0);
        assertThat(speed.path("mean").path("value").asDouble()).isBetween(1.0, 3.0);
        assertThat(speed.path("greatest").path("value").asDouble())
                .isGreaterThanOrEqualTo(speed.path("mean").path("value").asDouble());
        assertThat(report.path("account").path("oilDrift").path("value").asDouble())
                .isBetween(-1e-9, 1e-9);
        assertThat(report.path("tones").path("orders").path("rows")).hasSize(7);
    }

    /** Every row as long as the heading, every cell a plain number, every name small letters and a unit, no name twice. */
    @Test
    void tracesAndOrdersArePlainColumns() throws IOException {
        assertThat(types("run launch --for 0.3s --traces t.csv --every 2ms --orders o.csv --events e.csv")
                        .code())
                .isZero();
        List<String> events = Files.readAllLines(folder.resolve("e.csv"));
        assertThat(events.get(0)).isEqualTo("time_s,event,begins,lasted_s");
        assertThat(events.subList(1, events.size()))
                .isNotEmpty()
                .allMatch(row -> row.matches("[0-9.E-]+,[a-z_]+,(true|false),[0-9.E-]+"));
        for (String file : List.of("t.csv", "o.csv")) {
            List<String> rows =
                    Arrays.asList(Files.readString(folder.resolve(file)).split("\r\n"));
            List<String> names = List.of(rows.get(0).split(","));
            assertThat(new HashSet<>(names)).hasSameSizeAs(names);
            assertThat(names)
                    .allMatch(name ->
                            name.matches("[a-z][a-z0-9_]*_(s|pa|rad|rad_per_s|m_per_s|nm|n|m3_per_s|k|hz|ratio)"));
            for (String row : rows.subList(1, rows.size())) {
                String[] cells = row.split(",", -1);
                assertThat(cells).hasSameSizeAs(names);
                for (String cell : cells) {
                    assertThat(Double.isFinite(Double.parseDouble(cell))).isTrue();
                }
            }
        }
        List<String> rows = Files.readAllLines(folder.resolve("t.csv"));
        assertThat(rows).hasSize(1 + 151);
        assertThat(Double.parseDouble(rows.get(151).split(",")[0])).isCloseTo(0.3, within(1e-9));
    }

    /** Frames as docs/moving.md says; a piston stands where angle, swash and pitch radius put it. */
    @Test
    void framesSayWhereEveryPistonStands() throws IOException {
        assertThat(types("run reverse --for 0.1s --frames f.json --frame-every 5ms")
                        .code())
                .isZero();
        JsonNode all = JSON.readTree(Files.readString(folder.resolve("f.json")));
        assertThat(all.path("frames")).hasSize(21);
        int pistons = all.path("pump").path("pistons").asInt();
        JsonNode frame = all.path("frames").get(7);
        assertThat(frame.path("pump").path("position_m")).hasSize(pistons);
        double reach = all.path("pump").path("pitch_radius_m").asDouble()
                * Math.tan(frame.path("swash_angle_rad").asDouble());
        for (int k = 0; k < pistons; k++) {
            double phi = frame.path("pump_angle_rad").asDouble() + 2 * Math.PI * k / pistons;
            assertThat(frame.path("pump").path("position_m").get(k).asDouble())
                    .isCloseTo(reach * Math.cos(phi), within(0.01 * reach));
        }
        String page = Files.readString(Path.of("..", "docs", "moving.md"));
        Stream.of(all.propertyNames(), frame.propertyNames(), frame.path("pump").propertyNames())
                .flatMap(names -> names.stream())
                .forEach(name -> assertThat(page).contains("`" + name + "`"));
    }

    @Test
    void aFaultStandsBesideTheSoundDrive() {
        JsonNode sick = JSON.readTree(
                types("run hill --for 1s --fault pump-bad-piston --json").out());
        JsonNode speed = sick.path("values").path("rows").get(0);
        assertThat(speed.path("mean").path("value").asDouble())
                .isLessThan(speed.path("soundMean").path("value").asDouble());
        Stranger.Told unmoved = types("run launch --for 0.2s --fault bypass-stuck");
        assertThat(unmoved.code()).isZero();
        assertThat(unmoved.out()).contains("changes nothing here");
    }

    @Test
    void aDutyFromAFileRuns() throws IOException {
        Files.writeString(
                folder.resolve("bank.yaml"),
                "kind: duty\nname: bank\nstroke: 0 %\nslope: 10 %\nlasts: 0.5 s\n"
                        + "over: [{at: 0.1 s, stroke: 0 %}, {at: 0.3 s, stroke: 60 %}]\n");
        Stranger.Told told = types("run bank.yaml --svg bank.svg --png bank.png");
        assertThat(told.code()).as(told.err()).isZero();
        assertThat(told.out()).contains("bank");
        assertThat(folder.resolve("bank.svg")).isNotEmptyFile();
        assertThat(folder.resolve("bank.png")).isNotEmptyFile();
        assertThat(types("point --duty bank.yaml").code())
                .as("no settled situation")
                .isEqualTo(2);
    }

    @Test
    void slipsAreRefusedAllAtOnce() {
        Stranger.Told told = types("run launch --for 2h --tolerance 1 --oil 60 --traces t.csv --every 1us");
        assertThat(told.code()).isEqualTo(2);
        assertThat(told.err()).contains("--for", "--tolerance", "--oil", "--every");
        assertThat(folder.resolve("t.csv")).doesNotExist();
        assertThat(types("run lunch").code()).isEqualTo(2);
    }

    /** A real program, stopped as a shell does it. */
    @Test
    void ctrlCStopsItAndLeavesNothingHalf() throws IOException, InterruptedException {
        assumeThat(System.getProperty("os.name")).doesNotStartWith("Windows");
        Process running = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "swashlight.desk.line.Swashlight",
                        "run",
                        "launch",
                        "--for",
                        "600s",
                        "--every",
                        "10ms",
                        "--traces",
                        "t.csv",
                        "--svg",
                        "t.svg")
                .directory(folder.toFile())
                .start();
        List<String> said = new ArrayList<>();
        try (BufferedReader err =
                new BufferedReader(new InputStreamReader(running.getErrorStream(), StandardCharsets.UTF_8))) {
            said.add(err.readLine()); // it says that it runs
            new ProcessBuilder("kill", "-INT", String.valueOf(running.pid()))
                    .start()
                    .waitFor();
            err.lines().forEach(said::add);
        }
        assertThat(running.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(running.exitValue()).isEqualTo(130);
        assertThat(said.get(0)).contains("%");
        assertThat(said.get(said.size() - 1)).contains("Nothing was written");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).isEmpty();
        }
    }
}
