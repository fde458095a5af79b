package swashlight.files.document;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * Writes a tree of maps, lists, texts, numbers and flags so that {@link DocumentReader} reads the same tree. Maps and lists stand one
 * key a line; from the third level on a map of mere texts stands in one line.
 */
public final class TreeText {
    private static final Pattern PLAIN = Pattern.compile(
            "[A-Za-z](?:[A-Za-z0-9 -]*[A-Za-z0-9])?|-?[0-9](?:[0-9A-Za-z.µ°%/() -]*[0-9A-Za-zµ°%/()])?");
    private static final Set<String> WORDS = Set.of("true", "false", "null", "yes", "no", "on", "off", "y", "n");
    private static final JsonMapper JSON =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private TreeText() {}

    /** The tree as text. */
    public static String of(Map<String, ?> tree, Syntax syntax) {
        if (syntax == Syntax.JSON) {
            return JSON.writeValueAsString(tree) + "\n";
        }
        StringBuilder yaml = new StringBuilder();
        map(yaml, tree, 0);
        return yaml.toString();
    }

    private static void map(StringBuilder yaml, Map<String, ?> map, int depth) {
        boolean first = true;
        for (Map.Entry<String, ?> entry : map.entrySet()) {
            boolean afterDash = first && depth > 0 && yaml.charAt(yaml.length() - 1) == ' ';
            yaml.append(afterDash ? "" : "  ".repeat(depth))
                    .append(entry.getKey())
                    .append(':');
            value(yaml, entry.getValue(), depth);
            first = false;
        }
    }

    private static void value(StringBuilder yaml, Object value, int depth) {
        if (value instanceof Map<?, ?> map && !inOneLine(map, depth)) {
            yaml.append('\n');
            map(yaml, keyed(map), depth + 1);
        } else if (value instanceof List<?> list && list.stream().anyMatch(Map.class::isInstance)) {
            yaml.append('\n');
            for (Object item : list) {
                yaml.append("  ".repeat(depth + 1)).append("- ");
                map(yaml, keyed((Map<?, ?>) item), depth + 2);
            }
        } else {
            yaml.append(' ').append(flow(value)).append('\n');
        }
    }

    private static boolean inOneLine(Map<?, ?> map, int depth) {
        return depth > 0 && map.values().stream().noneMatch(value -> value instanceof Map || value instanceof List);
    }

    private static String flow(Object value) {
        if (value instanceof Map<?, ?> map) {
            return map.entrySet().stream()
                    .map(entry -> entry.getKey() + ": " + flow(entry.getValue()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (value instanceof List<?> list) {
            return list.stream().map(TreeText::flow).collect(Collectors.joining(", ", "[", "]"));
        }
        return value instanceof String text ? scalar(text) : String.valueOf(value);
    }

    private static String scalar(String text) {
        return PLAIN.matcher(text).matches() && !WORDS.contains(text.toLowerCase(java.util.Locale.ROOT))
                ? text
                : QuotedText.of(text);
    }

    @SuppressWarnings("unchecked")
    private static Map<String, ?> keyed(Map<?, ?> map) {
        return (Map<String, ?>) map;
    }
}
