package swashlight.files.wear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swashlight.files.document.FileComplaint;
import swashlight.files.document.InputFault;
import swashlight.files.document.Source;
import swashlight.findings.wear.DrivePapers;
import swashlight.findings.wear.Measured;
import swashlight.findings.wear.Requirement;

/** Teardowns and papers in files. */
final class TeardownFilesTest {
    @TempDir
    Path folder;

    private static final String HEAD = "kind: teardown\ndrive: demo:light-rider\n";

    private static TeardownFile open(String text) {
        return TeardownFiles.open(Source.of("mine.yaml", HEAD + text));
    }

    private static List<FileComplaint> complaints(String text) {
        InputFault fault = catchThrowableOfType(InputFault.class, () -> open(text));
        assertThat(fault).isNotNull();
        return fault.complaints();
    }

    private static Measured part(TeardownFile file, String key) {
        return file.measured().stream()
                .filter(each -> each.part().key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /** The demo by hand: the mean of five bores, a spring against its papers' length, a stated form. */
    @Test
    void theDemoIsRead() {
        TeardownFile demo = TeardownFiles.demo("rider-opened");
        assertThat(demo.invented()).isTrue();
        assertThat(demo.drive().invented()).isTrue();
        assertThat(demo.required()).hasSize(2);
        assertThat(part(demo, "pump-piston-play").value()).isCloseTo(46e-6, within(1e-12));
        assertThat(part(demo, "pump-piston-play").readings()).isEqualTo(5);
        assertThat(part(demo, "pump-spring").value()).isCloseTo(0.6e-3, within(1e-12));
        Measured score = part(demo, "motor-face-score");
        assertThat(score.form()).isEqualTo(0.95);
        assertThat(score.formSpread()).isEqualTo(0.03);
        assertThat(score.gauge().error()).isCloseTo(6e-6, within(1e-12));
        assertThat(score.width()).hasValue(3e-3);
        assertThat(demo.papers().torques())
                .extracting(DrivePapers.Torque::torque)
                .containsExactly(48.0, 14.0);
        assertThat(demo.papers().torques()).allMatch(torque -> torque.source().equals("invented"));
    }

    /** The example of docs/teardown.md. */
    @Test
    void theExampleOfThePageIsRead() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "teardown.md"));
        int begin = page.indexOf("```yaml\n") + 8;
        TeardownFile file =
                TeardownFiles.open(Source.of("teardown.yaml", page.substring(begin, page.indexOf("```", begin))));
        assertThat(file.measured()).hasSize(4);
        assertThat(file.required()).hasSize(3);
        assertThat(file.papers().torques()).hasSize(1);
    }

    /** A seat test at four bar shows twice the flow of one at a bar (√), but for smoothing near 20 kPa. */
    @Test
    void aSeatTestIsBroughtToABar() {
        String test = "measured: [{part: make-up-valve-a, shows: 20 mL/min, error: 2 mL/min, testPressure: %s}]\n";
        Measured one = part(open(String.format(test, "1 bar")), "make-up-valve-a");
        Measured four = part(open(String.format(test, "4 bar")), "make-up-valve-a");
        assertThat(four.value() / one.value()).isCloseTo(0.5, within(0.01));
        assertThat(four.scatter() / one.scatter()).isCloseTo(0.5, within(0.01));
    }

    @Test
    void requirementsAreRead() {
        List<Requirement> required =
                open("required: [{share: 90 %, slope: 10 %}, {pull: 900 N}, {roll: 3 cm/s, slope: -6 deg}]\n"
                                + "measured: [{part: pump-flatness, shows: 5 µm}]\n")
                        .required();
        assertThat(required)
                .extracting(Requirement::kind)
                .containsExactly(Requirement.Kind.SPEED, Requirement.Kind.PULL, Requirement.Kind.ROLL);
        assertThat(required.get(0).slope()).isCloseTo(Math.atan(0.1), within(1e-12));
        assertThat(required.get(2).bound()).isCloseTo(0.03, within(1e-12));
        assertThat(required.get(0).oilTemperature()).isCloseTo(353.15, within(1e-9));
    }

    @Test
    void faultsNameFileLineFieldAndWhatWouldBeRight() {
        List<FileComplaint> all = complaints("required:\n  - {share: 85 %, pull: 9 N}\n  - {slope: 8 deg}\n"
                + "measured:\n  - {part: pump-pistonplay, shows: 46 µm}\n  - {part: motor-flatness, shows: 46 mm}\n"
                + "  - {part: motor-spring, shows: 30 mm}\n  - {shows: 3 µm}\n");
        assertThat(all)
                .extracting(FileComplaint::key)
                .containsExactlyInAnyOrder(
                        "two-kinds", "no-kind", "unknown-part", "out-of-range", "missing", "missing");
        FileComplaint unknown = all.stream()
                .filter(each -> each.key().equals("unknown-part"))
                .findFirst()
                .orElseThrow();
        assertThat(unknown.file()).isEqualTo("mine.yaml");
        assertThat(unknown.line()).isEqualTo(7);
        assertThat(unknown.field()).isEqualTo("measured[1].part");
        assertThat(unknown.right()).contains("pump-piston-play");
    }

    @Test
    void aPartMeasuredTwiceWithDifferentGaugesIsRefused() {
        assertThat(complaints("measured:\n  - {part: motor-flatness, shows: 6 µm, error: 2 µm}\n"
                        + "  - {part: motor-flatness, shows: 9 µm, error: 5 µm}\n"))
                .extracting(FileComplaint::key)
                .containsExactly("contradiction");
        assertThat(complaints("about: nothing\n"))
                .extracting(FileComplaint::key)
                .containsExactly("nothing-measured");
    }

    /** Papers without a source are no papers; they may stand in a file of their own. */
    @Test
    void papersNameTheirSource() throws IOException {
        Files.writeString(
                folder.resolve("papers.yaml"),
                "kind: papers\nparts:\n  motor-flatness: {most: 8 µm, source: page 7}\n");
        Files.writeString(
                folder.resolve("t.yaml"),
                HEAD + "papers: papers.yaml\nmeasured: [{part: motor-flatness, shows: 5 µm}]\n");
        TeardownFile file = TeardownFiles.open(Source.read(folder.resolve("t.yaml")));
        assertThat(file.papers().of(file.measured().get(0).part()).statedLimit())
                .hasValue(8e-6);
        assertThat(
                        complaints(
                                "papers: {parts: {motor-flatness: {most: 8 µm}}}\nmeasured: [{part: motor-flatness, shows: 5 µm}]\n"))
                .extracting(FileComplaint::field)
                .containsExactly("papers.parts.motor-flatness.source");
    }

    /** Dimensions among the readings of a case: radial clearances are half the play. */
    @Test
    void aCaseWithDimensionsIsATeardownToo() {
        String text = "kind: case\ndrive: demo:light-rider\nreadings:\n  - {runTime: 9.8 s, distance: 20 m}\n"
                + "  - {partDimension: 24 µm, part: pump.boreClearance, error: 2 µm}\n"
                + "  - {partDimension: 90 µm, part: motor.caseScoreDepth, error: 5 µm}\n";
        TeardownFile file = TeardownFiles.open(Source.of("case.yaml", text));
        assertThat(file.measured()).hasSize(2);
        assertThat(part(file, "pump-piston-play").value()).isCloseTo(48e-6, within(1e-12));
        assertThat(part(file, "pump-piston-play").scatter()).isCloseTo(4e-6, within(1e-12));
        assertThat(part(file, "motor-face-score").formSpread()).isZero();
        InputFault fault = catchThrowableOfType(
                InputFault.class,
                () -> TeardownFiles.open(Source.of("case.yaml", "kind: case\ndrive: demo:light-rider\n")));
        assertThat(fault.complaints()).extracting(FileComplaint::key).containsExactly("nothing-measured");
    }
}
