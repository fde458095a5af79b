package swashlight.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The interfaces of a {@code .d.ts}: members with their types, what an interface extends included. */
final class Declarations {
    private static final Path FOLDER = Path.of("src", "main", "resources", "META-INF", "resources", "physics");
    private static final Pattern INTERFACE =
            Pattern.compile("(?ms)^export interface (\\w+)(?: extends (\\w+))? \\{$(.*?)^}$");
    private static final Pattern MEMBER = Pattern.compile("(?m)^ {4}(\\w+)\\(([^)]*)\\): (\\S+);$");
    private static final Pattern WORDS = Pattern.compile("(?m)^export type (\\w+) = \"");

    private final Map<String, String> parents = new LinkedHashMap<>();
    private final Map<String, String> bodies = new LinkedHashMap<>();
    private final Set<String> words; // types that are one of some strings

    private Declarations(String text) {
        for (Matcher type = INTERFACE.matcher(text); type.find(); ) {
            parents.put(type.group(1), type.group(2) == null ? "" : type.group(2));
            bodies.put(type.group(1), type.group(3));
        }
        words = WORDS.matcher(text).results().map(word -> word.group(1)).collect(Collectors.toSet());
    }

    /** Of one file beside the compiled modules, without its ending. */
    static Declarations of(String file) throws IOException {
        return new Declarations(Files.readString(FOLDER.resolve(file + ".d.ts")));
    }

    /** "interface member" of every function. */
    Set<String> names() {
        return signatures().stream()
                .map(line -> line.substring(0, line.indexOf('(')))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** "interface member(types): type" of every function; a choice of strings counts as string. */
    Set<String> signatures() {
        Set<String> all = new TreeSet<>();
        parents.forEach((type, parent) -> {
            members(all, type, bodies.get(type));
            members(all, type, bodies.getOrDefault(parent, ""));
        });
        return all;
    }

    private void members(Set<String> all, String type, String body) {
        for (Matcher member = MEMBER.matcher(body); member.find(); ) {
            String parameters = Arrays.stream(member.group(2).split(", "))
                    .filter(parameter -> !parameter.isBlank())
                    .map(parameter -> plain(parameter.substring(parameter.indexOf(": ") + 2)))
                    .collect(Collectors.joining(", "));
            all.add(type + " " + member.group(1) + "(" + parameters + "): " + plain(member.group(3)));
        }
    }

    private String plain(String type) {
        return words.contains(type) ? "string" : type;
    }
}
