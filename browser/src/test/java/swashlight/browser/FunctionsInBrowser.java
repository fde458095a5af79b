package swashlight.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import swashlight.browser.chromium.Chromium;
import swashlight.browser.chromium.InChromium;
import swashlight.browser.proof.Functions;

/** Every function of Math that physics and findings use (see FunctionsTest) gives in a browser what it gives on the JVM. */
@InChromium
final class FunctionsInBrowser {
    /** May be off by one unit in the last place on either side: the API promises no more. The rest must be the same to the bit. */
    private static final Set<String> ROUNDED = Set.of(
            "atan(double)",
            "cos(double)",
            "exp(double)",
            "log(double)",
            "pow(double, double)",
            "sin(double)",
            "tan(double)",
            "toRadians(double)"); // the JDK multiplies by π/180, TeaVM by π and divides by 180

    private static final Map<String, DoubleBinaryOperator> ALL = Functions.all();
    private static final Grid GRID = Grid.fixed();

    static Stream<String> functions() {
        return ALL.keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("functions")
    void inWebAssembly(String function, Chromium chromium) {
        compare(function, "proof-webassembly", chromium);
    }

    @ParameterizedTest
    @MethodSource("functions")
    void inJavaScript(String function, Chromium chromium) {
        compare(function, "proof-javascript", chromium);
    }

    private static void compare(String function, String target, Chromium chromium) {
        int count = GRID.a.length;
        double[] input = new double[1 + 2 * count];
        input[0] = new java.util.ArrayList<>(ALL.keySet()).indexOf(function);
        System.arraycopy(GRID.a, 0, input, 1, count);
        System.arraycopy(GRID.b, 0, input, 1 + count, count);
        double[] there = chromium.run("function", target, input).numbers();
        assertThat(there).hasSize(count);
        long allowed = ROUNDED.contains(function) ? 2 : 0;
        long worst = 0;
        for (int i = 0; i < count; i++) {
            double here = ALL.get(function).applyAsDouble(GRID.a[i], GRID.b[i]);
            long apart = Ulps.between(here, there[i]);
            if (apart > worst) {
                worst = apart;
                String where = function + " of " + GRID.a[i] + ", " + GRID.b[i] + " in " + target + ": " + there[i]
                        + ", on the JVM " + here;
                assertThat(apart).as(where).isLessThanOrEqualTo(allowed);
            }
        }
    }
}
