package swashlight.files.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * From text to tree. Scalars stay text as written: whether {@code 012}, {@code yes} or {@code 1:30} is a number is for whoever
 * expects one. Anchors, aliases, tags and a second document are refused: no sensible file needs them.
 */
public final class DocumentReader {
    private static final int MOST_DEPTH = 20;
    private static final int MOST_VALUES = 20_000;
    private static final StreamReadConstraints LIMITS = StreamReadConstraints.builder()
            .maxNestingDepth(MOST_DEPTH)
            .maxDocumentLength(Source.MOST_BYTES)
            .maxStringLength(20_000)
            .maxNameLength(200)
            .maxNumberLength(200)
            .build();
    private static final TokenStreamFactory JSON =
            JsonFactory.builder().streamReadConstraints(LIMITS).build();
    private static final TokenStreamFactory YAML = YAMLFactory.builder()
            .streamReadConstraints(LIMITS)
            .loadSettings(LoadSettings.builder()
                    .setCodePointLimit(Source.MOST_BYTES)
                    .setMaxAliasesForCollections(0)
                    .build())
            .build();

    private final Complaints complaints;
    private final JsonParser parser;
    private int values;

    private DocumentReader(JsonParser parser, Complaints complaints) {
        this.parser = parser;
        this.complaints = complaints;
    }

    /** The tree of a source, keys at its root; throws {@link InputFault} when it is none. */
    public static Node.Branch read(Source source, Complaints complaints) {
        Syntax syntax = Syntax.of(source.file(), source.text());
        TokenStreamFactory factory = syntax == Syntax.JSON ? JSON : YAML;
        if (source.text().isBlank()) {
            complaints.add("empty", Spot.START, "", "", "the file is empty", "keys with values are needed");
            throw complaints.fault();
        }
        try (JsonParser parser = factory.createParser(ObjectReadContext.empty(), source.text())) {
            return new DocumentReader(parser, complaints).root(syntax);
        } catch (JacksonException broken) {
            throw notReadable(syntax, broken, complaints);
        }
    }

    private Node.Branch root(Syntax syntax) {
        JsonToken first = parser.nextToken();
        if (first != JsonToken.START_OBJECT) {
            complaints.add(
                    "not-keys",
                    spot(),
                    "",
                    first != null && first.isScalarValue() ? parser.getString() : "",
                    "the file does not consist of keys with values",
                    "write key: value, one a line");
            throw complaints.fault();
        }
        Node.Branch root = branch();
        if (parser.nextToken() != null) {
            complaints.add(
                    "more-than-one",
                    spot(),
                    "",
                    "",
                    "something follows the end of the " + syntax,
                    "one file, one description");
        }
        complaints.check();
        return root;
    }

    private Node node(JsonToken token) {
        values++;
        if (values > MOST_VALUES) {
            complaints.add(
                    "too-large", spot(), "", "", "the file has too many values", "a description has some hundred");
            throw complaints.fault();
        }
        refuseTricks();
        if (token == JsonToken.START_OBJECT) {
            return branch();
        }
        if (token == JsonToken.START_ARRAY) {
            return row();
        }
        return new Node.Leaf(token == JsonToken.VALUE_NULL ? "" : parser.getString(), spot());
    }

    private Node.Branch branch() {
        Spot start = spot();
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
            String key = parser.currentName();
            Spot place = spot();
            refuseTricks();
            Node value = node(parser.nextToken());
            Node.Entry before = entries.putIfAbsent(key, new Node.Entry(value, place));
            if (before != null) {
                complaints.add(
                        "duplicate-key",
                        place,
                        key,
                        value.words(),
                        "this key stands in line " + before.spot().line() + " already",
                        "leave one of the two");
            }
        }
        return new Node.Branch(entries, start);
    }

    private Node.Row row() {
        Spot start = spot();
        List<Node> items = new ArrayList<>();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            items.add(node(token));
        }
        return new Node.Row(items, start);
    }

    private void refuseTricks() {
        if (!(parser instanceof YAMLParser yaml)) {
            return;
        }
        String trick = yaml.isCurrentAlias()
                ? "an alias (*)"
                : yaml.getObjectId() != null ? "an anchor (&)" : yaml.getTypeId() != null ? "a tag (!)" : "";
        if (!trick.isEmpty()) {
            complaints.add("yaml-trick", spot(), "", "", trick + " is not used here", "write the value out");
            throw complaints.fault();
        }
    }

    private Spot spot() {
        return spot(parser.currentTokenLocation());
    }

    private static Spot spot(TokenStreamLocation location) {
        return location == null
                ? Spot.START
                : new Spot(Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
    }

    private static InputFault notReadable(Syntax syntax, JacksonException broken, Complaints complaints) {
        boolean limit = broken instanceof tools.jackson.core.exc.StreamConstraintsException;
        complaints.add(
                limit ? "too-large" : "not-" + syntax.name().toLowerCase(java.util.Locale.ROOT),
                spot(broken.getLocation()),
                "",
                "",
                limit ? "the file goes beyond sensible limits" : SyntaxWords.of(syntax, broken.getOriginalMessage()),
                limit
                        ? "at most " + MOST_DEPTH + " levels, 1 MiB, and texts of 20 000 characters"
                        : SyntaxWords.advice(syntax));
        return complaints.fault();
    }
}
