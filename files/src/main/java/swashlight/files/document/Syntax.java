package swashlight.files.document;

import java.util.Locale;

/** The two ways a file may be written. */
public enum Syntax {
    YAML,
    JSON;

    /** By the ending of the name; where that says nothing, JSON when the text begins with a brace. */
    public static Syntax of(String file, String text) {
        String name = file.toLowerCase(Locale.ROOT);
        if (name.endsWith(".json")) {
            return JSON;
        }
        boolean yaml = name.endsWith(".yaml") || name.endsWith(".yml");
        return !yaml && text.stripLeading().startsWith("{") ? JSON : YAML;
    }
}
