package swashlight.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every number that physics or findings hand out says its unit where it is declared. */
final class UnitsTest {
    private static final String ADVICE = """
            Right would be one of:
              its own Javadoc with the unit          /** Leakage Q; m³/s. */  or  @return Q, m³/s
              a row in the type's table of symbols   c   radial clearance   m   2e-6 … 60e-6    (the row has the words of the name)
              a line in the type's Javadoc           @param clearance radial clearance, m
              where the unit varies                  "… in its own unit", "… SI unit of its dimension"
            Units known (desk/src/test/java/swashlight/architecture/Units.java; 1 is a unit):
            """;

    @ParameterizedTest
    @ValueSource(strings = {"drive", "findings"})
    void everyPublicNumberSaysItsUnit(String room) throws IOException {
        Path folder = Path.of("..", room, "src", "main", "java");
        List<PublicDouble> numbers = PublicDoubles.of(sources(folder));
        assertThat(numbers).as("public numbers of " + room).isNotEmpty();
        String complaints = numbers.stream()
                .filter(number -> !number.saysItsUnit())
                .map(PublicDouble::complaint)
                .collect(Collectors.joining("\n"));
        assertThat(complaints)
                .as(ADVICE + String.join("  ", Units.KNOWN.stream().sorted().toList()))
                .isEmpty();
    }

    @Test
    void aNumberWithoutUnitIsFound() throws IOException {
        assertThat(silentOnes("public record Gap(double width) {}")).containsExactly("width");
        assertThat(silentOnes("public interface Law { double flow(); }")).containsExactly("flow");
        assertThat(silentOnes("/** Law. */ public class Law { /** The flow. */ public double flow() { return 0; } }"))
                .containsExactly("flow");
        assertThat(silentOnes("public class Law { public static final double LIMIT = 3; }"))
                .containsExactly("LIMIT");
    }

    @Test
    void aUnitIsSeenWhereItMayStand() throws IOException {
        assertThat(silentOnes("/** Gap.\n * <pre>\n *   c  radial clearance  m  0 … 1e-4\n * </pre> */"
                        + " public record Gap(double clearance) {}"))
                .isEmpty();
        assertThat(silentOnes(
                        "/** Gap.\n * @param bore inner\n *     diameter, m */ public record Gap(double bore) {}"))
                .isEmpty();
        assertThat(
                        silentOnes(
                                "public class Law { /** Leak per pressure (m³/(s·Pa)). */ public double flow() { return 0; } }"))
                .isEmpty();
    }

    @Test
    void aNumberMayStandInItsOwnUnit() throws IOException {
        assertThat(silentOnes("/** Any.\n * @param value in its own unit */ public record Any(double value) {}"))
                .isEmpty();
    }

    @Test
    void whatIsNotPublicIsLeftAlone() throws IOException {
        assertThat(silentOnes("record Gap(double width) {}")).isEmpty();
        assertThat(silentOnes("public class Law { double flow() { return 0; } private final double x = 1; }"))
                .isEmpty();
    }

    private static List<String> silentOnes(String source) throws IOException {
        JavaFileObject file =
                new SimpleJavaFileObject(URI.create("sample:///Sample.java"), JavaFileObject.Kind.SOURCE) {
                    @Override
                    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                        return source;
                    }
                };
        return PublicDoubles.of(List.of(file)).stream()
                .filter(number -> !number.saysItsUnit())
                .map(PublicDouble::name)
                .toList();
    }

    private static List<JavaFileObject> sources(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .map(UnitsTest::source)
                    .toList();
        }
    }

    private static JavaFileObject source(Path file) {
        return new SimpleJavaFileObject(file.toUri(), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreEncodingErrors) throws IOException {
                return Files.readString(file);
            }

            @Override
            public String getName() {
                return file.normalize().toString().replace("../", "");
            }
        };
    }
}
