package swashlight.desk.line;

import java.io.IOException;
import java.net.URI;
import java.util.List;
import java.util.Locale;

/** Asks the system to show a page in the browser of whoever sits there. */
final class Browser {
    private Browser() {}

    /** Whether the system took the wish. */
    static boolean show(URI where) {
        String system = System.getProperty("os.name").toLowerCase(Locale.ROOT);
        List<String> command = system.startsWith("windows")
                ? List.of("rundll32", "url.dll,FileProtocolHandler", where.toString())
                : List.of(system.startsWith("mac") ? "open" : "xdg-open", where.toString());
        try {
            new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return true;
        } catch (IOException none) {
            return false;
        }
    }
}
