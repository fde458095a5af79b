package swashlight.server.look;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/** A test that is handed {@link Eyes}, the same for all such tests of a run; skipped where the machine has no Chromium. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(EyesExtension.class)
@interface WithEyes {}
