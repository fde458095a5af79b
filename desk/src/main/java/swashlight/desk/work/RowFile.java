package swashlight.desk.work;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Rows of a long piece of work, appended one at a time to a CSV file, so that it may be stopped, even killed, at any row and taken up again. The
 * first line says what the work is: another work is not mixed in. A last line cut short is dropped. Cells
 * with commas or quotation marks stand in quotation marks (RFC 4180).
 */
final class RowFile {
    private final Optional<Path> file;
    private final List<List<String>> rows = new ArrayList<>();

    private RowFile(Optional<Path> file) {
        this.file = file;
    }

    /** Opens or makes the file, or keeps rows in memory only; refuses one that holds other work. */
    static RowFile open(Optional<Path> file, String work, List<String> heading, Inspection inspection) {
        RowFile opened = new RowFile(file);
        String first = "# " + work + "\n" + String.join(",", heading) + "\n";
        try {
            if (file.isPresent()) {
                opened.read(file.get(), first, inspection);
            }
        } catch (IOException | UncheckedIOException broken) {
            inspection.refuse(
                    "not-writable",
                    new Stated("--to", file.orElseThrow().toString()),
                    "this file cannot be read and written",
                    "name another one");
        }
        return opened;
    }

    /** Work and rows of a whole file that another call wrote under the same heading; refuses any other. */
    static Optional<RowsOfWork> others(Path path, String kind, List<String> heading, Inspection inspection) {
        try {
            List<String> lines = Files.readAllLines(path, StandardCharsets.UTF_8);
            if (lines.size() >= 2
                    && lines.get(0).startsWith("# " + kind)
                    && lines.get(1).equals(String.join(",", heading))) {
                List<List<String>> rows = lines.stream()
                        .skip(2)
                        .map(RowFile::cells)
                        .filter(cells -> cells.size() == heading.size())
                        .toList();
                return Optional.of(new RowsOfWork(lines.get(0).substring(2 + kind.length()), rows));
            }
        } catch (IOException | UncheckedIOException broken) {
            inspection.refuse(
                    "not-readable",
                    new Stated("--with", path.toString()),
                    "this file cannot be read",
                    "name another one");
            return Optional.empty();
        }
        inspection.refuse(
                "other-work",
                new Stated("--with", path.toString()),
                "this file holds no rows of such work",
                "a file that was written with --to");
        return Optional.empty();
    }

    /**
     * What a file of rows holds.
     *
     * @param work what its first line says behind the kind of work
     * @param rows all whole ones
     */
    record RowsOfWork(String work, List<List<String>> rows) {}

    private void read(Path path, String first, Inspection inspection) throws IOException {
        String text = Files.exists(path) ? Files.readString(path, StandardCharsets.UTF_8) : "";
        if (text.isEmpty()) {
            Files.writeString(path, first, StandardCharsets.UTF_8);
            return;
        }
        if (!text.startsWith(first)) {
            inspection.refuse(
                    "other-work",
                    new Stated("--to", path.toString()),
                    "this file holds something else, or the same with other options",
                    "name a new file, or ask what its first line says: "
                            + text.lines().findFirst().orElse(""));
            return;
        }
        String whole = text.substring(0, text.lastIndexOf('\n') + 1);
        if (whole.length() < text.length()) {
            Files.writeString(path, whole, StandardCharsets.UTF_8);
        }
        whole.substring(first.length()).lines().forEach(line -> rows.add(cells(line)));
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append('"');
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }

    private static String line(List<String> cells) {
        return cells.stream()
                .map(cell -> cell.contains(",") || cell.contains("\"") ? '"' + cell.replace("\"", "\"\"") + '"' : cell)
                .collect(Collectors.joining(","));
    }

    /** All rows so far, those of earlier days included. */
    synchronized List<List<String>> rows() {
        return List.copyOf(rows);
    }

    /** Appends a row at once. */
    synchronized void add(List<String> cells) {
        List<String> clean =
                cells.stream().map(cell -> cell.replaceAll("[\r\n]+", " ")).toList();
        rows.add(clean);
        file.ifPresent(path -> {
            try {
                Files.writeString(path, line(clean) + "\n", StandardCharsets.UTF_8, StandardOpenOption.APPEND);
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        });
    }
}
