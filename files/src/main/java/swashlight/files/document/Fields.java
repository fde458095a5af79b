package swashlight.files.document;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import swashlight.files.unit.Nearest;

/**
 * The keys of one level, asked for one by one; what nobody asked for is unknown. Everything wrong is gathered in
 * {@link Complaints}, and the answer is then empty.
 */
public final class Fields {
    private static final int MOST_LISTED = 12;

    private final Node.Branch branch;
    private final String path;
    private final Complaints complaints;
    private final Set<String> asked = new LinkedHashSet<>();

    /** The keys of a level; path as in messages, empty at the root. */
    public Fields(Node.Branch branch, String path, Complaints complaints) {
        this.branch = branch;
        this.path = path;
        this.complaints = complaints;
    }

    /** These keys laid over usual ones: what stands here counts, the rest is taken from there. */
    public Fields over(Node.Branch usual) {
        Map<String, Node.Entry> both = new LinkedHashMap<>(usual.entries());
        both.putAll(branch.entries());
        return new Fields(new Node.Branch(both, branch.spot()), path, complaints);
    }

    /** Whether a key stands here. */
    public boolean has(String key) {
        return branch.entries().containsKey(key);
    }

    /** The field's name as in messages. */
    public String field(String key) {
        return path.isEmpty() || key.isEmpty() ? path + key : path + "." + key;
    }

    /** Where everything wrong is gathered. */
    public Complaints complaints() {
        return complaints;
    }

    /** Where this level begins. */
    public Spot spot() {
        return branch.spot();
    }

    /** Where a value begins, or this level when it has none. */
    public Spot spot(String key) {
        Node.Entry entry = branch.entries().get(key);
        return entry == null ? branch.spot() : entry.value().spot();
    }

    /** The value under a key, whatever it is. */
    public Optional<Node> node(String key) {
        asked.add(key);
        return Optional.ofNullable(branch.entries().get(key)).map(Node.Entry::value);
    }

    /** A text; length in characters. */
    public Optional<String> text(String key, int longest) {
        Optional<Node.Leaf> leaf = leaf(key, "a text");
        if (leaf.isPresent() && leaf.get().text().length() > longest) {
            complain("too-long", key, leaf.get().text(), "the text is too long", "at most " + longest + " characters");
            return Optional.empty();
        }
        return leaf.map(Node.Leaf::text);
    }

    /** True or false. */
    public Optional<Boolean> flag(String key) {
        return choice(key, Map.of("true", true, "false", false));
    }

    /** One of some words. */
    public <T> Optional<T> choice(String key, Map<String, T> words) {
        Optional<Node.Leaf> leaf = leaf(key, "a word");
        if (leaf.isEmpty()) {
            return Optional.empty();
        }
        T chosen = words.get(leaf.get().text());
        if (chosen == null) {
            String given = leaf.get().text();
            complain("unknown-word", key, given, "this word is not known here", instead(given, words.keySet()));
        }
        return Optional.ofNullable(chosen);
    }

    /** The keys below a key. */
    public Optional<Fields> branch(String key) {
        Optional<Node> node = node(key);
        if (node.isPresent() && !(node.get() instanceof Node.Branch)) {
            complain(
                    "not-keys",
                    key,
                    node.get().words(),
                    "keys with values are needed here",
                    "write key: value below it");
            return Optional.empty();
        }
        return node.map(found -> new Fields((Node.Branch) found, field(key), complaints));
    }

    /** The items of a list; none when the key is not there. */
    public List<Node> items(String key) {
        Optional<Node> node = node(key);
        if (node.isPresent() && !(node.get() instanceof Node.Row)) {
            complain("not-a-list", key, node.get().words(), "a list is needed here", "begin each item with a dash");
            return List.of();
        }
        return node.map(found -> ((Node.Row) found).items()).orElse(List.of());
    }

    /** A value with its unit: 80 °C, 80 ± 3 °C, or value and spread as keys. */
    public Optional<Measure> measure(String key, Range range) {
        Optional<Node> node = node(key);
        if (node.isPresent() && node.get() instanceof Node.Branch pair) {
            Fields parts = new Fields(pair, field(key), complaints);
            Optional<Measure> value = parts.scalar("value", range);
            if (!parts.has("value")) {
                parts.complain("missing", "value", "", "the value is missing", range.right());
            }
            OptionalDouble spread =
                    value.isPresent() ? parts.spread("spread", range, value.get()) : OptionalDouble.empty();
            parts.node("spread");
            parts.close();
            return value.map(found -> new Measure(found.value(), spread.isPresent() ? spread : found.spread()));
        }
        return scalar(key, range);
    }

    /** A value with its unit on one line: 80 °C or 80 ± 3 °C. */
    public Optional<Measure> scalar(String key, Range range) {
        return leaf(key, "a value with its unit")
                .flatMap(leaf -> new MeasureReader(this, key, range).value(leaf.text()));
    }

    /** A spread or error beside a value: in its unit, or per cent of it. */
    public OptionalDouble spread(String key, Range range, Measure beside) {
        Optional<Node.Leaf> leaf = leaf(key, "a spread with its unit");
        if (leaf.isPresent() && beside.spread().isPresent()) {
            complain("twice", key, leaf.get().text(), "the spread stands behind ± already", "leave one of the two");
            return OptionalDouble.empty();
        }
        return leaf.isEmpty()
                ? OptionalDouble.empty()
                : new MeasureReader(this, key, range).spread(leaf.get().text(), beside.value());
    }

    /** A complaint about the value under a key. */
    public void complain(String complaint, String key, String given, String wrong, String right) {
        complaints.add(complaint, spot(key), field(key), given, wrong, right);
    }

    /** Complains about every key that nobody asked for. */
    public void close() {
        close(unknown -> Optional.empty());
    }

    /** Complains about every key that nobody asked for; advice: where such a key belongs. */
    public void close(Function<String, Optional<String>> advice) {
        branch.entries().forEach((key, entry) -> {
            if (!asked.contains(key)) {
                complaints.add(
                        "unknown-key",
                        entry.spot(),
                        field(key),
                        entry.value().words(),
                        "this key is not known here",
                        tornText(key, entry.value()).or(() -> advice.apply(key)).orElseGet(() -> instead(key, asked)));
            }
        });
    }

    private Optional<Node.Leaf> leaf(String key, String what) {
        Optional<Node> node = node(key);
        if (node.isEmpty()) {
            return Optional.empty();
        }
        if (!(node.get() instanceof Node.Leaf leaf)) {
            complain("not-a-value", key, node.get().words(), what + " is needed here", "write it on the same line");
            return Optional.empty();
        }
        if (leaf.text().isBlank()) {
            complain("empty", key, "", "nothing stands here", "write " + what + " or leave the key out");
            return Optional.empty();
        }
        return Optional.of(leaf);
    }

    /** {@code {note: with driver, bucket empty}} makes a key of what stands behind the comma. */
    private static Optional<String> tornText(String key, Node value) {
        boolean torn = key.contains(" ")
                && value instanceof Node.Leaf leaf
                && leaf.text().isEmpty();
        return torn ? Optional.of("put a text with a comma in quotes") : Optional.empty();
    }

    private static String instead(String given, Set<String> words) {
        Optional<String> nearest = Nearest.to(given, words);
        String listed = words.stream().sorted().limit(MOST_LISTED).collect(Collectors.joining(", "));
        int more = words.size() - MOST_LISTED;
        return nearest.map(word -> "did you mean " + word + "?")
                .orElse("known here: " + listed + (more > 0 ? " and " + more + " more" : ""));
    }
}
