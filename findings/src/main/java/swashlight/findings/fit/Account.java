package swashlight.findings.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * What stands beside an answer: every thing assumed, given, fitted and left out, in the order in which it came up.
 *
 * @param lines the entries
 */
public record Account(List<Line> lines) {
    /** Where a statement comes from. */
    public enum Kind {
        /** Taken as true without evidence in the input. */
        ASSUMED("assumed"),
        /** Stated by the input or by its maker. */
        GIVEN("given"),
        /** Found from the input. */
        FITTED("fitted"),
        /** Known to matter or present in the input, and not used. */
        LEFT_OUT("left out");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** The kind in plain words. */
        public String words() {
            return words;
        }
    }

    /**
     * One statement.
     *
     * @param kind where it comes from
     * @param key stable name, kebab case
     * @param text the statement
     */
    public record Line(Kind kind, String key, String text) {}

    /** Keeps its own copy of the lines. */
    public Account {
        lines = List.copyOf(lines);
    }

    /** A new, empty account to write into. */
    public static Writer writer() {
        return new Writer();
    }

    /** The account as text, one line an entry. */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (Line line : lines) {
            text.append(line.kind().words()).append(": ").append(line.text()).append('\n');
        }
        return text.toString();
    }

    /** Collects the lines of an account. */
    public static final class Writer {
        private final List<Line> lines = new ArrayList<>();

        private Writer() {}

        /** Adds a thing taken as true. */
        public Writer assumed(String key, String text) {
            return add(Kind.ASSUMED, key, text);
        }

        /** Adds a thing stated by the input or its maker. */
        public Writer given(String key, String text) {
            return add(Kind.GIVEN, key, text);
        }

        /** Adds a thing found from the input. */
        public Writer fitted(String key, String text) {
            return add(Kind.FITTED, key, text);
        }

        /** Adds a thing known and not used. */
        public Writer leftOut(String key, String text) {
            return add(Kind.LEFT_OUT, key, text);
        }

        /** The account written so far. */
        public Account done() {
            return new Account(lines);
        }

        private Writer add(Kind kind, String key, String text) {
            lines.add(new Line(kind, key, text));
            return this;
        }
    }
}
