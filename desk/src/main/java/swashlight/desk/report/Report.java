package swashlight.desk.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One answer: a tree of keyed lines.
 *
 * @param key of the report in the catalogue: {@code point}
 * @param lines in the order of reading, the answer first
 */
public record Report(String key, List<Line> lines) {
    public Report {
        lines = List.copyOf(lines);
    }

    /** The table that CSV is written from: the first one in the tree. */
    public Optional<Table> table() {
        return tables(lines).findFirst();
    }

    private static Stream<Table> tables(List<Line> lines) {
        return lines.stream().flatMap(line -> {
            if (line instanceof Table table) {
                return Stream.of(table);
            }
            return line instanceof Chapter chapter ? tables(chapter.lines()) : Stream.empty();
        });
    }
}
