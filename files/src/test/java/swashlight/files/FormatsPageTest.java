package swashlight.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import swashlight.files.document.Source;
import swashlight.files.drive.DriveFiles;
import swashlight.files.machine.CaseFiles;
import swashlight.files.machine.Condition;
import swashlight.files.machine.DutyFiles;
import swashlight.findings.reading.Reading;
import swashlight.findings.reading.ReadingKind;

/** docs/formats.md: its examples are read, and what it lists is all there is. */
final class FormatsPageTest {
    private static final Path PAGE = Path.of("..", "docs", "formats.md");
    private static final Pattern EXAMPLE = Pattern.compile("```yaml (\\w+)\n(.*?)```", Pattern.DOTALL);
    private static final Pattern COMPLAINT =
            Pattern.compile("(?:complain|Refused|fault|complaints(?:\\(\\))?\\s*\\.add)\\(\\s*\"([a-z-]+)\"");

    @Test
    void everyExampleIsRead() throws IOException {
        List<String> kinds = new ArrayList<>();
        Matcher example = EXAMPLE.matcher(Files.readString(PAGE));
        while (example.find()) {
            Source source = Source.of("formats.md.yaml", example.group(2));
            switch (example.group(1)) {
                case "drive" ->
                    assertThat(DriveFiles.open(source).drive().name()).isEqualTo("My rider");
                case "case" ->
                    assertThat(CaseFiles.open(source).machineCase().readings()).hasSize(4);
                case "every" ->
                    assertThat(CaseFiles.open(source).machineCase().readings())
                            .extracting(Reading::kind)
                            .contains(ReadingKind.values());
                case "course" ->
                    assertThat(DutyFiles.plan(source).plan().duty().pull().at(1.6))
                            .isEqualTo(150);
                default -> assertThat(DutyFiles.open(source).stroke()).isEqualTo(-0.5);
            }
            kinds.add(example.group(1));
        }
        assertThat(kinds).containsExactly("drive", "case", "every", "duty", "course");
    }

    @Test
    void everyKeyOfAComplaintIsListed() throws IOException {
        String page = Files.readString(PAGE);
        Set<String> keys = new TreeSet<>();
        try (Stream<Path> sources = Files.walk(Path.of("src", "main", "java", "swashlight", "files"))) {
            sources.filter(file -> file.toString().endsWith(".java")
                            && !file.toString().contains("bench"))
                    .forEach(
                            file -> COMPLAINT.matcher(text(file)).results().forEach(found -> keys.add(found.group(1))));
        }
        assertThat(keys)
                .hasSizeGreaterThan(25)
                .allSatisfy(key -> assertThat(page).contains("`" + key + "`"));
    }

    @Test
    void everyKindAndConditionIsListed() throws IOException {
        String page = Files.readString(PAGE);
        for (ReadingKind kind : ReadingKind.values()) {
            assertThat(page).contains("`" + kind.key() + "`");
        }
        for (Condition condition : Condition.values()) {
            assertThat(page).contains("`" + condition.key() + "`");
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
