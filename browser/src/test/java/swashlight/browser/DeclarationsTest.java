package swashlight.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.teavm.jso.JSExport;

/** The types a page is promised are those of the Java methods behind them. */
final class DeclarationsTest {
    private static final Map<Class<?>, String> NAMES = Map.of(
            Physics.class, "Physics",
            PageWords.class, "WordList",
            PageParameters.class, "ParameterList",
            PageFaults.class, "FaultList",
            PageDrive.class, "Drive",
            PageDuty.class, "Duty",
            PageRun.class, "Run",
            PagePoint.class, "Point");
    private static final Map<Class<?>, String> PLAIN = Map.of(
            double.class, "number",
            int.class, "number",
            boolean.class, "boolean",
            String.class, "string",
            double[].class, "Float64Array",
            String[].class, "string[]");

    @Test
    void everyExportedMethodIsDeclaredWithItsTypes() throws IOException {
        Set<String> written = new TreeSet<>();
        NAMES.keySet().forEach(type -> written.addAll(exports(type)));
        assertThat(Declarations.read().signatures()).isEqualTo(written);
    }

    private static List<String> exports(Class<?> type) {
        return Arrays.stream(type.getDeclaredMethods())
                .filter(method -> method.isAnnotationPresent(JSExport.class))
                .map(method -> NAMES.get(type) + " " + signature(method))
                .toList();
    }

    private static String signature(Method method) {
        return method.getName()
                + Arrays.stream(method.getParameterTypes())
                        .map(DeclarationsTest::name)
                        .collect(Collectors.joining(", ", "(", "): "))
                + name(method.getReturnType());
    }

    private static String name(Class<?> type) {
        String name = PLAIN.getOrDefault(type, NAMES.get(type));
        assertThat(name).as(type + " has a name in physics.d.ts").isNotNull();
        return name;
    }
}
