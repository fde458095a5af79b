package swashlight.files.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;

/** Where real measurements lie beside the project; tests that need them are skipped, with words, where they are absent. */
final class SharedData {
    private SharedData() {}

    /** A file under shared/, looked for upwards from here, or under SWASHLIGHT_SHARED. */
    static Path file(String name) {
        String stated = System.getProperty("SWASHLIGHT_SHARED", System.getenv().getOrDefault("SWASHLIGHT_SHARED", ""));
        Path found = stated.isEmpty() ? upwards(name) : Path.of(stated, name);
        Assumptions.assumeTrue(
                Files.isRegularFile(found),
                "skipped: " + name + " is not beside the project (../shared) nor under SWASHLIGHT_SHARED");
        return found;
    }

    private static Path upwards(String name) {
        Path here = Path.of("").toAbsolutePath();
        while (here.getParent() != null) {
            here = here.getParent();
            if (Files.isRegularFile(here.resolve("shared").resolve(name))) {
                return here.resolve("shared").resolve(name);
            }
        }
        return Path.of("shared", name);
    }
}
