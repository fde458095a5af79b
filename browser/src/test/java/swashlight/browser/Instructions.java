package swashlight.browser;

import com.tngtech.archunit.core.domain.JavaClass;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.spi.ToolProvider;

/** Byte code of the rooms that run in a browser, as the JDK's own javap tells it. */
final class Instructions {
    private Instructions() {}

    /** Classes and methods that hold one of some instructions. */
    static List<String> usersOf(String... instructions) {
        Set<String> wanted = Set.of(instructions);
        List<String> users = new ArrayList<>();
        String method = "";
        for (String line : listing().lines().toList()) {
            String text = line.strip();
            if (text.endsWith(";") && text.contains("(") && !text.contains("//")) {
                method = text;
            }
            if (wanted.contains(text.substring(text.indexOf(' ') + 1).strip())) {
                users.add(method);
            }
        }
        return users;
    }

    private static String listing() {
        List<String> arguments = new ArrayList<>(List.of("-p", "-c"));
        for (JavaClass type : FunctionsUsed.rooms()) {
            arguments.add(type.getSource().orElseThrow().getUri().toString());
        }
        StringWriter out = new StringWriter();
        int code = ToolProvider.findFirst("javap")
                .orElseThrow()
                .run(new PrintWriter(out), new PrintWriter(out), arguments.toArray(String[]::new));
        if (code != 0) {
            throw new AssertionError(out.toString());
        }
        return out.toString();
    }
}
