package swashlight.files.bench;

import java.io.Reader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import swashlight.files.unit.Nearest;
import swashlight.findings.cause.Cause;
import swashlight.findings.cause.Causes;
import swashlight.findings.cause.Tally;
import swashlight.findings.reading.Look;

/**
 * Counted cases: columns cause, look, seen, not_seen. A row without a look counts confirmed cases of the cause under {@code seen}; one with a
 * look counts, among confirmed cases of the cause, those in which it was there and those in which it was looked for and was not.
 */
public final class TallyFile {
    private static final int MOST = 1_000_000;

    private TallyFile() {}

    /** Reads a file; throws {@link swashlight.files.document.InputFault} with everything wrong in it. */
    public static List<Tally> read(Path path) {
        return read(Table.of(path));
    }

    /** Reads a text under a file's name; throws {@link swashlight.files.document.InputFault} with everything wrong in it. */
    public static List<Tally> read(String file, Reader text) {
        return read(Table.of(file, text));
    }

    private static List<Tally> read(Table table) {
        int cause = table.column("cause");
        int look = table.column("look");
        int seen = table.column("seen");
        int notSeen = table.column("not_seen");
        List<String> causes = Causes.all().stream().map(Cause::key).toList();
        List<String> looks = Arrays.stream(Look.values()).map(Look::key).toList();
        List<Tally> tallies = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            String key = table.text(row, cause);
            String noted = table.text(row, look);
            boolean known = known(table, row, "cause", key, causes)
                    && (noted.isEmpty() || known(table, row, "look", noted, looks));
            int there = count(table, row, seen);
            int missing = noted.isEmpty() ? 0 : count(table, row, notSeen);
            if (known) {
                Optional<Look> found = Arrays.stream(Look.values())
                        .filter(each -> each.key().equals(noted))
                        .findFirst();
                tallies.add(new Tally(key, found, there, missing));
            }
        }
        table.check();
        return List.copyOf(tallies);
    }

    private static int count(Table table, Table.Row row, int column) {
        return (int) table.number(row, column, 0, MOST);
    }

    private static boolean known(Table table, Table.Row row, String column, String given, List<String> words) {
        if (words.contains(given)) {
            return true;
        }
        table.complain(
                "unknown-word",
                row.line(),
                column,
                given,
                "nothing of that name is known",
                Nearest.to(given, words)
                        .map(near -> "did you mean " + near + "?")
                        .orElse("the command faults lists causes; the schema of a case lists looks"));
        return false;
    }
}
