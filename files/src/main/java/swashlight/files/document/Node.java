package swashlight.files.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One value of a file with the place where it begins. */
public sealed interface Node {
    /** Where it begins. */
    Spot spot();

    /** What it is, in plain words. */
    String words();

    /** A text, a number, true or false, as it stands in the file. */
    record Leaf(String text, Spot spot) implements Node {
        @Override
        public String words() {
            return text.isEmpty() ? "nothing" : text;
        }
    }

    /** Keys with values, in the order of the file. */
    record Branch(Map<String, Entry> entries, Spot spot) implements Node {
        public Branch {
            entries = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }

        @Override
        public String words() {
            return "keys with values ("
                    + String.join(", ", entries.keySet().stream().limit(3).toList()) + ")";
        }
    }

    /** A list. */
    record Row(List<Node> items, Spot spot) implements Node {
        public Row {
            items = List.copyOf(items);
        }

        @Override
        public String words() {
            return "a list of " + items.size();
        }
    }

    /** A value under its key; the spot is the key's. */
    record Entry(Node value, Spot spot) {}
}
