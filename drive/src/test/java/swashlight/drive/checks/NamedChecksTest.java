package swashlight.drive.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import swashlight.checks.CheckBook;
import swashlight.checks.CheckRow;

/** Law: a check that a class names in its Javadoc is in the books, as a family of rows or the beginning of its name. */
final class NamedChecksTest {
    private static final Pattern CHECKS = Pattern.compile("[Cc]heck:?\\s((?:[\\s,]*\\{@code\\s+[a-z0-9-*]+\\})+)");
    private static final Pattern NAME = Pattern.compile("\\{@code\\s+([a-z0-9-*]+)\\}");

    @Test
    void everyCheckNamedInTheDriveIsInTheBooks() throws IOException {
        Set<String> families = CheckBook.themes().stream()
                .flatMap(theme -> CheckBook.read(theme).rows().stream())
                .map(CheckRow::family)
                .collect(Collectors.toSet());
        List<String> unknown = new ArrayList<>();
        int found = 0;
        try (Stream<Path> sources = Files.walk(Path.of("src/main/java"))) {
            for (Path source :
                    sources.filter(path -> path.toString().endsWith(".java")).toList()) {
                for (String name : named(Files.readString(source))) {
                    found++;
                    if (families.stream().noneMatch(f -> f.equals(name) || f.startsWith(name + "-"))) {
                        unknown.add(source.getFileName() + ": " + name);
                    }
                }
            }
        }
        assertThat(unknown).as("checks named in Javadoc but in no book").isEmpty();
        assertThat(found).isGreaterThan(40);
    }

    private static List<String> named(String text) {
        List<String> names = new ArrayList<>();
        Matcher checks = CHECKS.matcher(text.replaceAll("\\n\\s*\\*", " "));
        while (checks.find()) {
            Matcher name = NAME.matcher(checks.group(1));
            while (name.find()) {
                names.add(name.group(1));
            }
        }
        return names;
    }
}
