package swashlight.browser.chromium;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/** A test that is handed a {@link Chromium}, one for all such tests of a run; skipped where the machine has none. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(ChromiumExtension.class)
public @interface InChromium {}
