package swashlight.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The page as it is served: its files, and what a module imports. */
final class Modules {
    static final Path ROOT = Path.of("target", "classes", "META-INF", "resources");

    /** The server lays what the room {@code browser} has beside the page's own files. */
    private static final Path BROWSER = Path.of("..", "browser", "src", "main", "resources", "META-INF", "resources");

    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/|(?m)^\\s*//.*$", Pattern.DOTALL);
    /** A name behind from or import, or any path to another module: views are fetched, and workers started, by those. */
    private static final Pattern IMPORT = Pattern.compile(
            "(?:\\bfrom|\\bimport|\\bimport\\()\\s*[\"']([./@\\w-]+)[\"']|[\"'](\\.{1,2}/[\\w./-]+\\.js)[\"']");

    private static final Pattern MAP = Pattern.compile("<script type=\"importmap\">(.*?)</script>", Pattern.DOTALL);
    private static final Pattern ENTRY = Pattern.compile("\"([^\"]+)\"\\s*:\\s*\"(/[^\"]+)\"");

    private final Map<String, String> importMap = new TreeMap<>();

    Modules() {
        Matcher map = MAP.matcher(text(ROOT.resolve("index.html")));
        if (map.find()) {
            Matcher entry = ENTRY.matcher(map.group(1));
            while (entry.find()) {
                importMap.put(entry.group(1), entry.group(2));
            }
        }
    }

    /** What the names in {@code import} stand for, longest first where several fit. */
    Map<String, String> importMap() {
        return importMap;
    }

    /** All modules below a folder. */
    static List<Path> in(String folder) {
        try (Stream<Path> files = Files.walk(ROOT.resolve(folder))) {
            return files.filter(file -> file.toString().endsWith(".js"))
                    .sorted()
                    .toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The names of the modules a module brings in, as written; not those put together while it runs. */
    static List<String> imports(Path module) {
        List<String> names = new ArrayList<>();
        Matcher found = IMPORT.matcher(COMMENT.matcher(text(module)).replaceAll(""));
        while (found.find()) {
            names.add(found.group(1) == null ? found.group(2) : found.group(1));
        }
        return names;
    }

    /** The file that a name stands for in a module, whether it is there or not (import maps: HTML standard, 8.1.6.2). */
    Path resolved(Path module, String name) {
        if (name.startsWith(".")) {
            Path file = module.resolveSibling(name).normalize();
            return file.startsWith(ROOT.resolve("physics")) ? BROWSER.resolve(ROOT.relativize(file)) : file;
        }
        if (importMap.containsKey(name)) {
            return ROOT.resolve(importMap.get(name).substring(1));
        }
        return importMap.keySet().stream()
                .filter(prefix -> prefix.endsWith("/") && name.startsWith(prefix))
                .max((one, other) -> Integer.compare(one.length(), other.length()))
                .map(prefix -> ROOT.resolve(importMap.get(prefix).substring(1) + name.substring(prefix.length())))
                .orElse(ROOT.resolve("nothing-is-called").resolve(name));
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
