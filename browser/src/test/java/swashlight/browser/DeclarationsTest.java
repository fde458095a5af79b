package swashlight.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.teavm.jso.JSExport;

/** The types a page is promised are those of the Java methods behind them. */
final class DeclarationsTest {
    private static final Map<Class<?>, String> PHYSICS = Map.of(
            Physics.class, "Physics",
            PageWords.class, "WordList",
            PageParameters.class, "ParameterList",
            PageFaults.class, "FaultList",
            PageComplaints.class, "Complaints",
            PageDrive.class, "Drive",
            PageDuty.class, "Duty",
            PagePlan.class, "Plan",
            PageRun.class, "Run",
            PagePoint.class, "Point");
    private static final Map<Class<?>, String> DIAGNOSIS =
            Map.of(Diagnosis.class, "Diagnosis", PageCase.class, "Case", PageFinding.class, "Finding");
    private static final Map<Class<?>, String> PLAIN = Map.of(
            double.class, "number",
            int.class, "number",
            boolean.class, "boolean",
            void.class, "void",
            String.class, "string",
            double[].class, "Float64Array",
            String[].class, "string[]");

    @Test
    void everyMethodOfThePhysicsIsDeclaredWithItsTypes() throws IOException {
        assertThat(Declarations.of("physics").signatures()).isEqualTo(exports(PHYSICS));
    }

    @Test
    void everyMethodOfTheDiagnosisIsDeclaredWithItsTypes() throws IOException {
        assertThat(Declarations.of("diagnosis").signatures()).isEqualTo(exports(DIAGNOSIS));
    }

    private static Set<String> exports(Map<Class<?>, String> types) {
        return types.keySet().stream()
                .flatMap(type -> Arrays.stream(type.getDeclaredMethods()))
                .filter(method -> method.isAnnotationPresent(JSExport.class))
                .map(method -> name(method.getDeclaringClass()) + " " + signature(method))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String signature(Method method) {
        return method.getName()
                + Arrays.stream(method.getParameterTypes())
                        .map(DeclarationsTest::name)
                        .collect(Collectors.joining(", ", "(", "): "))
                + name(method.getReturnType());
    }

    private static String name(Class<?> type) {
        String name = Stream.of(PLAIN, PHYSICS, DIAGNOSIS)
                .map(names -> names.getOrDefault(type, ""))
                .collect(Collectors.joining());
        assertThat(name).as(type + " has a name in a .d.ts").isNotEmpty();
        return name;
    }
}
