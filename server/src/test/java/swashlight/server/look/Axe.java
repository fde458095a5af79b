package swashlight.server.look;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** The rules of axe-core for WCAG 2.2, levels A and AA, held against what is seen now. */
final class Axe {
    private static final String SOURCE = source();
    private static final String RULES = """
            const found = await axe.run(document, {
                runOnly: { type: "tag", values: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] },
                resultTypes: ["violations"] });
            return { passes: found.passes.length, violations: found.violations.flatMap((broken) => broken.nodes.map((node) =>
                broken.id + ": " + node.target.flat().join(" ") + ": " + (node.failureSummary ?? "").replace(/\\s+/g, " "))) };
            """;

    private Axe() {}

    /** Everything that breaks a rule, one line each. */
    @SuppressWarnings("unchecked")
    static List<String> violations(Visit visit) {
        visit.page().evaluate(SOURCE);
        Map<String, Object> found = (Map<String, Object>) visit.ask(RULES);
        if (((Number) found.get("passes")).intValue() < 10) {
            throw new AssertionError("axe looked at nothing: " + found);
        }
        return (List<String>) found.get("violations");
    }

    private static String source() {
        try (InputStream stream = Axe.class.getResourceAsStream("/axe.min.js")) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
