package swashlight.files.document;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What every file begins with.
 *
 * @param name its author's name for what it describes
 * @param invented true for what nobody builds or owns
 * @param about a sentence or two; empty when there is none
 */
public record Heading(String name, boolean invented, String about) {
    /** The format of files that this program writes, unit 1; every older one is read too. */
    public static final int FORMAT = 1;

    private static final Map<String, String> KINDS = Map.of(
            "drive",
            "drive",
            "case",
            "case",
            "duty",
            "duty",
            "prices",
            "prices",
            "teardown",
            "teardown",
            "papers",
            "papers");
    private static final int LONGEST_NAME = 200; // characters
    private static final int LONGEST_ABOUT = 5000; // characters

    /**
     * Reads format, kind, name, invented and about.
     *
     * @param kind the kind of file that is wanted here
     * @param usualName the name when none is given
     */
    public static Heading read(Fields root, String kind, String usualName) {
        String format = Integer.toString(FORMAT);
        root.text("format", LONGEST_NAME)
                .filter(given -> !given.equals(format))
                .ifPresent(given -> root.complain(
                        "unknown-format",
                        "format",
                        given,
                        "this format is not known",
                        "this program reads format " + format));
        root.choice("kind", KINDS)
                .filter(given -> !given.equals(kind))
                .ifPresent(given -> root.complain(
                        "wrong-kind",
                        "kind",
                        given,
                        "this file is a " + given,
                        "a file of kind " + kind + " is wanted here"));
        return new Heading(
                root.text("name", LONGEST_NAME).orElse(usualName),
                root.flag("invented").orElse(false),
                root.text("about", LONGEST_ABOUT).orElse(""));
    }

    /** The beginning of a file to write. */
    public static Map<String, Object> tree(String kind, String name, boolean invented, String about) {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("format", FORMAT);
        root.put("kind", kind);
        root.put("name", name);
        root.put("invented", invented);
        if (!about.isEmpty()) {
            root.put("about", about);
        }
        return root;
    }
}
