package swashlight.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import swashlight.browser.proof.Functions;

/** Whoever uses another function of Math in physics or findings has to add it to those that are tried in a browser. */
final class FunctionsTest {
    @Test
    void everyFunctionUsedIsTried() {
        Set<String> tried = new TreeSet<>(Functions.all().keySet());
        tried.removeAll(Functions.unnamed().keySet());
        assertThat(tried)
                .as("functions of Math in swashlight.browser.proof.Functions, against those in the byte code")
                .isEqualTo(FunctionsUsed.names());
    }

    @Test
    void nobodyTakesTheRemainderOfDoubles() {
        assertThat(Instructions.usersOf("d2i"))
                .as("what turns doubles into whole numbers: there are some")
                .isNotEmpty();
        assertThat(Instructions.usersOf("drem", "frem"))
                .as("0 % 0 is 0 in WebAssembly (TeaVM 0.16) and no number on the JVM; take x - floor(x / y) * y")
                .isEmpty();
    }
}
