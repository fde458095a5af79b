package swashlight.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import swashlight.browser.chromium.Chromium;
import swashlight.browser.chromium.InChromium;

/** What a content-security policy does to the physics. All other tests run under a strict page with a worker that may. */
@InChromium
final class PolicyInBrowser {
    @Test
    void whereFunctionsMayNotBeBuiltFromTextItIsJavaScript(Chromium chromium) {
        String answer = chromium.run("policy", "webassembly").text();
        assertThat(answer).startsWith("javascript: Light rider: ").contains("unsafe-eval");
    }
}
