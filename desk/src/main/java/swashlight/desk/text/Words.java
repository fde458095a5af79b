package swashlight.desk.text;

import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.function.Function;
import swashlight.desk.report.Value;

/** The catalogue: keys to words of one language, with gaps {0}, {1}, … for values. English stands behind every other language. */
public final class Words {
    private static final String CATALOGUE = "swashlight.desk.text.words";

    private final ResourceBundle bundle;

    private Words(ResourceBundle bundle) {
        this.bundle = bundle;
    }

    /** The words of a language. */
    public static Words in(Locale language) {
        return new Words(ResourceBundle.getBundle(CATALOGUE, language));
    }

    /** English, the language of the root catalogue. */
    public static Words english() {
        return new Words(ResourceBundle.getBundle(CATALOGUE, Locale.ROOT));
    }

    /** The words under a key, gaps unfilled; empty where the catalogue has none. */
    public Optional<String> find(String key) {
        try {
            return Optional.of(bundle.getString(key));
        } catch (MissingResourceException missing) {
            return Optional.empty();
        }
    }

    /** The words under the first of some keys that has any, else the last key itself, so that a gap in the catalogue is seen. */
    public String say(String... keys) {
        for (String key : keys) {
            Optional<String> words = find(key);
            if (words.isPresent()) {
                return words.get();
            }
        }
        return keys[keys.length - 1];
    }

    /** Words with their gaps filled. */
    public static String fill(String words, List<Value> values, Function<Value, String> written) {
        String filled = words;
        for (int i = 0; i < values.size(); i++) {
            filled = filled.replace("{" + i + "}", written.apply(values.get(i)));
        }
        return filled;
    }
}
